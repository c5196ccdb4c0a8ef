package shotwright.mesh;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.triangulate.polygon.ConstrainedDelaunayTriangulator;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.region.Region;

/** Closed solids whose volume, area, shadow and thickness are known in closed form, for tests. */
public final class Solids {
    private Solids() {}

    public static TriMesh box(Vec3 min, Vec3 max) {
        double[] p = new double[24];
        for (int i = 0; i < 8; i++) {
            p[3 * i] = (i & 1) == 0 ? min.x() : max.x();
            p[3 * i + 1] = (i & 2) == 0 ? min.y() : max.y();
            p[3 * i + 2] = (i & 4) == 0 ? min.z() : max.z();
        }
        int[] quads = {0, 2, 3, 1, 4, 5, 7, 6, 0, 1, 5, 4, 2, 6, 7, 3, 0, 4, 6, 2, 1, 3, 7, 5};
        int[] tri = new int[36];
        for (int q = 0; q < 6; q++) {
            int[] c = {quads[4 * q], quads[4 * q + 1], quads[4 * q + 2], quads[4 * q + 3]};
            System.arraycopy(new int[] {c[0], c[1], c[2], c[0], c[2], c[3]}, 0, tri, 6 * q, 6);
        }
        return new TriMesh(p, tri);
    }

    /** A region without touching rings, pulled from z0 up to z1. */
    public static TriMesh prism(Region base, double z0, double z1) {
        Soup soup = new Soup();
        for (Region piece : base.pieces()) {
            var triangles = new ConstrainedDelaunayTriangulator(piece.geometry()).getTriangles();
            for (var t : triangles) {
                Coordinate[] c = {t.getCoordinate(0), t.getCoordinate(1), t.getCoordinate(2)};
                Vec2 a = new Vec2(c[0].x, c[0].y), b = new Vec2(c[1].x, c[1].y), d = new Vec2(c[2].x, c[2].y);
                if (b.minus(a).cross(d.minus(a)) < 0) {
                    Vec2 s = b;
                    b = d;
                    d = s;
                }
                soup.add(a.atZ(z1), b.atZ(z1), d.atZ(z1));
                soup.add(a.atZ(z0), d.atZ(z0), b.atZ(z0));
            }
        }
        List<List<Vec2>> rings = new ArrayList<>(base.exteriors());
        rings.addAll(base.holes());
        for (List<Vec2> ring : rings)
            for (int i = 0; i < ring.size(); i++) {
                Vec2 a = ring.get(i), b = ring.get((i + 1) % ring.size());
                soup.quad(a.atZ(z0), b.atZ(z0), b.atZ(z1), a.atZ(z1));
            }
        return soup.mesh();
    }

    /** A regular N-gon frustum about the z axis; a radius of 0 gives a cone's apex. */
    public static TriMesh frustum(int corners, double lowRadius, double highRadius, double z0, double z1) {
        Soup soup = new Soup();
        for (int i = 0; i < corners; i++) {
            Vec2 u = direction(i, corners), v = direction((i + 1) % corners, corners);
            soup.add(
                    Vec2.ZERO.atZ(z0),
                    v.times(lowRadius).atZ(z0),
                    u.times(lowRadius).atZ(z0));
            soup.add(
                    Vec2.ZERO.atZ(z1),
                    u.times(highRadius).atZ(z1),
                    v.times(highRadius).atZ(z1));
            soup.quad(
                    u.times(lowRadius).atZ(z0),
                    v.times(lowRadius).atZ(z0),
                    v.times(highRadius).atZ(z1),
                    u.times(highRadius).atZ(z1));
        }
        return soup.mesh();
    }

    /** A regular N-gon washer about the z axis, its outside and its hole each with two radii. */
    public static TriMesh washer(
            int corners, double outLow, double outHigh, double inLow, double inHigh, double z0, double z1) {
        Soup soup = new Soup();
        for (int i = 0; i < corners; i++) {
            Vec2 u = direction(i, corners), v = direction((i + 1) % corners, corners);
            Vec3 oa = u.times(outLow).atZ(z0), ob = v.times(outLow).atZ(z0);
            Vec3 oc = v.times(outHigh).atZ(z1), od = u.times(outHigh).atZ(z1);
            Vec3 ia = u.times(inLow).atZ(z0), ib = v.times(inLow).atZ(z0);
            Vec3 ic = v.times(inHigh).atZ(z1), id = u.times(inHigh).atZ(z1);
            soup.quad(oa, ob, oc, od);
            soup.quad(ib, ia, id, ic);
            soup.quad(od, oc, ic, id);
            soup.quad(ob, oa, ia, ib);
        }
        return soup.mesh();
    }

    private static Vec2 direction(int i, int n) {
        return new Vec2(Math.cos(2 * Math.PI * i / n), Math.sin(2 * Math.PI * i / n));
    }

    /** An octahedron divided so many times, its corners on the sphere. */
    public static TriMesh sphere(Vec3 centre, double radius, int divisions) {
        Soup soup = new Soup();
        for (int i = 0; i < 8; i++) {
            Vec3 x = Vec3.X.times((i & 1) == 0 ? 1 : -1), y = Vec3.Y.times((i & 2) == 0 ? 1 : -1);
            Vec3 z = Vec3.Z.times((i & 4) == 0 ? 1 : -1);
            boolean turned = Integer.bitCount(i) % 2 == 1;
            divide(soup, x, turned ? z : y, turned ? y : z, divisions, centre, radius);
        }
        return soup.mesh();
    }

    private static void divide(Soup soup, Vec3 a, Vec3 b, Vec3 c, int left, Vec3 centre, double r) {
        if (left == 0) {
            soup.add(centre.plus(a.times(r)), centre.plus(b.times(r)), centre.plus(c.times(r)));
            return;
        }
        Vec3 ab = a.plus(b).unit(), bc = b.plus(c).unit(), ca = c.plus(a).unit();
        divide(soup, a, ab, ca, left - 1, centre, r);
        divide(soup, ab, b, bc, left - 1, centre, r);
        divide(soup, ca, bc, c, left - 1, centre, r);
        divide(soup, ab, bc, ca, left - 1, centre, r);
    }

    /** Several meshes put together, vertices not shared between them. */
    public static TriMesh together(TriMesh... meshes) {
        int nv = 0, nf = 0;
        for (TriMesh m : meshes) {
            nv += m.vertexCount();
            nf += m.facetCount();
        }
        double[] p = new double[3 * nv];
        int[] t = new int[3 * nf];
        int v = 0, f = 0;
        for (TriMesh m : meshes) {
            System.arraycopy(m.xyz(), 0, p, 3 * v, m.xyz().length);
            for (int i = 0; i < m.tri().length; i++) t[3 * f + i] = m.tri()[i] + v;
            v += m.vertexCount();
            f += m.facetCount();
        }
        return new TriMesh(p, t);
    }

    /** Facets given corner by corner; equal points become one vertex, facets with equal corners are dropped. */
    public static final class Soup {
        private final Map<Vec3, Integer> known = new HashMap<>();
        private final List<Vec3> points = new ArrayList<>();
        private final List<Integer> tri = new ArrayList<>();

        public void add(Vec3 a, Vec3 b, Vec3 c) {
            int i = vertex(a), j = vertex(b), k = vertex(c);
            if (i != j && j != k && k != i) tri.addAll(List.of(i, j, k));
        }

        public void quad(Vec3 a, Vec3 b, Vec3 c, Vec3 d) {
            add(a, b, c);
            add(a, c, d);
        }

        private int vertex(Vec3 p) {
            Vec3 key = new Vec3(p.x() + 0.0, p.y() + 0.0, p.z() + 0.0);
            return known.computeIfAbsent(key, q -> {
                points.add(q);
                return points.size() - 1;
            });
        }

        public TriMesh mesh() {
            double[] p = new double[3 * points.size()];
            for (int i = 0; i < points.size(); i++) {
                p[3 * i] = points.get(i).x();
                p[3 * i + 1] = points.get(i).y();
                p[3 * i + 2] = points.get(i).z();
            }
            return new TriMesh(p, tri.stream().mapToInt(Integer::intValue).toArray());
        }
    }
}
