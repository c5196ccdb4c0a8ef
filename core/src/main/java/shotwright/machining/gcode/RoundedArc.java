package shotwright.machining.gcode;

import shotwright.geom.Vec2;

/**
 * The centre of an arc whose ends were rounded to the last digit: the old centre moved onto the perpendicular bisector of the new ends, then
 * to the digit at which the two radii differ least. All lengths in last digits.
 */
final class RoundedArc {
    private RoundedArc() {}

    /** Offset of the centre from the start, in whole last digits. */
    static long[] centre(Vec2 start, Vec2 end, Vec2 wanted) {
        Vec2 chord = end.minus(start), middle = start.plus(end).times(0.5);
        Vec2 across = chord.length() > 0 ? chord.left().unit() : new Vec2(0, 0);
        Vec2 ideal = chord.length() > 0
                ? middle.plus(across.times(wanted.minus(middle).dot(across)))
                : wanted;
        long bestI = 0, bestJ = 0;
        double least = Double.POSITIVE_INFINITY;
        long i0 = Math.round(ideal.x() - start.x()), j0 = Math.round(ideal.y() - start.y());
        for (long i = i0 - 1; i <= i0 + 1; i++) {
            for (long j = j0 - 1; j <= j0 + 1; j++) {
                Vec2 c = start.plus(new Vec2(i, j));
                double unequal = Math.abs(c.distance(start) - c.distance(end));
                double cost = unequal + 0.1 * c.distance(ideal);
                if (cost < least) {
                    least = cost;
                    bestI = i;
                    bestJ = j;
                }
            }
        }
        return new long[] {bestI, bestJ};
    }
}
