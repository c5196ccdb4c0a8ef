package shotwright.machining.gcode;

import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.path.Arc;

/** The arc that I and J, or R, ask for. */
final class ArcWords {
    /** Half the chord may be longer than R by this much, as rounding makes it: 0.00005 in, the limit of RS274/NGC. */
    private static final double CHORD_MM = 0.00127;

    /** Nearer ends than this are one point, mm. */
    private static final double SAME_MM = 1e-6;

    private ArcWords() {}

    static Arc arc(Block block, Vec3 from, Vec3 to, double unitMm, boolean left, double feedMmPerMin) {
        boolean centre = block.has('I') || block.has('J'), radius = block.has('R');
        if (block.has('K'))
            throw block.at()
                    .fault("K gives the centre of an arc seen from the side", "use I and J: arcs lie in X and Y");
        if (centre && radius)
            throw block.at().fault("the arc has a radius R and a centre I, J", "keep I and J and take R out");
        if (!centre && !radius) throw block.at().fault("the arc has no centre", "add I and J from its start");
        if (block.has('P') && block.number('P', "the turns") != 1)
            throw block.at().fault("the arc turns more than once", "write each turn on a line of its own");
        Vec2 c = centre
                ? from.xy().plus(new Vec2(offset(block, 'I'), offset(block, 'J')).times(unitMm))
                : byRadius(block, from.xy(), to.xy(), block.number('R', "the radius") * unitMm, left);
        try {
            return new Arc(from, to, c, left, feedMmPerMin);
        } catch (IllegalArgumentException e) {
            throw block.at()
                    .fault(
                            "start and end of the arc do not lie on one circle about its centre",
                            "check X, Y, I and J: I and J go from the start of the arc to its centre");
        }
    }

    private static double offset(Block block, char letter) {
        return block.has(letter) ? block.number(letter, "the centre") : 0;
    }

    /** The centre at distance |R| from both ends: on the left of a left-hand arc up to half a turn, else on the other side. */
    private static Vec2 byRadius(Block block, Vec2 from, Vec2 to, double radiusMm, boolean left) {
        Vec2 chord = to.minus(from);
        double half = chord.length() / 2;
        if (half <= SAME_MM)
            throw block.at()
                    .fault("the arc ends where it starts, so R fits many circles", "write I and J instead of R");
        double r = Math.abs(radiusMm);
        if (half > r + CHORD_MM) throw block.at().fault("the radius is too small to reach the end", "check R, X and Y");
        double height = Math.sqrt(Math.max(0, r * r - half * half));
        boolean onLeft = left == radiusMm > 0;
        return from.plus(to).times(0.5).plus(chord.left().unit().times(onLeft ? height : -height));
    }
}
