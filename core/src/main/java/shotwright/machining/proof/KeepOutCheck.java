package shotwright.machining.proof;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.cutter.MountedCutter;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;
import shotwright.machining.path.Arc;
import shotwright.machining.path.Operation;
import shotwright.machining.path.Step;

/** Whether anything that turns comes nearer to a jaw or clamp than its clearance. The cutting end counts as a cylinder of its full width. */
final class KeepOutCheck {
    /** Arcs are looked at in chords of no more than this, rad: 2 % of the radius off at most. */
    private static final double CHORD_RAD = 0.4;

    private final ProofTask task;

    KeepOutCheck(ProofTask task) {
        this.task = task;
    }

    List<Fault> check(int index, Operation operation) {
        List<Fault> faults = new ArrayList<>();
        MountedCutter cutter = task.cutter(operation);
        double endMm = cutter.profile().largestRadiusMm();
        double flutesMm = cutter.cutter().fluteLengthMm().value();
        List<MountedCutter.Cylinder> turning = new ArrayList<>();
        turning.add(new MountedCutter.Cylinder(MountedCutter.Part.FLUTES, 0, flutesMm, endMm));
        for (MountedCutter.Cylinder c : cutter.cylinders()) if (c.part() != MountedCutter.Part.FLUTES) turning.add(c);
        for (KeepOut k : task.keepOuts())
            for (int m = 0; m < operation.moves().size(); m++) {
                Fault f = hit(index, m, operation.moves().get(m).steps(), k, turning);
                if (f != null) faults.add(f);
            }
        return faults;
    }

    private @Nullable Fault hit(
            int index, int m, List<Step> steps, KeepOut keepOut, List<MountedCutter.Cylinder> turning) {
        for (Step s : steps) {
            int pieces = s instanceof Arc a ? (int) Math.ceil(a.sweepRad() / CHORD_RAD) : 1;
            for (int p = 0; p < pieces; p++) {
                Vec3 from = s.at(p / (double) pieces), to = s.at((p + 1) / (double) pieces);
                double slackMm = s instanceof Arc a ? a.radiusMm() * (1 - Math.cos(CHORD_RAD / 2)) : 0;
                for (MountedCutter.Cylinder c : turning) {
                    double reach = c.radiusMm() + task.limits().clearanceMm() + slackMm;
                    double apart = apartMm(from, to, c, keepOut.box());
                    if (apart < reach) {
                        String what = keepOut.name() + ", " + c.part().words();
                        return Fault.of(Fault.Kind.KEEP_OUT, index, m, to, what, Math.max(0, reach - apart), 0);
                    }
                }
            }
        }
        return null;
    }

    /** Distance in plan between the axis and the box while the cylinder is low enough to meet it. */
    private static double apartMm(Vec3 from, Vec3 to, MountedCutter.Cylinder c, Box3 box) {
        double[] share = {0, 1};
        double below = box.max().z() - c.fromMm(), above = box.min().z() - c.toMm();
        if (!clip(from.z(), to.z(), below, share, true) || !clip(from.z(), to.z(), above, share, false))
            return Double.POSITIVE_INFINITY;
        return segmentToBox(from.toward(to, share[0]), from.toward(to, share[1]), box);
    }

    /** Keeps the shares of the way on which z lies below (or above) a bound; false when there are none. */
    private static boolean clip(double z0, double z1, double bound, double[] share, boolean below) {
        double a = below ? bound - z0 : z0 - bound, b = below ? bound - z1 : z1 - bound;
        if (a < 0 && b < 0) return false;
        if (a < 0) share[0] = Math.max(share[0], a / (a - b));
        if (b < 0) share[1] = Math.min(share[1], a / (a - b));
        return share[0] <= share[1];
    }

    /** The distance to a convex box is convex along the way: its minimum is found by thirds. */
    private static double segmentToBox(Vec3 from, Vec3 to, Box3 box) {
        double low = 0, high = 1;
        for (int i = 0; i < 60; i++) {
            double a = low + (high - low) / 3, b = high - (high - low) / 3;
            if (toBox(from.toward(to, a), box) <= toBox(from.toward(to, b), box)) high = b;
            else low = a;
        }
        return toBox(from.toward(to, (low + high) / 2), box);
    }

    private static double toBox(Vec3 p, Box3 box) {
        double dx =
                Math.max(0, Math.max(box.min().x() - p.x(), p.x() - box.max().x()));
        double dy =
                Math.max(0, Math.max(box.min().y() - p.y(), p.y() - box.max().y()));
        return Math.hypot(dx, dy);
    }
}
