package shotwright.machining.hole;

import java.util.List;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.feed.Entry;
import shotwright.machining.path.PathBuilder;
import shotwright.machining.workpiece.Hole;

/**
 * The moves of an end mill that bores a hole.
 *
 * @param hole the hole, its mouth up
 * @param bottomZMm the tip at the bottom
 * @param cutterDiaMm diameter of the cutter
 * @param feedMmPerMin feed of its edge along the wall
 * @param passes what it does, in order
 */
record BoredPath(Hole hole, double bottomZMm, double cutterDiaMm, double feedMmPerMin, List<BoreSteps.Pass> passes) {
    /** A helix begins so far above the mouth. */
    private static final double START_ABOVE_MM = 0.2;

    BoredPath {
        passes = List.copyOf(passes);
    }

    /** Helices down from the middle outward, then ring after ring at the full depth, and back to the middle. */
    void write(PathBuilder pen, double clearZMm) {
        pen.over(hole.atMm().atZ(clearZMm), clearZMm);
        double lastMm = 0;
        for (BoreSteps.Pass p : passes) {
            if (p.pitchMm() > 0) down(pen, p);
            else if (p.pathDiaMm() > lastMm + 1e-9) out(pen, p.pathDiaMm());
            else pen.turn(hole.atMm(), bottomZMm, true, Entry.helixMmPerMin(feedMmPerMin, p.pathDiaMm(), cutterDiaMm));
            lastMm = p.pathDiaMm();
        }
        pen.line(hole.atMm().atZ(bottomZMm), feedMmPerMin);
        pen.rapidZ(clearZMm);
    }

    private void down(PathBuilder pen, BoreSteps.Pass p) {
        double f = Entry.helixMmPerMin(Entry.RAMP_FEED_SHARE * feedMmPerMin, p.pathDiaMm(), cutterDiaMm);
        Vec3 start = new Vec3(hole.atMm().x() + p.pathDiaMm() / 2, hole.atMm().y(), hole.mouthZMm() + START_ABOVE_MM);
        if (pen.tip().z() < hole.mouthZMm()) pen.line(hole.atMm().atZ(bottomZMm), feedMmPerMin);
        pen.rapidZ(hole.mouthZMm() + HolePlanner.RETRACT_MM);
        pen.rapid(start.xy().atZ(pen.tip().z()));
        pen.line(start, f);
        pen.helix(hole.atMm(), bottomZMm, p.pitchMm(), true, f);
    }

    /** Out to a larger ring by a half circle through the middle of the hole, and once round. */
    private void out(PathBuilder pen, double pathDiaMm) {
        double f = Entry.helixMmPerMin(feedMmPerMin, pathDiaMm, cutterDiaMm);
        Vec2 centre = hole.atMm();
        pen.line(new Vec3(centre.x() - pathDiaMm / 4, centre.y(), bottomZMm), f);
        Vec3 to = new Vec3(centre.x() + pathDiaMm / 2, centre.y(), bottomZMm);
        pen.arc(to, pen.tip().xy().plus(to.xy()).times(0.5), true, f);
        pen.turn(centre, bottomZMm, true, f);
    }
}
