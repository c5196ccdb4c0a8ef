package shotwright.mold.exact;

import java.util.List;
import shotwright.geom.Vec3;
import shotwright.mesh.Bvh;
import shotwright.mesh.Probe;
import shotwright.mesh.TriMesh;

/** Tells whether points lie inside closed meshes: an odd number of walls above them. */
final class Inside {
    private static final Vec3 UP = new Vec3(1.3e-3, 2.7e-3, 1).unit();

    private final List<Bvh> trees;
    private final Probe probe = new Probe();

    Inside(List<TriMesh> closed) {
        trees = closed.stream().map(Bvh::of).toList();
    }

    boolean holds(Vec3 p) {
        probe.aim(p, UP);
        for (Bvh tree : trees) if (tree.allHits(probe, 0, Double.POSITIVE_INFINITY, Bvh.NONE) % 2 == 1) return true;
        return false;
    }

    /** Distance of the nearest wall, at most {@code mostMm}. */
    double wallMm(Vec3 p, double mostMm) {
        double near = mostMm;
        for (Bvh tree : trees) {
            Bvh.Hit hit = tree.nearest(p, near);
            if (hit != null) near = Math.min(near, hit.t());
        }
        return near;
    }
}
