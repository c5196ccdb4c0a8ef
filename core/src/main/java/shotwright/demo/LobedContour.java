package shotwright.demo;

import java.util.ArrayList;
import java.util.List;
import shotwright.geom.Vec2;

/**
 * A closed contour of lobes and hollows: circular arcs that meet without a kink, the middle of the first lobe on the x axis. Moved inward the
 * arcs keep their centres, so that a wall with draft consists of cones.
 *
 * @param lobes how many
 * @param lobeMm radius of a lobe
 * @param lobeCentreMm how far its centre lies from the middle
 * @param hollowMm radius of a hollow
 * @param hollowCentreMm how far its centre lies from the middle
 */
record LobedContour(int lobes, double lobeMm, double lobeCentreMm, double hollowMm, double hollowCentreMm) {
    /**
     * From its outermost and innermost radius and the radius of a lobe; the hollow's radius follows from a² + b² − 2 a b cos(π/n) = (R + S)²,
     * with a, b the distances of the centres and R, S the radii.
     */
    static LobedContour of(int lobes, double outermostMm, double innermostMm, double lobeMm) {
        double a = outermostMm - lobeMm, k = lobeMm - innermostMm, c = StrictMath.cos(Math.PI / lobes);
        double b = (a * a - k * k) / (2 * (k + a * c));
        return new LobedContour(lobes, lobeMm, a, b - innermostMm, b);
    }

    /** The point of the contour under an angle. */
    Vec2 at(double angleDeg) {
        double off = fromMiddleOfLobe(angleDeg), a = StrictMath.toRadians(off);
        if (StrictMath.abs(off) <= joinDeg())
            return Rows.polar(
                    lobeCentreMm * StrictMath.cos(a) + leg(lobeMm, lobeCentreMm * StrictMath.sin(a)), angleDeg);
        double h = StrictMath.toRadians(180.0 / lobes - StrictMath.abs(off));
        return Rows.polar(
                hollowCentreMm * StrictMath.cos(h) - leg(hollowMm, hollowCentreMm * StrictMath.sin(h)), angleDeg);
    }

    /** The outward unit normal there. */
    Vec2 normal(double angleDeg) {
        double off = fromMiddleOfLobe(angleDeg), middle = angleDeg - off;
        Vec2 p = at(angleDeg);
        if (StrictMath.abs(off) <= joinDeg())
            return p.minus(Rows.polar(lobeCentreMm, middle)).unit();
        double half = 180.0 / lobes;
        return Rows.polar(hollowCentreMm, middle + (off < 0 ? -half : half))
                .minus(p)
                .unit();
    }

    /**
     * An arc of the contour.
     *
     * @param from its start, counter-clockwise
     * @param over its middle
     * @param to its end
     */
    record Arc(Vec2 from, Vec2 over, Vec2 to) {}

    /** All arcs moved inward, lobe and hollow in turn, counter-clockwise. */
    List<Arc> arcs(double inwardMm) {
        double step = 360.0 / lobes;
        List<Arc> out = new ArrayList<>();
        for (int k = 0; k < lobes; k++) {
            double at = step * k;
            Vec2 begin = join(at, -1, inwardMm), end = join(at, 1, inwardMm);
            out.add(new Arc(begin, Rows.polar(lobeCentreMm + lobeMm - inwardMm, at), end));
            Vec2 floor = Rows.polar(hollowCentreMm - hollowMm - inwardMm, at + step / 2);
            out.add(new Arc(end, floor, join(at + step, -1, inwardMm)));
        }
        return out;
    }

    /** Where a lobe meets its neighbour: on the line between their centres. */
    private Vec2 join(double lobeDeg, int side, double inwardMm) {
        Vec2 lobe = Rows.polar(lobeCentreMm, lobeDeg);
        Vec2 hollow = Rows.polar(hollowCentreMm, lobeDeg + side * 180.0 / lobes);
        return lobe.plus(hollow.minus(lobe).unit().times(lobeMm - inwardMm));
    }

    private double joinDeg() {
        Vec2 p = join(0, 1, 0);
        return StrictMath.toDegrees(StrictMath.atan2(p.y(), p.x()));
    }

    private double fromMiddleOfLobe(double angleDeg) {
        double step = 360.0 / lobes;
        return angleDeg - step * StrictMath.rint(angleDeg / step);
    }

    private static double leg(double hypotenuse, double other) {
        return StrictMath.sqrt(hypotenuse * hypotenuse - other * other);
    }
}
