package shotwright.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shotwright.geom.Vec3;

class BvhTest {
    /** A cloud of small triangles without order, some of them slivers. */
    private static TriMesh cloud(Random random, int facets, double shift) {
        double[] xyz = new double[9 * facets];
        int[] tri = new int[3 * facets];
        for (int f = 0; f < facets; f++) {
            Vec3 at = point(random, 10);
            for (int k = 0; k < 3; k++) {
                Vec3 p = at.plus(point(random, f % 7 == 0 ? 5 : 0.5));
                xyz[9 * f + 3 * k] = p.x() + shift;
                xyz[9 * f + 3 * k + 1] = p.y() * (f % 5 == 0 ? 1e-6 : 1) - shift;
                xyz[9 * f + 3 * k + 2] = p.z();
                tri[3 * f + k] = 3 * f + k;
            }
        }
        return new TriMesh(xyz, tri);
    }

    private static Vec3 point(Random r, double size) {
        return new Vec3(r.nextDouble(-size, size), r.nextDouble(-size, size), r.nextDouble(-size, size));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3, 5, 40, 700, 40_000})
    void findsWhatTestingEveryFacetFinds(int facets) {
        Random random = new Random(facets);
        double shift = facets == 700 ? 5e4 : 0;
        TriMesh mesh = cloud(random, facets, shift);
        Bvh bvh = Bvh.of(mesh);
        Probe p = new Probe();
        for (int i = 0; i < (facets > 1000 ? 60 : 400); i++) {
            Vec3 o = point(random, 15).plus(new Vec3(shift, -shift, 0));
            Vec3 d = i % 3 == 0 ? axis(i) : point(random, 1);
            double tMin = i % 4 == 0 ? 2 : 0, tMax = i % 5 == 0 ? 8 : Double.POSITIVE_INFINITY;
            int skip = i % 6 == 0 ? random.nextInt(facets) : Bvh.NONE;
            int first = Bvh.NONE, count = 0;
            double t = Double.POSITIVE_INFINITY, near = Double.POSITIVE_INFINITY;
            for (int f = 0; f < facets; f++) {
                double at = meets(mesh, f, o, d);
                near = Math.min(near, distance(mesh, f, o));
                if (!(at >= tMin && at <= tMax) || f == skip) continue;
                count++;
                if (at < t) {
                    t = at;
                    first = f;
                }
            }
            p.aim(o, d);
            assertThat(bvh.firstHit(p, tMin, tMax, skip)).as("ray %d", i).isEqualTo(first);
            if (first != Bvh.NONE) assertThat(p.t()).isEqualTo(t, within(1e-9));
            assertThat(bvh.anyHit(p, tMin, tMax, skip)).isEqualTo(first != Bvh.NONE);
            assertThat(bvh.allHits(p, tMin, tMax, skip)).isEqualTo(count);
            for (int k = 1; k < count; k++) assertThat(p.hitT(k)).isGreaterThanOrEqualTo(p.hitT(k - 1));
            assertThat(bvh.nearest(p, o.x(), o.y(), o.z(), 100)).isNotEqualTo(Bvh.NONE);
            assertThat(p.t()).isEqualTo(near, within(1e-9 + 1e-12 * shift));
            assertThat(p.nearestPoint().distance(o)).isEqualTo(near, within(1e-9 + 1e-12 * shift));
            assertThat(bvh.nearest(p, o.x(), o.y(), o.z(), near * (1 - 1e-6))).isEqualTo(Bvh.NONE);
        }
    }

    private static Vec3 axis(int i) {
        return (i % 9 == 0 ? Vec3.X : i % 9 == 3 ? Vec3.Y : Vec3.Z).times(i % 2 == 0 ? 1 : -2);
    }

    /** Cramer's rule; NaN when the ray misses. */
    private static double meets(TriMesh m, int f, Vec3 o, Vec3 d) {
        Vec3 a = m.cornerPoint(f, 0),
                u = m.cornerPoint(f, 1).minus(a),
                v = m.cornerPoint(f, 2).minus(a);
        Vec3 s = o.minus(a), q = d.cross(v), r = s.cross(u);
        double det = u.dot(q), b = s.dot(q) / det, c = d.dot(r) / det;
        return b < 0 || c < 0 || b + c > 1 ? Double.NaN : v.dot(r) / det;
    }

    /** The least of the distances to the edges, and to the plane where the foot lies inside. */
    private static double distance(TriMesh m, int f, Vec3 p) {
        Vec3 n = m.doubleAreaNormal(f);
        double best = Double.POSITIVE_INFINITY;
        boolean inside = n.length() > 0;
        for (int k = 0; k < 3; k++) {
            Vec3 a = m.cornerPoint(f, k), u = m.cornerPoint(f, (k + 1) % 3).minus(a), w = p.minus(a);
            double s = Math.clamp(w.dot(u) / u.dot(u), 0, 1);
            best = Math.min(best, w.distance(u.times(s)));
            inside &= n.cross(u).dot(w) >= 0;
        }
        return inside ? Math.min(best, Math.abs(p.minus(m.cornerPoint(f, 0)).dot(n.unit()))) : best;
    }

    @Test
    void letsNoRayThroughAnEdgeOrCorner() {
        TriMesh mesh = Solids.sphere(new Vec3(0.3, -0.2, 0.1), 3, 4);
        Bvh bvh = Bvh.of(mesh);
        Edges edges = Edges.of(mesh);
        Probe p = new Probe();
        Vec3 o = new Vec3(0.3, -0.2, 0.1);
        for (int v = 0; v < mesh.vertexCount(); v++)
            assertThat(bvh.firstHit(p.aim(o, mesh.vertex(v).minus(o)), 0, 2, Bvh.NONE))
                    .isNotEqualTo(Bvh.NONE);
        for (int e = 0; e < edges.count(); e++)
            assertThat(bvh.anyHit(p.aim(o, edges.midpoint(e).minus(o)), 0, 2, Bvh.NONE))
                    .isTrue();
    }

    @Test
    void tellsFacetDistanceAndPoint() {
        Bvh bvh = Bvh.of(Solids.box(Vec3.ZERO, new Vec3(4, 5, 6)));
        Bvh.Hit hit = Objects.requireNonNull(bvh.firstHit(new Vec3(1, 2, 10), new Vec3(0, 0, -2)));
        assertThat(hit.t()).isEqualTo(2);
        assertThat(hit.point()).isEqualTo(new Vec3(1, 2, 6));
        assertThat(bvh.mesh().doubleAreaNormal(hit.facet()).z()).isPositive();
        assertThat(bvh.firstHit(new Vec3(1, 2, 10), Vec3.Z)).isNull();
        Bvh.Hit near = Objects.requireNonNull(bvh.nearest(new Vec3(7, 9, 3), 6));
        assertThat(near.point()).isEqualTo(new Vec3(4, 5, 3));
        assertThat(near.t()).isEqualTo(5);
    }
}
