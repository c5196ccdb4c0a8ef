package shotwright.mesh;

import shotwright.geom.Box3;
import shotwright.geom.Vec3;

/**
 * Volume, area and centroid of a closed mesh by the divergence theorem: V = Σ a·(b×c)/6 over the facets, taken about the box centre so that
 * a part far from the origin loses no digits, and summed with compensation (Neumaier).
 *
 * @param volumeMm3 enclosed volume; below zero when the mesh is inside out
 * @param surfaceAreaMm2 sum of the facet areas
 * @param centroid centre of the enclosed volume; the box centre when the volume is zero
 * @param box box around the vertices
 */
public record MassProperties(double volumeMm3, double surfaceAreaMm2, Vec3 centroid, Box3 box) {
    public static MassProperties of(TriMesh mesh) {
        Box3 box = mesh.box();
        Vec3 o = box.centre();
        Sum v = new Sum(), a = new Sum(), mx = new Sum(), my = new Sum(), mz = new Sum();
        for (int f = 0; f < mesh.facetCount(); f++) {
            Vec3 p = mesh.cornerPoint(f, 0).minus(o),
                    q = mesh.cornerPoint(f, 1).minus(o),
                    r = mesh.cornerPoint(f, 2).minus(o);
            double six = p.dot(q.cross(r));
            v.add(six / 6);
            a.add(mesh.area(f));
            Vec3 s = p.plus(q).plus(r).times(six / 24);
            mx.add(s.x());
            my.add(s.y());
            mz.add(s.z());
        }
        double vol = v.value();
        Vec3 c = vol == 0 ? o : o.plus(new Vec3(mx.value(), my.value(), mz.value()).times(1 / vol));
        return new MassProperties(vol, a.value(), c, box);
    }

    private static final class Sum {
        private double sum;
        private double lost;

        void add(double x) {
            double t = sum + x;
            lost += Math.abs(sum) >= Math.abs(x) ? (sum - t) + x : (x - t) + sum;
            sum = t;
        }

        double value() {
            return sum + lost;
        }
    }
}
