package shotwright.machining.finish;

import java.util.ArrayList;
import java.util.List;
import shotwright.cutter.CutterProfile;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.contact.ExactPath;
import shotwright.machining.contour.ArcFit;
import shotwright.machining.contour.Contour;
import shotwright.machining.contour.Offset;
import shotwright.machining.path.Arc;
import shotwright.machining.path.Feed;
import shotwright.machining.path.Line;
import shotwright.region.Region;

/**
 * A wall of one draft cut by a cutter of that taper: its flank is the wall. The tip follows the outline of the floor, moved inward by its
 * radius; deeper walls than one pass takes are cut from the top, each higher pass farther out by its height over the floor times the tangent
 * of the taper. The last loop runs twice: the second time without load.
 */
public final class TaperWall {
    private static final double LEAD_SHARE = 0.5;
    /** How much farther than the wall a round corner may run, mm. */
    private static final double CHORD_MM = 0.0001;

    /** How far a loop runs over its start, mm. */
    private static final double OVERLAP_MM = 0.3;

    private TaperWall() {}

    /**
     * Loops on level ground, from the top pass to the floor, each with a quarter turn in and out on the free side.
     *
     * @param floor the floor's outline: free inside
     * @param cutter the tapered cutter
     * @param floorZMm height of the floor
     * @param depthMm height of the wall
     * @param passMm deepest pass
     * @return one chain of moves for each loop
     */
    public static List<List<Feed>> loops(
            Region floor, CutterProfile cutter, double floorZMm, double depthMm, double passMm, double feedMmPerMin) {
        if (cutter.cornerRadiusMm() > 0 || cutter.halfAngleRad() == 0)
            throw new IllegalArgumentException("cutter: a drafted wall needs a sharp tapered end, not " + cutter);
        if (depthMm > cutter.endHeightMm() + 1e-6)
            throw new IllegalArgumentException("cutter: its taper is " + cutter.endHeightMm() + " mm high and the wall "
                    + depthMm + " mm; take a longer one or step the wall");
        List<List<Feed>> loops = new ArrayList<>();
        int passes = Math.max(1, (int) Math.ceil(depthMm / passMm - 1e-9));
        for (int k = passes - 1; k >= 0; k--) {
            double over = k * depthMm / passes;
            Region where = floor.offsetWithin(over * Math.tan(cutter.halfAngleRad()) - cutter.flatRadiusMm(), CHORD_MM);
            for (Contour ring : Offset.borders(where)) {
                List<Feed> loop = loop(ring, floorZMm + over, cutter.flatRadiusMm(), feedMmPerMin, k == 0 ? 2 : 1);
                if (!loop.isEmpty()) loops.add(loop);
            }
        }
        return loops;
    }

    private static List<Feed> loop(Contour ring, double zMm, double tipMm, double feedMmPerMin, int rounds) {
        List<Feed> round = new ArrayList<>(new ArcFit(ArcFit.TOLERANCE_MM).moves(ring, zMm, feedMmPerMin));
        if (round.isEmpty()) return round;
        int longest = 0;
        for (int i = 1; i < round.size(); i++)
            if (round.get(i).lengthMm() > round.get(longest).lengthMm()) longest = i;
        List<Feed> turned = new ArrayList<>(round.subList(longest, round.size()));
        turned.addAll(round.subList(0, longest));
        Feed first = turned.removeFirst();
        if (first instanceof Arc arc) {
            turned.addFirst(arc.piece(0.5, 1));
            turned.addLast(arc.piece(0, 0.5));
        } else {
            Vec3 middle = first.at(0.5);
            turned.addFirst(new Line(middle, first.to(), feedMmPerMin));
            turned.addLast(new Line(first.from(), middle, feedMmPerMin));
        }
        List<Feed> all = new ArrayList<>();
        for (int k = 0; k < rounds; k++) all.addAll(turned);
        Feed again = turned.getFirst();
        double share = Math.min(1, OVERLAP_MM / again.lengthMm());
        Feed over =
                again instanceof Arc arc ? arc.piece(0, share) : new Line(again.from(), again.at(share), feedMmPerMin);
        all.add(over);
        all.addFirst(lead(all.getFirst(), LEAD_SHARE * tipMm, true));
        all.addLast(lead(all.getLast(), LEAD_SHARE * tipMm, false));
        return all;
    }

    /** A quarter turn on the free, left side: onto the start of a move, or off its end. */
    private static Arc lead(Feed move, double radiusMm, boolean in) {
        Vec3 at = in ? move.from() : move.to();
        Vec2 other = (in ? move.at(1e-3) : move.at(1 - 1e-3)).xy();
        Vec2 along = (in ? other.minus(at.xy()) : at.xy().minus(other)).unit();
        Vec2 centre = at.xy().plus(along.left().times(radiusMm));
        Vec2 free = centre.plus(along.times(in ? -radiusMm : radiusMm));
        Vec3 off = free.atZ(at.z());
        return in
                ? new Arc(off, at, centre, true, move.feedMmPerMin())
                : new Arc(at, off, centre, true, move.feedMmPerMin());
    }

    /** One loop whose tip rides on a floor that is not level: the outline in plan, the height exact. */
    public static List<Vec3> overWavyFloor(Contour ring, ExactPath exact) {
        List<Vec2> closed = new ArrayList<>(ring.points());
        if (ring.closed()) closed.add(ring.points().getFirst());
        return exact.thinned(closed);
    }
}
