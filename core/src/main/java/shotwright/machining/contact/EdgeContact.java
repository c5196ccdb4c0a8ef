package shotwright.machining.contact;

import shotwright.cutter.CutterProfile;

/**
 * A cutter standing on a straight edge in space, and the same turned upside down: the surface a cutter leaves that moves along a straight
 * line. Over the distance t along the edge from the foot of the axis the tip's height is z(t) − g(√(d² + t²)) with d the axis' distance in
 * plan; g is convex, so this is concave and has one highest place, which lies where g′(ρ)·t/ρ equals the edge's slope.
 */
public final class EdgeContact {
    private static final int MOST_STEPS = 30;
    private static final double SMALL_RAD = 1e-10;
    private static final double NO_LENGTH_MM = 1e-12;

    private EdgeContact() {}

    /**
     * The tip height at which the cutter rests on the edge from a to b with its axis at (x, y), millimetres; −∞ where it cannot reach the
     * edge.
     */
    public static double tipMm(
            CutterProfile p, double ax, double ay, double az, double bx, double by, double bz, double x, double y) {
        return tipMm(p, ax, ay, az, bx, by, bz, x, y, Double.NEGATIVE_INFINITY);
    }

    /** As above, but −∞ also where the edge clearly carries the tip no higher than a height already found. */
    static double tipMm(
            CutterProfile p,
            double ax,
            double ay,
            double az,
            double bx,
            double by,
            double bz,
            double x,
            double y,
            double found) {
        double ex = bx - ax, ey = by - ay, length = Math.sqrt(ex * ex + ey * ey), end = p.largestRadiusMm();
        if (length < NO_LENGTH_MM) return Math.max(az, bz) - p.heightMm(Math.hypot(x - ax, y - ay));
        double ux = ex / length, uy = ey / length;
        double s = (x - ax) * ux + (y - ay) * uy, d = Math.abs((y - ay) * ux - (x - ax) * uy);
        if (d > end) return Double.NEGATIVE_INFINITY;
        double half = Math.sqrt(Math.max(0, end * end - d * d)), lo = -s, hi = length - s;
        if (lo > half || hi < -half) return Double.NEGATIVE_INFINITY;
        double m = (bz - az) / length, highest = az + m * (s + (m > 0 ? Math.min(hi, half) : Math.max(lo, -half)));
        if (!(highest - p.heightMm(d) > found)) return Double.NEGATIVE_INFINITY;
        double t = alongMm(p, d, Math.abs(m));
        if (m < 0) t = -t;
        t = Math.min(Math.min(hi, half), Math.max(Math.max(lo, -half), t));
        return az + m * (s + t) - p.heightMm(Math.min(end, Math.sqrt(d * d + t * t)));
    }

    /**
     * The height of the surface left at (x, y) by the cutter whose tip moves straight from a to b, millimetres; +∞ where it does not pass:
     * the least of z(t) + g along the move.
     */
    public static double leftMm(
            CutterProfile p, double ax, double ay, double az, double bx, double by, double bz, double x, double y) {
        return -tipMm(p, ax, ay, -az, bx, by, -bz, x, y);
    }

    /** Where slope·t − g(√(d² + t²)) is greatest, for slopes not below zero and d up to the largest radius. */
    static double alongMm(CutterProfile p, double dMm, double slope) {
        double flat = p.flatRadiusMm(), corner = p.cornerRadiusMm(), end = p.largestRadiusMm();
        if (slope <= 0) return 0;
        double d2 = dMm * dMm, arcEnd = p.arcEndRadiusMm(), cone = p.coneSlope();
        if (corner == 0) {
            if (dMm < flat) {
                double t = Math.sqrt(flat * flat - d2);
                if (cone * t >= slope * flat) return t;
            }
            return onConeMm(dMm, slope, cone, end);
        }
        if (cone < Double.POSITIVE_INFINITY) {
            if (dMm >= arcEnd) return onConeMm(dMm, slope, cone, end);
            double t = Math.sqrt(arcEnd * arcEnd - d2);
            if (cone * t < slope * arcEnd) return onConeMm(dMm, slope, cone, end);
        }
        if (flat == 0) return Math.sqrt(Math.max(0, corner * corner - d2)) * slope / Math.sqrt(1 + slope * slope);
        return onTorusMm(dMm, slope, flat, corner, arcEnd);
    }

    private static double onConeMm(double d, double slope, double cone, double end) {
        double most = Math.sqrt(Math.max(0, end * end - d * d));
        if (cone <= slope) return most;
        if (cone == Double.POSITIVE_INFINITY) return most;
        return Math.min(most, d * slope / Math.sqrt(cone * cone - slope * slope));
    }

    /** Safeguarded Newton on the angle φ of the arc: sin φ·t = slope·ρ·cos φ with ρ = r₀ + r_c·sin φ and t = √(ρ² − d²). */
    private static double onTorusMm(double d, double slope, double flat, double corner, double arcEnd) {
        double lo = d > flat ? Math.asin(Math.min(1, (d - flat) / corner)) : 0;
        double hi = arcEnd - flat >= corner ? Math.PI / 2 : Math.asin((arcEnd - flat) / corner);
        double phi = Math.min(hi, Math.max(lo, Math.atan(slope * 1.1)));
        double t = 0;
        for (int i = 0; i < MOST_STEPS; i++) {
            double sin = Math.sin(phi), cos = Math.cos(phi), rho = flat + corner * sin;
            t = Math.sqrt(Math.max(0, rho * rho - d * d));
            double f = sin * t - slope * rho * cos;
            if (f > 0) hi = phi;
            else lo = phi;
            double growth = corner * cos;
            double slopeOfF = cos * t + (t > 0 ? sin * rho / t * growth : 0) - slope * (growth * cos - rho * sin);
            double next = phi - f / slopeOfF;
            if (!(next > lo && next < hi)) next = (lo + hi) / 2;
            if (Math.abs(next - phi) < SMALL_RAD || hi - lo < SMALL_RAD) break;
            phi = next;
        }
        return t;
    }
}
