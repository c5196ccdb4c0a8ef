package shotwright.machining.path;

import shotwright.geom.Box3;
import shotwright.geom.Vec3;

/** The tip stays where it is for a while. */
public record Dwell(Vec3 from, double timeS) implements Step {
    public Dwell {
        Move.check("from", from);
        if (!(timeS >= 0) || !Double.isFinite(timeS))
            throw new IllegalArgumentException("timeS: " + timeS + " is not a time");
    }

    @Override
    public Vec3 to() {
        return from;
    }

    @Override
    public Vec3 at(double share) {
        return from;
    }

    @Override
    public double lengthMm() {
        return 0;
    }

    @Override
    public Box3 box() {
        return new Box3(from, from);
    }

    @Override
    public Dwell reversed() {
        return this;
    }
}
