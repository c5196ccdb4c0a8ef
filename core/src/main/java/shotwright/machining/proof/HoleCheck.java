package shotwright.machining.proof;

import java.util.ArrayList;
import java.util.List;
import shotwright.cutter.Cutter;
import shotwright.cutter.CutterProfile;
import shotwright.cutter.MountedCutter;
import shotwright.geom.Box3;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.path.Arc;
import shotwright.machining.path.Feed;
import shotwright.machining.path.Move;
import shotwright.machining.path.Operation;
import shotwright.machining.path.Step;

/**
 * Holes against their circle and flat places against their height, from the moves themselves. A cutter of radius R whose axis comes as far as e
 * from the hole's axis makes it R + e wide; the full width reaches down to the tip plus the height of the cutting end.
 */
final class HoleCheck {
    /** Heights nearer than this are one, mm. */
    private static final double SAME_MM = 1e-6;

    /** Steps at which a move over a flat place is asked, mm. */
    private static final double ASK_MM = 0.1;

    private final ProofTask task;

    HoleCheck(ProofTask task) {
        this.task = task;
    }

    /** What stands out of all moves at one place. */
    private static final class Extreme {
        private double value;
        private int operation = -1;
        private int move;
        private Vec3 at = Vec3.ZERO;

        Extreme(double start) {
            value = start;
        }

        void take(double v, int o, int m, Vec3 p) {
            value = v;
            operation = o;
            move = m;
            at = p;
        }

        Fault fault(Fault.Kind kind, String what, double found, double limit) {
            return Fault.of(kind, Math.max(0, operation), move, at, what, found, limit);
        }
    }

    List<Fault> check() {
        List<Fault> faults = new ArrayList<>();
        for (Hole h : task.holes()) hole(h, faults);
        for (Level l : task.levels()) level(l, faults);
        return faults;
    }

    private void hole(Hole h, List<Fault> faults) {
        double wantedMm = h.diameterMm() / 2;
        Extreme wide = new Extreme(0),
                deep = new Extreme(Double.POSITIVE_INFINITY),
                tip = new Extreme(Double.POSITIVE_INFINITY);
        List<Operation> operations = task.program().operations();
        for (int o = 0; o < operations.size(); o++) {
            MountedCutter cutter = task.cutter(operations.get(o));
            CutterProfile profile = cutter.profile();
            boolean countersinks = cutter.cutter().shape() == Cutter.Shape.SPOT;
            List<Move> moves = operations.get(o).moves();
            for (int m = 0; m < moves.size(); m++) {
                for (Step s : moves.get(m).steps()) {
                    if (!(s instanceof Feed) || countersinks || !inside(s, h)) continue;
                    double lowMm = s.box().min().z();
                    if (lowMm > h.mouthZMm() - SAME_MM) continue;
                    double radiusMm = farthest(s, h.centre()) + profile.largestRadiusMm();
                    if (radiusMm > wide.value + SAME_MM) wide.take(radiusMm, o, m, s.to());
                    if (lowMm < tip.value - SAME_MM) tip.take(lowMm, o, m, s.to());
                    if (lowMm + profile.endHeightMm() < deep.value - SAME_MM)
                        deep.take(lowMm + profile.endHeightMm(), o, m, s.to());
                }
            }
        }
        double limitMm = task.limits().holeMm();
        if (Math.abs(wide.value - wantedMm) > limitMm)
            faults.add(wide.fault(Fault.Kind.HOLE_SIZE, h.name(), 2 * wide.value, 2 * wantedMm));
        if (!(deep.value <= h.bottomZMm() + task.limits().levelMm()))
            faults.add(deep.fault(Fault.Kind.HOLE_DEPTH, h.name(), deep.operation < 0 ? 0 : deep.value, h.bottomZMm()));
        if (tip.value < h.lowestZMm() - task.limits().levelMm())
            faults.add(tip.fault(Fault.Kind.HOLE_DEPTH, h.name() + ", too deep", tip.value, h.lowestZMm()));
    }

    /** Whether a step works within a hole: its axis stays inside the circle. */
    private static boolean inside(Step s, Hole h) {
        return farthest(s, h.centre()) < h.diameterMm() / 2;
    }

    private static double farthest(Step s, Vec2 centre) {
        double mm = Math.max(s.from().xy().distance(centre), s.to().xy().distance(centre));
        if (!(s instanceof Arc a)) return mm;
        double between = a.centre().distance(centre);
        if (between < SAME_MM) return Math.max(mm, a.radiusMm());
        for (int k = 1; k < 64; k++) mm = Math.max(mm, a.at(k / 64.0).xy().distance(centre));
        return mm;
    }

    private void level(Level l, List<Fault> faults) {
        Extreme low = new Extreme(Double.POSITIVE_INFINITY);
        List<Operation> operations = task.program().operations();
        for (int o = 0; o < operations.size(); o++) {
            List<Move> moves = operations.get(o).moves();
            for (int m = 0; m < moves.size(); m++)
                for (Step s : moves.get(m).steps())
                    if (s instanceof Feed && crosses(s.box(), l)) {
                        double zMm = lowestIn(s, l);
                        if (zMm < low.value - SAME_MM) low.take(zMm, o, m, s.to());
                    }
        }
        if (!(Math.abs(low.value - l.zMm()) <= task.limits().levelMm()))
            faults.add(low.fault(Fault.Kind.LEVEL, l.name(), low.operation < 0 ? 0 : low.value, l.zMm()));
    }

    /** The lowest the tip comes within the place, asked at short steps; infinite when it passes by. */
    private static double lowestIn(Step s, Level l) {
        int pieces = Math.max(1, (int) Math.ceil(s.lengthMm() / ASK_MM));
        double low = Double.POSITIVE_INFINITY;
        for (int k = 0; k <= pieces; k++) {
            Vec3 p = s.at((double) k / pieces);
            if (crosses(new Box3(p, p), l)) low = Math.min(low, p.z());
        }
        return low;
    }

    private static boolean crosses(Box3 box, Level l) {
        return box.min().x() <= l.max().x()
                && box.max().x() >= l.min().x()
                && box.min().y() <= l.max().y()
                && box.max().y() >= l.min().y();
    }
}
