package shotwright.machining.proof;

import shotwright.cutter.CutterProfile;
import shotwright.geom.Box3;
import shotwright.geom.Vec2;
import shotwright.machining.path.Arc;

/**
 * A level arc: over a place at distance q from its centre and within its angle the cutter reaches z + g(|q − r|), elsewhere z + g of the
 * distance to the nearer end.
 */
final class ArcSweep implements Sweep {
    private final CutterProfile profile;
    private final double z;
    private final double reach;
    private final Box3 box;
    private final double cx;
    private final double cy;
    private final double r;
    private final Vec2 first;
    private final Vec2 last;
    private final boolean wide;

    ArcSweep(CutterProfile profile, Arc arc, double liftMm) {
        this.profile = profile;
        z = arc.from().z() + liftMm;
        reach = profile.largestRadiusMm();
        box = arc.box();
        cx = arc.centre().x();
        cy = arc.centre().y();
        r = (arc.radiusMm() + arc.to().xy().distance(arc.centre())) / 2;
        Vec2 a = arc.from().xy().minus(arc.centre()), b = arc.to().xy().minus(arc.centre());
        first = arc.counterClockwise() ? a : b;
        last = arc.counterClockwise() ? b : a;
        wide = arc.sweepRad() > Math.PI;
    }

    @Override
    public double lowestMm() {
        return z;
    }

    @Override
    public double lowestY() {
        return box.min().y() - reach;
    }

    @Override
    public double highestY() {
        return box.max().y() + reach;
    }

    @Override
    public boolean span(double y, double[] ends) {
        double h2 = (r + reach) * (r + reach) - (y - cy) * (y - cy);
        if (h2 < 0) return false;
        double h = Math.sqrt(h2);
        ends[0] = Math.max(cx - h, box.min().x() - reach);
        ends[1] = Math.min(cx + h, box.max().x() + reach);
        return ends[0] <= ends[1];
    }

    @Override
    public void fill(float[] out, int n, double x0, double step, double y, float[] top, int start) {
        double py = y - cy, reach2 = reach * reach;
        for (int i = 0; i < n; i++) {
            out[i] = Float.MAX_VALUE;
            if (top[start + i] <= z) continue;
            double px = x0 + i * step - cx;
            double rho2 = within(px, py) ? square(Math.sqrt(px * px + py * py) - r) : nearerEnd(px, py);
            if (rho2 <= reach2) out[i] = (float) (z + profile.heightMm(Math.sqrt(rho2)));
        }
    }

    /** Left of the first ray and right of the last; for more than half a turn one of the two is enough. A whole turn has both on one ray. */
    private boolean within(double px, double py) {
        boolean pastFirst = first.x() * py - first.y() * px >= 0, beforeLast = last.x() * py - last.y() * px <= 0;
        return wide ? pastFirst || beforeLast : pastFirst && beforeLast;
    }

    private double nearerEnd(double px, double py) {
        double a = square(px - first.x()) + square(py - first.y()), b = square(px - last.x()) + square(py - last.y());
        return Math.min(a, b);
    }

    private static double square(double v) {
        return v * v;
    }
}
