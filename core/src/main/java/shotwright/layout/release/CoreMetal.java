package shotwright.layout.release;

import java.util.ArrayList;
import java.util.List;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.layout.Half;
import shotwright.mesh.TriMesh;

/**
 * Metal between a pin hole and the molding surface beside it. A hole that ends under a face of the part runs through the half's metal below
 * that face; every facet that reaches deeper into the half than the face stands beside the hole, and the nearest of them, measured square to
 * the pull, leaves the wall of metal. A boss end or a rim lies deeper than all around it, so that nothing stands beside its pin.
 */
final class CoreMetal {
    /** No metal thinner than this stands beside a hole: the least thickness at a tip (common practice). */
    static final double LEAST_MM = 1;

    /** Wanted is the centre one and a half diameters from the edge, which leaves one diameter of metal, or 2.5 mm (common practice). */
    private static final double WANTED_MOST_MM = 2.5;

    /** A face that rises or falls by no more than this under a pin is one face. */
    static final double SAME_FACE_MM = 0.3;

    private final TriMesh mesh;
    private final int sign;

    CoreMetal(TriMesh mesh, Half half) {
        this.mesh = mesh;
        this.sign = half.sign();
    }

    static double wantedMm(double pinMm) {
        return Math.max(LEAST_MM, Math.min(pinMm, WANTED_MOST_MM));
    }

    /**
     * Thinnest metal beside a pin hole and its wider rest, mm; infinite when nothing stands beside it, below zero when the hole breaks through.
     *
     * @param at centre of the pin, frame of the mesh
     * @param faceMm height of the face it pushes
     * @param pinMm diameter of the pin
     */
    double besideMm(Vec2 at, double faceMm, double pinMm) {
        double deep = sign * faceMm;
        double fitted = nearestMm(at, deep + SAME_FACE_MM) - PinPlan.holeMm(pinMm) / 2;
        double rest = nearestMm(at, deep + PinPlan.guideMm(pinMm)) - PinPlan.reliefMm(pinMm) / 2;
        return Math.min(fitted, rest);
    }

    /** Way from a vertical line to the nearest piece of surface that lies deeper than a depth, seen along the pull. */
    private double nearestMm(Vec2 at, double depthMm) {
        double least = Double.POSITIVE_INFINITY;
        for (int f = 0; f < mesh.facetCount(); f++) {
            Vec3 a = mesh.cornerPoint(f, 0), b = mesh.cornerPoint(f, 1), c = mesh.cornerPoint(f, 2);
            if (Math.max(sign * a.z(), Math.max(sign * b.z(), sign * c.z())) <= depthMm) continue;
            if (outOfReach(at, least, a, b, c)) continue;
            least = Math.min(least, nearest(at, depthMm, a, b, c));
        }
        return least;
    }

    private static boolean outOfReach(Vec2 p, double reach, Vec3 a, Vec3 b, Vec3 c) {
        return Math.min(a.x(), Math.min(b.x(), c.x())) > p.x() + reach
                || Math.max(a.x(), Math.max(b.x(), c.x())) < p.x() - reach
                || Math.min(a.y(), Math.min(b.y(), c.y())) > p.y() + reach
                || Math.max(a.y(), Math.max(b.y(), c.y())) < p.y() - reach;
    }

    /** The facet cut off at the depth, seen along the pull: zero inside it, else the nearest of its edges. */
    private double nearest(Vec2 p, double depthMm, Vec3... corners) {
        List<Vec2> ring = deeper(depthMm, corners);
        double least = Double.POSITIVE_INFINITY;
        int left = 0, right = 0;
        for (int k = 0; k < ring.size(); k++) {
            Vec2 a = ring.get(k), b = ring.get((k + 1) % ring.size());
            least = Math.min(least, toSegment(p, a, b));
            double side = b.minus(a).cross(p.minus(a));
            if (side > 0) left++;
            if (side < 0) right++;
        }
        return left == ring.size() || right == ring.size() ? 0 : least;
    }

    private List<Vec2> deeper(double depthMm, Vec3... corners) {
        List<Vec2> ring = new ArrayList<>(4);
        for (int k = 0; k < 3; k++) {
            Vec3 a = corners[k], b = corners[(k + 1) % 3];
            double s = sign * a.z() - depthMm, t = sign * b.z() - depthMm;
            if (s >= 0) ring.add(a.xy());
            if (s * t < 0) ring.add(a.plus(b.minus(a).times(s / (s - t))).xy());
        }
        return ring;
    }

    private static double toSegment(Vec2 p, Vec2 a, Vec2 b) {
        Vec2 way = b.minus(a);
        double all = way.dot(way);
        double share = all == 0 ? 0 : Math.clamp(p.minus(a).dot(way) / all, 0, 1);
        return p.distance(a.plus(way.times(share)));
    }
}
