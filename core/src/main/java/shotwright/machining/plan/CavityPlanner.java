package shotwright.machining.plan;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import shotwright.cutter.Cutter;
import shotwright.cutter.CutterProfile;
import shotwright.cutter.MountedCutter;
import shotwright.geom.Box3;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.choice.Candidate;
import shotwright.machining.choice.CandidateTable;
import shotwright.machining.choice.CutterSet;
import shotwright.machining.clear.LevelClearing;
import shotwright.machining.clear.RoughRules;
import shotwright.machining.contact.DropCutter;
import shotwright.machining.contact.ExactPath;
import shotwright.machining.contact.LocationMap;
import shotwright.machining.contact.SurfaceKind;
import shotwright.machining.contact.TopSurface;
import shotwright.machining.contact.TriangleTree;
import shotwright.machining.contour.Contour;
import shotwright.machining.contour.LevelContour;
import shotwright.machining.contour.Offset;
import shotwright.machining.feed.Cusp;
import shotwright.machining.feed.CutData;
import shotwright.machining.feed.CutKind;
import shotwright.machining.feed.Entry;
import shotwright.machining.finish.CuspRings;
import shotwright.machining.finish.FloorRings;
import shotwright.machining.finish.Linking;
import shotwright.machining.finish.RasterLines;
import shotwright.machining.finish.RestZones;
import shotwright.machining.finish.Waterline;
import shotwright.machining.path.Move;
import shotwright.machining.path.PathBuilder;
import shotwright.machining.path.Rapid;
import shotwright.machining.workpiece.Phase;
import shotwright.machining.workpiece.Task;
import shotwright.machining.workpiece.Workpiece;
import shotwright.mesh.Grid;
import shotwright.progress.Progress;
import shotwright.region.Region;

/**
 * Lays the paths of the molding surface with a set of cutters: roughing by bounded steps level by level, what the next cutter can take of what is
 * left, then floors in rings, walls in level loops and curved ground in lines, each cutter only where no faster one of the set finishes.
 */
final class CavityPlanner {
    /** Left on walls and on floors by roughing (common practice). */
    private static final double WALL_STOCK_MM = 0.25, FLOOR_STOCK_MM = 0.15;

    /** Finished zones reach so far beyond their cells. */
    private static final double OVERLAP_MM = 0.1;

    private static final double CLEAR_STEP_OF_CUTTER = 0.15;
    private static final double RETRACT_MM = 1;
    private static final double LONGEST_LINK_MM = 6;
    private static final double SAME_FLOOR_MM = 0.002;
    private static final double LEAST_FLOOR_MM2 = 0.02;
    private static final double CONE_OVERLAP_MM = 0.05;

    /** Lines are asked for so much above a level floor: in its very height every place is a tie. */
    private static final double OFF_FLOOR_MM = 0.001;

    private static final double LEAST_CUT_MM2 = 0.05;

    /** Share of the normal that points up where ground ends: a slope a little steeper than where walls begin. */
    private static final double STEEPEST_GROUND = 0.45;

    /** Zones narrower than this are finished along their border. */
    private static final double BAND_MM = 4;

    /** Gaps between neighbouring axes of a ball on bulging ground are closed up to so many cells. */
    private static final double AXIS_GAP_CELLS = 1;

    /** Rapids end so far above metal. */
    private static final double SPARE_MM = 0.3;

    /** Air around neck, shank and holder. */
    private static final double BODY_AIR_MM = 0.3;

    private static final double EVERYWHERE_MM = 50;

    /** Height of a slab of wall within which the body's room counts as the same. */
    private static final double SLAB_MM = 1;

    private final Workpiece work;
    private final CandidateTable table;
    private final TopSurface top;
    private final CutterSet set;
    private final double stockTopZMm;
    private final double cuspMm;
    private final TriangleTree tree;
    private final Region block;
    private final double lowestMm;
    private final Map<CutterProfile, LocationMap> maps = new HashMap<>();
    private final Map<MountedCutter, float[]> bodies = new HashMap<>();

    CavityPlanner(
            Workpiece work, TopSurface top, CandidateTable table, CutterSet set, double stockTopZMm, double cuspMm) {
        this.work = work;
        this.top = top;
        this.table = table;
        this.set = set;
        this.stockTopZMm = stockTopZMm;
        this.cuspMm = cuspMm;
        tree = TriangleTree.of(work.plain());
        Box3 m = work.metal();
        block = Region.rectangle(m.min().xy(), m.max().xy());
        double low = Double.POSITIVE_INFINITY;
        for (int i = 0; i < top.grid().count(); i++) if (top.facet(i) >= 0) low = Math.min(low, top.heightMm(i));
        lowestMm = low;
    }

    List<Task> tasks(Progress progress) {
        List<Task> tasks = new ArrayList<>();
        progress.at("roughing", 0);
        rough(tasks, progress.part(0, 0.5));
        Map<SurfaceKind, BitSet> left = new EnumMap<>(SurfaceKind.class);
        table.surface().cells().forEach((k, cells) -> left.put(k, (BitSet) cells.clone()));
        int done = 0, all = 3 * set.count();
        for (SurfaceKind kind : List.of(SurfaceKind.FLOOR, SurfaceKind.WALL, SurfaceKind.CURVED)) {
            for (Candidate c : fastestFirst(kind)) {
                progress.at("finishing " + kind.words(), 0.5 + 0.5 * done++ / all);
                BitSet open = left.get(kind), reached = c.reached().get(kind);
                if (open == null || reached == null) continue;
                BitSet own = (BitSet) open.clone();
                own.and(reached);
                if (own.isEmpty()) continue;
                open.andNot(own);
                finish(tasks, kind, c.cutter(), own, progress);
            }
        }
        return tasks;
    }

    private List<Candidate> fastestFirst(SurfaceKind kind) {
        return set.shares().stream()
                .map(CutterSet.Share::candidate)
                .filter(c -> c.finishMm2PerMin().containsKey(kind))
                .sorted(Comparator.comparingDouble(
                        (Candidate c) -> -c.finishMm2PerMin().getOrDefault(kind, 0.0)))
                .toList();
    }

    private LocationMap map(CutterProfile profile) {
        return maps.computeIfAbsent(profile, p -> LocationMap.of(top, p));
    }

    private LevelContour contour(CutterProfile profile) {
        return new LevelContour(new DropCutter(tree, profile), map(profile));
    }

    /** Where a tip may stand at a height: by exact lines where all of them close, else by the cells of the map with one to spare. */
    private Region free(LevelContour contour, CutterProfile profile, double zMm, Region within) {
        LevelContour.Level level = contour.at(zMm);
        if (level.splitCount() == 0) return level.freeIn(within);
        LocationMap map = map(profile);
        BitSet cells = new BitSet();
        for (int i = 0; i < top.grid().count(); i++) if (map.tipMm(i) <= zMm) cells.set(i);
        return zone(cells).offset(-1.5 * top.grid().cell()).intersection(within);
    }

    /** Where neck, shank and holder stay clear of the half with the tip at a height. */
    private Region clearOfBody(MountedCutter m, double zMm) {
        float[] tips = bodies.computeIfAbsent(m, k -> LocationMap.bodyTipsMm(top, k, WALL_STOCK_MM + BODY_AIR_MM));
        BitSet clear = new BitSet(tips.length);
        for (int i = 0; i < tips.length; i++) if (tips[i] <= zMm) clear.set(i);
        return clear.cardinality() == tips.length
                ? Offset.by(block, EVERYWHERE_MM)
                : RestZones.outline(clear, top.grid());
    }

    // ---- roughing

    /** One cutter's levels and where its centre went on each, from the top. */
    private record Roughed(double radiusMm, List<Double> levelsMm, List<Region> centres) {
        /** What the cutter has taken at a height: the lowest of its levels not above it. */
        Region goneAt(double zMm) {
            for (int i = 0; i < levelsMm.size(); i++)
                if (levelsMm.get(i) <= zMm + 1e-9) return Offset.by(centres.get(i), radiusMm);
            return Region.EMPTY;
        }
    }

    private void rough(List<Task> tasks, Progress progress) {
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
        double deepest = Math.min(cutter.fluteLengthMm().value(), stockTopZMm - lowestMm);
        CutData data = table.data(m, CutKind.CLEAR, deepest, step);
        List<Double> levels = levels(data.depthMm());
        CutterProfile grown = m.profile().widenedMm(WALL_STOCK_MM);
        LevelContour contour = contour(grown);
        Region within = Offset.by(block, radius + 1), outside = within.difference(Offset.by(block, radius));
        List<Region> centres = new ArrayList<>();
        List<LevelClearing> made = new ArrayList<>();
        Region where = before.isEmpty()
                ? within
                : Offset.by(zone(missedBefore(m)), 2 * radius).intersection(within);
        double metalTop = stockTopZMm;
        Region uncut = Region.EMPTY;
        for (int i = 0; i < levels.size(); i++) {
            double z = levels.get(i);
            progress.at("roughing with " + cutter.name(), (double) i / levels.size());
            Region allowed = contour.at(z - FLOOR_STOCK_MM + OFF_FLOOR_MM)
                    .freeIn(within)
                    .intersection(clearOfBody(m, z))
                    .intersection(where);
            if (!uncut.isEmpty()) allowed = allowed.difference(uncut);
            allowed = overBlock(allowed, radius);
            centres.add(allowed);
            RoughRules rules = new RoughRules(
                    radius,
                    Math.min(step, data.widthMm()),
                    Math.toRadians(data.rampDeg()),
                    before.isEmpty() ? metalTop : stockTopZMm,
                    stockTopZMm + RETRACT_MM,
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
                            pen.over(l.moves().getFirst().from(), stockTopZMm + RETRACT_MM);
                            gently(pen, l.moves(), data);
                        }
                    }));
        }
        return new Roughed(radius, levels, centres);
    }

    /** The pieces from which a cutter meets the block; those that only run round its outside are left out. */
    private Region overBlock(Region centres, double radius) {
        return Region.unionOf(centres.pieces().stream()
                .filter(p -> Offset.by(p, radius).intersection(block).area() > LEAST_CUT_MM2)
                .toList());
    }

    /** The same moves with every rapid that goes down into the block at a feed: steps of larger cutters may stand there. */
    private void gently(PathBuilder pen, List<Move> moves, CutData data) {
        double top = stockTopZMm + SPARE_MM;
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
        for (int i = 0; i < top.grid().count(); i++) if (top.facet(i) >= 0) missed.set(i);
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
        for (Floor f : floors(table.surface().cells().getOrDefault(SurfaceKind.FLOOR, new BitSet())))
            if (f.cells.cardinality() * cellMm2() > 1) fixed.add(f.zMm + FLOOR_STOCK_MM);
        if (work.metal().max().z() > SAME_FLOOR_MM) fixed.add(FLOOR_STOCK_MM);
        fixed.add(lowestMm + FLOOR_STOCK_MM);
        List<Double> levels = new ArrayList<>();
        double from = stockTopZMm;
        for (double to : fixed) {
            if (to >= from - 0.02) continue;
            int n = (int) Math.ceil((from - to) / passMm - 1e-9);
            for (int i = 1; i <= n; i++) levels.add(from + (to - from) * i / n);
            from = to;
        }
        return levels;
    }

    private double cellMm2() {
        return top.grid().cell() * top.grid().cell();
    }

    // ---- finishing

    private void finish(List<Task> tasks, SurfaceKind kind, MountedCutter m, BitSet own, Progress progress) {
        switch (kind) {
            case FLOOR -> floors(tasks, m, own);
            case WALL -> walls(tasks, m, own, progress);
            case CURVED -> ground(tasks, m, own);
            case FACE -> {}
        }
    }

    /** A level floor. */
    private record Floor(double zMm, BitSet cells) {}

    private List<Floor> floors(BitSet cells) {
        List<Floor> out = new ArrayList<>();
        Map<Long, Floor> byHeight = new HashMap<>();
        for (int i = cells.nextSetBit(0); i >= 0; i = cells.nextSetBit(i + 1)) {
            float z = top.heightMm(i);
            long key = Math.round(z / SAME_FLOOR_MM);
            Floor f = byHeight.get(key);
            if (f == null) f = byHeight.getOrDefault(key - 1, byHeight.get(key + 1));
            if (f == null) {
                f = new Floor(z, new BitSet());
                byHeight.put(key, f);
                out.add(f);
            }
            f.cells.set(i);
        }
        out.removeIf(f -> f.cells.cardinality() * cellMm2() < LEAST_FLOOR_MM2);
        out.sort(Comparator.comparingDouble(f -> -f.zMm));
        return out;
    }

    private Region zone(BitSet cells) {
        return RestZones.outline(cells, top.grid());
    }

    private void floors(List<Task> tasks, MountedCutter m, BitSet own) {
        Cutter c = m.cutter();
        double radius = c.radiusMm();
        CutData data =
                table.data(m, CutKind.FLOOR, FLOOR_STOCK_MM, 0.6 * c.diaMm().value());
        LevelContour contour = contour(m.profile());
        for (Floor f : floors(own)) {
            Region zone = zone(f.cells);
            if (zone.isEmpty()) continue;
            Region within =
                    Offset.by(zone, Math.max(0, radius - 0.5 * top.grid().cell()));
            Region allowed =
                    free(contour, m.profile(), f.zMm + OFF_FLOOR_MM, within).intersection(clearOfBody(m, f.zMm));
            List<List<Vec3>> paths =
                    FloorRings.paths(allowed, f.zMm, 2 * m.profile().flatRadiusMm());
            add(tasks, Phase.FLOOR, "finish floor", m, data, paths);
        }
    }

    private void walls(List<Task> tasks, MountedCutter m, BitSet own, Progress progress) {
        Cutter c = m.cutter();
        boolean cone = c.shape() == Cutter.Shape.TAPER;
        double low = Double.POSITIVE_INFINITY, high = Double.NEGATIVE_INFINITY, lean = 0;
        for (int i = own.nextSetBit(0); i >= 0; i = own.nextSetBit(i + 1)) {
            low = Math.min(low, top.heightMm(i));
            high = Math.max(high, top.heightMm(i));
            lean += Math.asin(Math.min(1, top.normalZ(i)));
        }
        lean /= own.cardinality();
        if (high - low < SAME_FLOOR_MM) return;
        CutData data = table.data(
                m,
                cone ? CutKind.DRAFT_WALL : CutKind.WALL,
                cone ? Math.min(high - low, c.fluteLengthMm().value()) : 0.15,
                0.1);
        double fall = cone
                ? Math.max(0.2, data.depthMm() - CONE_OVERLAP_MM)
                : c.shape() == Cutter.Shape.FLAT || c.shape() == Cutter.Shape.BULL
                        ? Math.min(0.5 * c.diaMm().value(), Cusp.downStepOfFlatMm(cuspMm, Math.max(1e-3, lean)))
                        : Cusp.downStepMm(c.cornerRadiusMm().value(), cuspMm, Math.PI / 2 - lean);
        double reach = c.largestDiaMm() / 2 + OVERLAP_MM;
        Region zone = Offset.by(zone(own), reach);
        LevelContour contour = contour(m.profile());
        List<List<Vec3>> paths = new ArrayList<>();
        int slabs = (int) Math.max(1, Math.ceil((high - low) / Math.max(fall, SLAB_MM)));
        for (int k = 0; k < slabs; k++) {
            double from = high + (low - high) * k / slabs, to = high + (low - high) * (k + 1) / slabs;
            Region room = zone.intersection(clearOfBody(m, to));
            if (!room.isEmpty())
                paths.addAll(
                        Waterline.loops(contour, room, from, to, fall, progress).paths());
        }
        add(tasks, Phase.WALL, "finish walls", m, data, paths);
    }

    private void ground(List<Task> tasks, MountedCutter m, BitSet own) {
        Cutter c = m.cutter();
        double step = Cusp.stepOfBallMm(c.cornerRadiusMm().value(), cuspMm);
        CutData data = table.data(m, CutKind.CURVED, 0.1, step);
        Region zone = axes(own, m.profile());
        List<List<Vec3>> paths = new ArrayList<>();
        DropCutter drop = new DropCutter(tree, m.profile(), lowestMm - 1);
        ExactPath exact = new ExactPath(drop);
        if (isBand(zone)) {
            for (Contour ring : CuspRings.lines(top, own, m.profile(), step)) paths.add(over(ring, exact));
            zone = Region.EMPTY;
        }
        for (Region piece : zone.pieces()) {
            Vec2 size = piece.max().minus(piece.min());
            double direction = size.x() >= size.y() ? 0 : Math.PI / 2;
            for (List<Vec3> line : RasterLines.paths(piece, direction, step, exact)) paths.addAll(onGround(line, drop));
        }
        add(tasks, Phase.GROUND, "finish curved ground", m, data, paths);
    }

    /** The stretches of a line where the cutter touches ground; where it rides up a wall, the wall's own passes have been. */
    private List<List<Vec3>> onGround(List<Vec3> line, DropCutter drop) {
        List<List<Vec3>> out = new ArrayList<>();
        List<Vec3> run = new ArrayList<>();
        DropCutter.Cursor cursor = new DropCutter.Cursor();
        for (Vec3 p : line) {
            drop.tipMm(p.x(), p.y(), cursor);
            int facet = cursor.facet(drop);
            if (facet >= 0 && work.plain().doubleAreaNormal(facet).unit().z() >= STEEPEST_GROUND) {
                run.add(p);
                continue;
            }
            if (run.size() > 1) out.add(run);
            run = new ArrayList<>();
        }
        if (run.size() > 1) out.add(run);
        return out;
    }

    /** Narrow on the whole: lines across it would be short and many. */
    private static boolean isBand(Region zone) {
        return 2 * zone.area() < BAND_MM * zone.perimeter();
    }

    private static List<Vec3> over(Contour ring, ExactPath exact) {
        List<Vec2> points = new ArrayList<>(ring.points());
        if (ring.closed()) points.add(points.getFirst());
        return exact.thinned(points);
    }

    /** Where the axis of a ball stands that touches the cells: off each along the normal by the radius. */
    private Region axes(BitSet cells, CutterProfile ball) {
        Grid grid = top.grid();
        double ballMm = ball.cornerRadiusMm();
        LocationMap tips = map(ball);
        BitSet axes = new BitSet(grid.count());
        for (int i = cells.nextSetBit(0); i >= 0; i = cells.nextSetBit(i + 1)) {
            Vec3 n = work.plain().doubleAreaNormal(top.facet(i)).unit();
            int x = (int) Math.floor((grid.x(i % grid.nx()) + ballMm * n.x() - grid.x0()) / grid.cell());
            int y = (int) Math.floor((grid.y(i / grid.nx()) + ballMm * n.y() - grid.y0()) / grid.cell());
            if (x < 0 || y < 0 || x >= grid.nx() || y >= grid.ny()) continue;
            double expected = top.heightMm(i) + ballMm * (n.z() - 1);
            if (tips.tipMm(grid.index(x, y)) < expected + grid.cell()) axes.set(grid.index(x, y));
        }
        // cells spread where the ground bulges leave gaps between their axes
        double gap = AXIS_GAP_CELLS * grid.cell();
        return zone(axes).offset(gap).offset(-gap + 0.5 * grid.cell());
    }

    private void add(
            List<Task> tasks, Phase phase, String words, MountedCutter m, CutData data, List<List<Vec3>> paths) {
        if (paths.isEmpty()) return;
        ExactPath exact = new ExactPath(new DropCutter(tree, m.profile(), lowestMm - 1));
        Linking linking = new Linking(
                exact,
                m.cutter().diaMm().value(),
                LONGEST_LINK_MM,
                stockTopZMm + RETRACT_MM,
                data.feedMmPerMin(),
                Math.max(30, data.plungeMmPerMin()));
        List<Move> moves = linking.chain(paths);
        if (moves.isEmpty()) return;
        tasks.add(new Task(
                phase,
                words,
                m.cutter(),
                m.stickoutMm(),
                data.speedRpm(),
                moves.getFirst().from().xy(),
                (pen, clearZMm) -> {
                    pen.over(moves.getFirst().from(), stockTopZMm + RETRACT_MM);
                    pen.add(moves);
                }));
    }
}
