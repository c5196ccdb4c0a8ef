package shotwright.layout.cavity;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.util.AffineTransformation;
import shotwright.geom.Box3;
import shotwright.geom.Transform;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.mesh.Bvh;
import shotwright.mesh.TriMesh;
import shotwright.region.Region;

/**
 * One cavity before it is placed: the part with its shrink, pull = +z, parting plane at z = 0, the centre of its shadow at x = y = 0.
 *
 * @param fromPulled from the pulled frame of the unscaled part to this frame
 * @param tree the facets, searchable
 * @param shadow the exact outline seen along the pull
 */
public record CavityShape(Transform fromPulled, Bvh tree, Region shadow) {
    private static final double SAME_MM = 1e-6;

    /**
     * Scales and shifts a pulled part.
     *
     * @param mesh the part in the pulled frame
     * @param shadow its shadow in that frame
     * @param partingZMm height of the parting plane in that frame
     * @param factors mold size over part size along x, y and z
     */
    public static CavityShape of(TriMesh mesh, Region shadow, double partingZMm, Vec3 factors) {
        AffineTransformation grow = AffineTransformation.scaleInstance(factors.x(), factors.y());
        Region grown = Region.of(grow.transform(shadow.geometry()));
        Vec2 c = grown.centroid();
        Transform t = Transform.scale(factors.x(), factors.y(), factors.z())
                .then(Transform.translate(new Vec3(-c.x(), -c.y(), -partingZMm * factors.z())));
        return new CavityShape(t, Bvh.of(mesh.transform(t)), grown.move(c.times(-1)));
    }

    public TriMesh mesh() {
        return tree.mesh();
    }

    public Box3 box() {
        return mesh().box();
    }

    /** Depth of the cavity in half A. */
    public double depthAMm() {
        return Math.max(0, box().max().z());
    }

    /** Depth of the cavity in half B. */
    public double depthBMm() {
        return Math.max(0, -box().min().z());
    }

    /** The outer outline of the largest piece, counter-clockwise from its leftmost corner, of several such the lowest. */
    public List<Vec2> outline() {
        List<Vec2> ring = new ArrayList<>(shadow.pieces().stream()
                .max(Comparator.comparingDouble(Region::area))
                .orElseThrow(() -> new IllegalArgumentException("shadow: is empty"))
                .exteriors()
                .getFirst());
        double left = shadow.min().x() + SAME_MM;
        int start = 0;
        for (int i = 0; i < ring.size(); i++) {
            Vec2 p = ring.get(i), best = ring.get(start);
            boolean lower = p.x() > left ? best.x() > left && p.x() < best.x() : best.x() > left || p.y() < best.y();
            if (lower) start = i;
        }
        Collections.rotate(ring, -start);
        return ring;
    }
}
