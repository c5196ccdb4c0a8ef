package shotwright.machining.contact;

import shotwright.cutter.CutterProfile;
import shotwright.geom.Vec3;
import shotwright.mesh.TriMesh;

/** The height of a resting cutter by plain search, for tests: the highest place of z − g(ρ) over each facet, by trisection in x and in y. */
final class FacetSearch {
    private static final int STEPS = 100;
    private static final double OUTSIDE = 1e6;

    private FacetSearch() {}

    static double highest(TriMesh mesh, CutterProfile p, double x, double y) {
        double best = Double.NEGATIVE_INFINITY;
        for (int f = 0; f < mesh.facetCount(); f++) best = Math.max(best, onFacet(mesh, f, p, x, y));
        return best < -OUTSIDE / 1e3 ? Double.NEGATIVE_INFINITY : best;
    }

    private static double onFacet(TriMesh mesh, int f, CutterProfile p, double x, double y) {
        Vec3[] v = {mesh.cornerPoint(f, 0), mesh.cornerPoint(f, 1), mesh.cornerPoint(f, 2)};
        Vec3 n = mesh.doubleAreaNormal(f);
        double r = p.largestRadiusMm();
        double lo = Math.max(x - r, Math.min(v[0].x(), Math.min(v[1].x(), v[2].x())));
        double hi = Math.min(x + r, Math.max(v[0].x(), Math.max(v[1].x(), v[2].x())));
        if (lo > hi) return -OUTSIDE;
        for (int i = 0; i < STEPS; i++) {
            double a = lo + (hi - lo) / 3, b = hi - (hi - lo) / 3;
            if (onLine(v, n, p, x, y, a) < onLine(v, n, p, x, y, b)) lo = a;
            else hi = b;
        }
        return onLine(v, n, p, x, y, (lo + hi) / 2);
    }

    private static double onLine(Vec3[] v, Vec3 n, CutterProfile p, double x, double y, double at) {
        double lo = Double.POSITIVE_INFINITY, hi = -lo;
        for (int k = 0; k < 3; k++) {
            Vec3 a = v[k], b = v[(k + 1) % 3];
            if (Math.min(a.x(), b.x()) > at || Math.max(a.x(), b.x()) < at || a.x() == b.x()) continue;
            double py = a.y() + (b.y() - a.y()) * ((at - a.x()) / (b.x() - a.x()));
            lo = Math.min(lo, py);
            hi = Math.max(hi, py);
        }
        double half = Math.sqrt(Math.max(0, p.largestRadiusMm() * p.largestRadiusMm() - (at - x) * (at - x)));
        lo = Math.max(lo, y - half);
        hi = Math.min(hi, y + half);
        if (lo > hi) return -OUTSIDE * (1 + lo - hi);
        for (int i = 0; i < STEPS; i++) {
            double a = lo + (hi - lo) / 3, b = hi - (hi - lo) / 3;
            if (value(v[0], n, p, x, y, at, a) < value(v[0], n, p, x, y, at, b)) lo = a;
            else hi = b;
        }
        return value(v[0], n, p, x, y, at, (lo + hi) / 2);
    }

    private static double value(Vec3 on, Vec3 n, CutterProfile p, double x, double y, double px, double py) {
        double z = on.z() - ((px - on.x()) * n.x() + (py - on.y()) * n.y()) / n.z();
        return z - p.heightMm(Math.min(p.largestRadiusMm(), Math.hypot(px - x, py - y)));
    }
}
