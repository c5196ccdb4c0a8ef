package shotwright.machining.proof;

import java.util.Arrays;
import shotwright.cutter.CutterProfile;
import shotwright.geom.Vec3;

/**
 * The lowest a cutter reaches while its tip goes straight from one place to another, row by row of a grid: the minimum over s in [0, L] of
 * z₀ + m·s + g(√(d² + (u − s)²)), u and d the place along and across the move, m its slope. The function is convex in s, so its minimum on the
 * endless line, brought into [0, L], is the minimum. On that line it lies ahead of the place by v on the side that goes down:
 *
 * <ul>
 *   <li>flat of radius R: v = √(R² − d²);
 *   <li>ball of radius R: v = |m|/√(1 + m²)·√(R² − d²);
 *   <li>cone of slope k on a flat r₀: v = |m|·|d|/√(k² − m²), at least the edge of the flat, at most the rim; the rim when |m| ≥ k;
 *   <li>any other: where the normal of the corner arc stands across the move.
 * </ul>
 *
 * Rows are plain loops without branches over float numbers counted from the move's start, |·| in place of greater-than: what rounding makes
 * negative is next to nought, and (|s| − |s − L| + L)/2 is s brought into [0, L].
 */
final class LineSweep implements Sweep {
    /** Newton steps at most. */
    private static final int MOST_STEPS = 20;

    /** 0, 1, 2, …: counted in floats, so that rows stay loops of one kind of number. */
    private static final float[] COUNT = new float[1 << 16];

    static {
        for (int i = 0; i < COUNT.length; i++) COUNT[i] = i;
    }

    /** Shorter in plan than this is no way at all, mm. */
    private static final double NO_WAY_MM = 1e-9;

    private final double fromX;
    private final double fromY;
    private final double fromZ;
    private final double ux;
    private final double uy;
    private final double length;
    private final double slope;
    private final double radius;
    private final double flat;
    private final double corner;
    private final double arcEnd;
    private final double coneFrom;
    private final double cone;
    private final CutterProfile profile;
    private final double lowest;

    LineSweep(CutterProfile profile, Vec3 from, Vec3 to) {
        double dx = to.x() - from.x(), dy = to.y() - from.y(), way = Math.hypot(dx, dy);
        boolean goes = way > NO_WAY_MM;
        this.profile = profile;
        lowest = Math.min(from.z(), to.z());
        fromX = from.x();
        fromY = from.y();
        fromZ = goes ? from.z() : lowest;
        ux = goes ? dx / way : 1;
        uy = goes ? dy / way : 0;
        length = goes ? way : 0;
        slope = goes ? (to.z() - from.z()) / way : 0;
        radius = profile.largestRadiusMm();
        flat = profile.flatRadiusMm();
        corner = profile.cornerRadiusMm();
        arcEnd = corner * Math.cos(profile.halfAngleRad());
        coneFrom = profile.arcEndRadiusMm();
        cone = profile.halfAngleRad() == 0 ? 0 : profile.coneSlope();
    }

    @Override
    public double lowestMm() {
        return lowest;
    }

    @Override
    public double lowestY() {
        return fromY + Math.min(0, length * uy) - radius;
    }

    @Override
    public double highestY() {
        return fromY + Math.max(0, length * uy) + radius;
    }

    @Override
    public boolean span(double y, double[] ends) {
        double left = Double.POSITIVE_INFINITY, right = Double.NEGATIVE_INFINITY;
        for (int end = 0; end < 2; end++) {
            double cx = fromX + end * length * ux, dy = y - fromY - end * length * uy, h2 = radius * radius - dy * dy;
            if (h2 < 0) continue;
            double h = Math.sqrt(h2);
            left = Math.min(left, cx - h);
            right = Math.max(right, cx + h);
        }
        for (int side = -1; side <= 1; side += 2) {
            double sx = -side * radius * uy, sy = side * radius * ux, rise = length * uy;
            double share = rise == 0 ? -1 : (y - fromY - sy) / rise;
            if (share < 0 || share > 1) continue;
            double x = fromX + sx + share * length * ux;
            left = Math.min(left, x);
            right = Math.max(right, x);
        }
        ends[0] = left;
        ends[1] = right;
        return left <= right;
    }

    @Override
    public void fill(float[] out, int n, double x0, double step, double y, float[] top, int first) {
        double rx = x0 - fromX, ry = y - fromY;
        float u0 = (float) (rx * ux + ry * uy), du = (float) (step * ux);
        float d0 = (float) (-rx * uy + ry * ux), dd = (float) (-step * uy);
        if (flat == radius) flat(out, n, u0, du, d0, dd);
        else if (corner == radius) ball(out, n, u0, du, d0, dd);
        else if (slope == 0) level(out, n, u0, du, d0, dd, fromZ);
        else if (corner == 0) cone(out, n, u0, du, d0, dd);
        else corner(out, n, u0, du, d0, dd, top, first);
    }

    private void flat(float[] out, int n, float u0, float du, float d0, float dd) {
        if (slope == 0) {
            Arrays.fill(out, 0, n, (float) fromZ);
            return;
        }
        float r2 = (float) (radius * radius), len = (float) length, z0 = (float) fromZ, m = (float) (slope / 2);
        float ahead = slope < 0 ? 1 : -1;
        float[] k = COUNT;
        for (int i = 0; i < n; i++) {
            float u = u0 + k[i] * du, d = d0 + k[i] * dd;
            float s = u + ahead * (float) Math.sqrt(Math.abs(r2 - d * d));
            out[i] = z0 + m * (Math.abs(s) - Math.abs(s - len) + len);
        }
    }

    private void ball(float[] out, int n, float u0, float du, float d0, float dd) {
        float r2 = (float) (radius * radius), len = (float) length, top = (float) (fromZ + radius), m = (float) slope;
        float[] k = COUNT;
        if (slope == 0) {
            for (int i = 0; i < n; i++) {
                float u = u0 + k[i] * du, d = d0 + k[i] * dd;
                float e = u - 0.5f * (Math.abs(u) - Math.abs(u - len) + len);
                out[i] = top - (float) Math.sqrt(Math.abs(r2 - d * d - e * e));
            }
            return;
        }
        float ahead = (float) (-slope / Math.sqrt(1 + slope * slope));
        for (int i = 0; i < n; i++) {
            float u = u0 + k[i] * du, d = d0 + k[i] * dd, a2 = Math.abs(r2 - d * d);
            float s = u + ahead * (float) Math.sqrt(a2);
            s = 0.5f * (Math.abs(s) - Math.abs(s - len) + len);
            float e = u - s;
            out[i] = top + m * s - (float) Math.sqrt(Math.abs(a2 - e * e));
        }
    }

    private void level(float[] out, int n, float u0, float du, float d0, float dd, double tip) {
        float len = (float) length, z0 = (float) (tip + corner), r0 = (float) flat, end = (float) arcEnd;
        float c2 = (float) (corner * corner), from = (float) coneFrom, steep = (float) (cone / 2);
        float[] k = COUNT;
        for (int i = 0; i < n; i++) {
            float u = u0 + k[i] * du, d = d0 + k[i] * dd;
            float e = u - 0.5f * (Math.abs(u) - Math.abs(u - len) + len);
            float rho = (float) Math.sqrt(d * d + e * e), w = rho - r0, c = rho - from;
            float a = 0.5f * (Math.abs(w) - Math.abs(w - end) + end);
            out[i] = z0 - (float) Math.sqrt(Math.abs(c2 - a * a)) + steep * (c + Math.abs(c));
        }
    }

    private void cone(float[] out, int n, float u0, float du, float d0, float dd) {
        float len = (float) length, z0 = (float) fromZ, r0 = (float) flat, half = (float) (cone / 2), m = (float) slope;
        float r2 = (float) (radius * radius), f2 = (float) (flat * flat), ahead = slope < 0 ? 1 : -1;
        double steep = Math.abs(slope);
        float spread = steep < cone ? (float) (steep / Math.sqrt(cone * cone - slope * slope)) : Float.MAX_VALUE;
        float[] k = COUNT;
        for (int i = 0; i < n; i++) {
            float u = u0 + k[i] * du, d = d0 + k[i] * dd, f = f2 - d * d;
            float rim = (float) Math.sqrt(Math.abs(r2 - d * d)), edge = (float) Math.sqrt(0.5f * (f + Math.abs(f)));
            float v = Math.min(Math.max(spread * Math.abs(d), edge), rim), s = u + ahead * v;
            s = 0.5f * (Math.abs(s) - Math.abs(s - len) + len);
            float e = u - s, c = (float) Math.sqrt(d * d + e * e) - r0;
            out[i] = z0 + m * s + half * (c + Math.abs(c));
        }
    }

    /**
     * A corner arc, with or without a flat before and a cone behind it: it is touched where its normal stands across the move, at q = sin θ of
     * the arc with (r₀ + r_c·q)²·(1 + m² − m²/q²) = d²; a few Newton steps inside a bracket find q. Asked
     * only where the stock stands higher than the lower end of the move would leave it.
     */
    private void corner(float[] out, int n, float u0, float du, float d0, float dd, float[] top, int first) {
        level(out, n, u0, du, d0, dd, lowest);
        double ahead = slope < 0 ? 1 : -1;
        for (int i = 0; i < n; i++) {
            if (top[first + i] <= out[i]) continue;
            double u = u0 + i * du, d = Math.abs(d0 + i * dd);
            double s = Math.clamp(u + ahead * aheadOf(d), 0, length);
            double rho = Math.min(radius, Math.hypot(d, u - s));
            out[i] = (float) (fromZ + slope * s + profile.heightMm(rho));
        }
    }

    private double aheadOf(double d) {
        double m = Math.abs(slope), rim = Math.sqrt(Math.max(0, radius * radius - d * d));
        double low = m / Math.sqrt(1 + m * m), high = arcEnd / corner;
        if (low >= high) return rim;
        if (touch(high, m, d) < 0) return m < cone ? Math.min(rim, m * d / Math.sqrt(cone * cone - m * m)) : rim;
        double q = (low + high) / 2;
        for (int k = 0; k < MOST_STEPS; k++) {
            double h = touch(q, m, d), r = flat + corner * q, m2 = m * m;
            if (h < 0) low = q;
            else high = q;
            double rise = 2 * corner * r * (1 + m2 - m2 / (q * q)) + 2 * r * r * m2 / (q * q * q), next = q - h / rise;
            if (!(next > low && next < high)) next = (low + high) / 2;
            boolean still = Math.abs(next - q) < 1e-6;
            q = next;
            if (still) break;
        }
        return Math.min(rim, (flat + corner * q) * m * Math.sqrt(Math.max(0, 1 - q * q)) / q);
    }

    private double touch(double q, double m, double d) {
        double r = flat + corner * q;
        return r * r * (1 + m * m - m * m / (q * q)) - d * d;
    }
}
