package shotwright.mesh.complex;

import shotwright.geom.Vec3;

/** A cut whose surface cannot be spanned: its border crosses itself. Says where. The complex is unusable afterwards; work on a copy. */
public final class SplitFailure extends RuntimeException {
    private final transient Vec3 place;

    public SplitFailure(String what, Vec3 place) {
        super(what + " near " + place.x() + ", " + place.y() + ", " + place.z());
        this.place = place;
    }

    public Vec3 place() {
        return place;
    }
}
