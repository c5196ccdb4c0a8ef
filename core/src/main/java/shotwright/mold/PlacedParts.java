package shotwright.mold;

import java.util.List;
import org.locationtech.jts.geom.util.AffineTransformation;
import shotwright.geom.Box3;
import shotwright.geom.Transform;
import shotwright.geom.Vec3;
import shotwright.layout.Cavity;
import shotwright.mesh.Edges;
import shotwright.mesh.Shadow;
import shotwright.mesh.TriMesh;
import shotwright.mesh.pull.PulledMesh;
import shotwright.part.PulledPart;
import shotwright.region.Region;

/**
 * The part with its shrink, and where its copies stand. Every cavity's placement is taken apart into the shrink along x, y and z and a turn with
 * a shift; all cavities must carry the same shrink.
 *
 * @param part the part grown by its shrink, pulled frame
 * @param scale factors along x, y and z
 * @param places turn and shift of every copy
 */
record PlacedParts(PulledMesh part, Vec3 scale, List<Transform> places) {
    private static final double SAME = 1e-9;

    static PlacedParts of(PulledPart part, List<Cavity> cavities) {
        Vec3 scale = scale(cavities.getFirst().place());
        for (Cavity c : cavities) {
            Vec3 other = scale(c.place());
            if (other.distance(scale) > SAME)
                throw new IllegalArgumentException(
                        "cavity " + c.number() + ": shrink " + other + " differs from " + scale);
            if (Math.abs(c.place().c().x()) + Math.abs(c.place().c().y()) > SAME
                    || c.place().determinant() < 0)
                throw new IllegalArgumentException("cavity " + c.number() + ": may only turn about the pull");
        }
        Transform grow = Transform.scale(scale.x(), scale.y(), scale.z());
        Transform shrink = grow.inverse();
        TriMesh grown = part.mesh().transform(grow);
        // growing along the axes hides and shows nothing, so what the pull sees is carried over
        PulledMesh pulled = new PulledMesh(
                grown,
                Edges.of(grown),
                grown(part.exactShadow(), scale),
                part.sight().carriedOver(grown));
        return new PlacedParts(
                pulled,
                scale,
                cavities.stream().map(c -> shrink.then(c.place())).toList());
    }

    private static Shadow grown(Shadow shadow, Vec3 scale) {
        if (shadow.region().isEmpty()) return shadow;
        AffineTransformation grow = AffineTransformation.scaleInstance(scale.x(), scale.y());
        return new Shadow(
                Region.of(grow.transform(shadow.region().geometry())), shadow.freeSum() * scale.x() * scale.y());
    }

    /** Lengths of the images of the axes. */
    private static Vec3 scale(Transform t) {
        return new Vec3(
                t.applyToDirection(Vec3.X).length(),
                t.applyToDirection(Vec3.Y).length(),
                t.applyToDirection(Vec3.Z).length());
    }

    List<TriMesh> meshes() {
        return places.stream().map(part.mesh()::transform).toList();
    }

    Box3 box() {
        return meshes().stream().map(TriMesh::box).reduce(Box3::join).orElseThrow();
    }
}
