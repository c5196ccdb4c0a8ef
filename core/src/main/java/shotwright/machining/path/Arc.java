package shotwright.machining.path;

import shotwright.geom.Box3;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;

/**
 * An arc about an axis along z, or a helix when the ends differ in height: z runs in step with the angle. Ends that stand on one point in plan
 * make a full turn. Where the two ends lie at slightly different distances from the centre, as rounding makes them, the radius runs in step
 * with the angle too.
 *
 * @param from start
 * @param to end
 * @param centre centre in plan
 * @param counterClockwise which way round, seen from above
 * @param feedMmPerMin feed along the path
 */
public record Arc(Vec3 from, Vec3 to, Vec2 centre, boolean counterClockwise, double feedMmPerMin) implements Feed {
    /** Ends nearer to each other in plan than this are one point: a tenth of the finest digit a program holds, mm. */
    private static final double SAME_MM = 1e-6;

    /** More than this between the two radii is another curve than an arc: 2·0.01·√2 mm, the limit of the RS274/NGC interpreter. */
    private static final double UNEQUAL_MM = 0.02 * Math.sqrt(2);

    /** The same as a share of the radius, for large arcs. */
    private static final double UNEQUAL_SHARE = 0.001;

    /** However large the arc, this much is too much: a hundred times the limit. */
    private static final double ALWAYS_UNEQUAL_MM = 100 * UNEQUAL_MM;

    public Arc {
        Move.check("from", from);
        Move.check("to", to);
        Move.check("centre", centre.atZ(0));
        Feed.check(feedMmPerMin);
        double startMm = from.xy().distance(centre), endMm = to.xy().distance(centre);
        if (!(startMm > 0) || !(endMm > 0)) throw new IllegalArgumentException("centre: the arc has no radius");
        double apartMm = Math.abs(endMm - startMm);
        double shareMm = UNEQUAL_SHARE * Math.max(startMm, endMm);
        if (apartMm > Math.min(Math.max(UNEQUAL_MM, shareMm), ALWAYS_UNEQUAL_MM))
            throw new IllegalArgumentException("centre: " + centre + " is " + startMm + " mm from the start and "
                    + endMm + " mm from the end; both distances must be the radius");
    }

    /** Radius at the start, mm. */
    public double radiusMm() {
        return from.xy().distance(centre);
    }

    /** Angle turned, above zero, up to a full turn. */
    public double sweepRad() {
        if (from.xy().distance(to.xy()) <= SAME_MM) return 2 * Math.PI;
        Vec2 a = from.xy().minus(centre), b = to.xy().minus(centre);
        double leftRad = Math.atan2(a.cross(b), a.dot(b));
        double sweepRad = counterClockwise ? leftRad : -leftRad;
        return sweepRad > 0 ? sweepRad : sweepRad + 2 * Math.PI;
    }

    @Override
    public Vec3 at(double share) {
        if (share <= 0) return from;
        if (share >= 1) return to;
        Vec2 a = from.xy().minus(centre);
        double startMm = a.length(), endMm = to.xy().distance(centre);
        double angleRad = Math.atan2(a.y(), a.x()) + (counterClockwise ? 1 : -1) * share * sweepRad();
        double radiusMm = startMm + (endMm - startMm) * share;
        return new Vec3(
                centre.x() + radiusMm * Math.cos(angleRad),
                centre.y() + radiusMm * Math.sin(angleRad),
                from.z() + (to.z() - from.z()) * share);
    }

    /** √((r·sweep)² + rise²), r the mean of both ends. */
    @Override
    public double lengthMm() {
        double radiusMm = (radiusMm() + to.xy().distance(centre)) / 2;
        return Math.hypot(radiusMm * sweepRad(), to.z() - from.z());
    }

    @Override
    public Box3 box() {
        Box3 box = new Box3(from, from).join(new Box3(to, to));
        Vec2 a = from.xy().minus(centre);
        double startRad = Math.atan2(a.y(), a.x()), sweepRad = sweepRad();
        for (int quarter = 0; quarter < 4; quarter++) {
            double turnRad = (counterClockwise ? 1 : -1) * (quarter * Math.PI / 2 - startRad);
            double share = (turnRad - 2 * Math.PI * Math.floor(turnRad / (2 * Math.PI))) / sweepRad;
            if (share < 1) {
                Vec3 p = at(share);
                box = box.join(new Box3(p, p));
            }
        }
        return box;
    }

    @Override
    public Arc reversed() {
        return new Arc(to, from, centre, !counterClockwise, feedMmPerMin);
    }

    @Override
    public Arc withFeed(double mmPerMin) {
        return new Arc(from, to, centre, counterClockwise, mmPerMin);
    }

    /** The part of the arc between two shares of it. */
    public Arc piece(double fromShare, double toShare) {
        return new Arc(at(fromShare), at(toShare), centre, counterClockwise, feedMmPerMin);
    }
}
