package shotwright.machining.clear;

import java.util.ArrayList;
import java.util.List;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.contour.Contour;
import shotwright.machining.path.Arc;
import shotwright.machining.path.Feed;
import shotwright.machining.path.Line;

/** Ways of an end mill down into whole metal. */
public final class Entry {
    private Entry() {}

    /**
     * A helix counter-clockwise, as half turns, no steeper than told, and a level turn at its end.
     *
     * @param centre its axis
     * @param radiusMm radius of the centre's way
     */
    public static List<Feed> helix(
            Vec2 centre, double radiusMm, double fromZMm, double toZMm, double rampRad, double feedMmPerMin) {
        double perHalf = Math.PI * radiusMm * Math.tan(rampRad);
        int halves = Math.max(2, (int) Math.ceil((fromZMm - toZMm) / perHalf));
        List<Feed> moves = new ArrayList<>();
        Vec2 right = centre.plus(new Vec2(radiusMm, 0)), left = centre.minus(new Vec2(radiusMm, 0));
        Vec3 at = right.atZ(fromZMm);
        for (int k = 1; k <= halves + 2; k++) {
            double z = k >= halves ? toZMm : fromZMm + (toZMm - fromZMm) * k / halves;
            Vec3 to = (k % 2 == 1 ? left : right).atZ(z);
            moves.add(new Arc(at, to, centre, true, feedMmPerMin));
            at = to;
        }
        return moves;
    }

    /** Down along a closed line, round after round, no steeper than told; the last round is level. */
    public static List<Feed> along(Contour ring, double fromZMm, double toZMm, double rampRad, double feedMmPerMin) {
        List<Feed> moves = new ArrayList<>();
        List<Vec2> points = ring.points();
        Vec3 at = points.getFirst().atZ(fromZMm);
        double fall = Math.tan(rampRad), length = ring.lengthMm(), level = 0;
        if (!(length > 0)) throw new IllegalArgumentException("ramp: the line has no length");
        for (int i = 1; level < length - 1e-9; i++) {
            Vec2 p = points.get(i % points.size());
            double way = at.xy().distance(p);
            if (way == 0) continue;
            if (at.z() <= toZMm) level += way;
            double z = Math.max(toZMm, at.z() - way * fall);
            if (at.z() > toZMm && z == toZMm && at.z() - way * fall < toZMm - 1e-9) {
                Vec3 bottom = at.toward(p.atZ(toZMm), (at.z() - toZMm) / (way * fall));
                bottom = new Vec3(bottom.x(), bottom.y(), toZMm);
                moves.add(new Line(at, bottom, feedMmPerMin));
                at = bottom;
            }
            moves.add(new Line(at, p.atZ(z), feedMmPerMin));
            at = p.atZ(z);
        }
        return moves;
    }
}
