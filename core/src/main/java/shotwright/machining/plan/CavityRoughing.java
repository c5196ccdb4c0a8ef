package shotwright.machining.plan;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import shotwright.cutter.Cutter;
import shotwright.cutter.CutterProfile;
import shotwright.cutter.MountedCutter;
import shotwright.geom.Vec2;
import shotwright.machining.choice.Candidate;
import shotwright.machining.choice.CutterSet;
import shotwright.machining.clear.LevelClearing;
import shotwright.machining.clear.RoughRules;
import shotwright.machining.contact.SurfaceKind;
import shotwright.machining.contour.LevelContour;
import shotwright.machining.contour.Offset;
import shotwright.machining.feed.CutData;
import shotwright.machining.feed.CutKind;
import shotwright.machining.feed.Entry;
import shotwright.machining.path.Move;
import shotwright.machining.path.PathBuilder;
import shotwright.machining.path.Rapid;
import shotwright.machining.workpiece.Phase;
import shotwright.machining.workpiece.Task;
import shotwright.progress.Progress;
import shotwright.region.Region;

/** Roughs a half level by level with a front of bounded step, the fastest cutter first; each next one takes what it can of what is left. */
final class CavityRoughing {
    private static final double CLEAR_STEP_OF_CUTTER = 0.15;

    /** A piece of a level from which a cutter would take less is left out. */
    private static final double LEAST_CUT_MM2 = 0.05;

    /** Rapids end so far above metal. */
    private static final double SPARE_MM = 0.3;

    private final CuttingRoom room;
    private final CutterSet set;

    CavityRoughing(CuttingRoom room, CutterSet set) {
        this.room = room;
        this.set = set;
    }

    /** One cutter's levels and where its centre went on each, from the room.top. */
    private record Roughed(double radiusMm, List<Double> levelsMm, List<Region> centres) {
        /** What the cutter has taken at a height: the lowest of its levels not above it. */
        Region goneAt(double zMm) {
            for (int i = 0; i < levelsMm.size(); i++)
                if (levelsMm.get(i) <= zMm + 1e-9) return Offset.by(centres.get(i), radiusMm);
            return Region.EMPTY;
        }
    }

    void rough(List<Task> tasks, Progress progress) {
        List<Roughed> before = new ArrayList<>();
        List<CutterSet.Share> roughers = set.shares().stream()
                .filter(s -> s.roughMm3() > 0)
                .sorted(Comparator.comparingDouble(
                        (CutterSet.Share s) -> -s.candidate().roughMm3PerMin()))
                .toList();
        for (int i = 0; i < roughers.size(); i++) {
            MountedCutter m = roughers.get(i).candidate().cutter();
            before.add(rough(
                    tasks,
                    m,
                    List.copyOf(before),
                    progress.part((double) i / roughers.size(), (i + 1.0) / roughers.size())));
        }
    }

    private Roughed rough(List<Task> tasks, MountedCutter m, List<Roughed> before, Progress progress) {
        Cutter cutter = m.cutter();
        double radius = cutter.radiusMm(),
                step = CLEAR_STEP_OF_CUTTER * cutter.diaMm().value();
        double deepest = Math.min(cutter.fluteLengthMm().value(), room.stockTopZMm - room.lowestMm);
        CutData data = room.table.data(m, CutKind.CLEAR, deepest, step);
        List<Double> levels = levels(data.depthMm());
        CutterProfile grown = m.profile().widenedMm(CuttingRoom.WALL_STOCK_MM);
        LevelContour contour = room.contour(grown);
        Region within = Offset.by(room.block, radius + 1), outside = within.difference(Offset.by(room.block, radius));
        List<Region> centres = new ArrayList<>();
        List<LevelClearing> made = new ArrayList<>();
        Region where = before.isEmpty()
                ? within
                : Offset.by(room.zone(missedBefore(m)), 2 * radius).intersection(within);
        double metalTop = room.stockTopZMm;
        Region uncut = Region.EMPTY;
        for (int i = 0; i < levels.size(); i++) {
            double z = levels.get(i);
            progress.at("roughing with " + cutter.name(), (double) i / levels.size());
            Region allowed = contour.at(z - CuttingRoom.FLOOR_STOCK_MM + CuttingRoom.OFF_FLOOR_MM)
                    .freeIn(within)
                    .intersection(room.clearOfBody(m, z))
                    .intersection(where);
            if (!uncut.isEmpty()) allowed = allowed.difference(uncut);
            allowed = overBlock(allowed, radius);
            centres.add(allowed);
            RoughRules rules = new RoughRules(
                    radius,
                    Math.min(step, data.widthMm()),
                    Math.toRadians(data.rampDeg()),
                    before.isEmpty() ? metalTop : room.stockTopZMm,
                    room.stockTopZMm + CuttingRoom.RETRACT_MM,
                    data.feedMmPerMin(),
                    Entry.RAMP_FEED_SHARE * data.feedMmPerMin(),
                    data.feedMmPerMin());
            made.add(
                    before.isEmpty()
                            ? LevelClearing.of(allowed, outside, z, rules, null, progress)
                            : LevelClearing.rest(allowed, metal(allowed, radius, before, z), z, rules, null, progress));
            // a piece too small to enter stays uncut all the way down
            List<Region> skipped = made.getLast().skipped();
            if (!skipped.isEmpty()) uncut = uncut.union(Offset.by(Region.unionOf(skipped), SPARE_MM));
            metalTop = z;
        }
        List<LevelClearing> cut =
                made.stream().filter(l -> !l.moves().isEmpty()).toList();
        if (!cut.isEmpty()) {
            Vec2 at = cut.getFirst().moves().getFirst().from().xy();
            tasks.add(new Task(
                    before.isEmpty() ? Phase.ROUGH : Phase.REST,
                    before.isEmpty() ? "rough" : "rough what is left",
                    cutter,
                    m.stickoutMm(),
                    data.speedRpm(),
                    at,
                    (pen, clearZMm) -> {
                        for (LevelClearing l : cut) {
                            pen.over(l.moves().getFirst().from(), room.stockTopZMm + CuttingRoom.RETRACT_MM);
                            gently(pen, l.moves(), data);
                        }
                    }));
        }
        return new Roughed(radius, levels, centres);
    }

    /** The pieces from which a cutter meets the room.block; those that only run round its outside are left out. */
    private Region overBlock(Region centres, double radius) {
        return Region.unionOf(centres.pieces().stream()
                .filter(p -> Offset.by(p, radius).intersection(room.block).area() > LEAST_CUT_MM2)
                .toList());
    }

    /** The same moves with every rapid that goes down into the block at a feed: steps of larger cutters may stand there. */
    private void gently(PathBuilder pen, List<Move> moves, CutData data) {
        double top = room.stockTopZMm + SPARE_MM;
        for (Move m : moves) {
            boolean down = m instanceof Rapid
                    && m.to().z() < top
                    && m.to().z() < m.from().z() + 1e-9;
            if (!down) {
                pen.add(List.of(m));
                continue;
            }
            boolean straight = m.from().xy().distance(m.to().xy()) < 1e-9;
            if (m.from().z() > top && straight) pen.rapidZ(top);
            pen.line(m.to(), straight ? data.plungeMmPerMin() : data.feedMmPerMin());
        }
    }

    /** Cells that none of the cutters roughing before this one gets down to. */
    private BitSet missedBefore(MountedCutter m) {
        BitSet missed = new BitSet();
        for (int i = 0; i < room.top.grid().count(); i++) if (room.top.facet(i) >= 0) missed.set(i);
        for (CutterSet.Share s : set.shares()) {
            Candidate c = s.candidate();
            if (s.roughMm3() > 0 && c.roughMm3PerMin() > rate(m)) missed.andNot(c.roughReached());
        }
        return missed;
    }

    private double rate(MountedCutter m) {
        return set.shares().stream()
                .filter(s -> s.candidate().cutter() == m)
                .mapToDouble(s -> s.candidate().roughMm3PerMin())
                .findFirst()
                .orElse(0);
    }

    /** Metal a cutter can take at a height that those before it left. */
    private static Region metal(Region allowed, double radius, List<Roughed> before, double z) {
        Region metal = Offset.by(allowed, radius);
        for (Roughed r : before) metal = metal.difference(r.goneAt(z));
        return metal;
    }

    /** Levels no further apart than a pass, one just above each level floor and the lowest place. */
    private List<Double> levels(double passMm) {
        TreeSet<Double> fixed = new TreeSet<>(Comparator.reverseOrder());
        for (CuttingRoom.Floor f :
                room.floors(room.table.surface().cells().getOrDefault(SurfaceKind.FLOOR, new BitSet())))
            if (f.cells().cardinality() * room.cellMm2() > 1) fixed.add(f.zMm() + CuttingRoom.FLOOR_STOCK_MM);
        if (room.work.metal().max().z() > CuttingRoom.SAME_FLOOR_MM) fixed.add(CuttingRoom.FLOOR_STOCK_MM);
        fixed.add(room.lowestMm + CuttingRoom.FLOOR_STOCK_MM);
        List<Double> levels = new ArrayList<>();
        double from = room.stockTopZMm;
        for (double to : fixed) {
            if (to >= from - 0.02) continue;
            int n = (int) Math.ceil((from - to) / passMm - 1e-9);
            for (int i = 1; i <= n; i++) levels.add(from + (to - from) * i / n);
            from = to;
        }
        return levels;
    }
}
