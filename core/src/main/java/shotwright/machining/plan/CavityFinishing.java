package shotwright.machining.plan;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import shotwright.cutter.Cutter;
import shotwright.cutter.CutterProfile;
import shotwright.cutter.MountedCutter;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.choice.Candidate;
import shotwright.machining.choice.CutterSet;
import shotwright.machining.contact.DropCutter;
import shotwright.machining.contact.ExactPath;
import shotwright.machining.contact.LocationMap;
import shotwright.machining.contact.SurfaceKind;
import shotwright.machining.contour.Contour;
import shotwright.machining.contour.LevelContour;
import shotwright.machining.contour.Offset;
import shotwright.machining.feed.Cusp;
import shotwright.machining.feed.CutData;
import shotwright.machining.feed.CutKind;
import shotwright.machining.finish.CuspRings;
import shotwright.machining.finish.FloorRings;
import shotwright.machining.finish.Linking;
import shotwright.machining.finish.RasterLines;
import shotwright.machining.finish.Waterline;
import shotwright.machining.path.Move;
import shotwright.machining.workpiece.Phase;
import shotwright.machining.workpiece.Task;
import shotwright.mesh.Grid;
import shotwright.progress.Progress;
import shotwright.region.Region;

/** Finishes a half: floors in rings, walls in level loops, curved ground in lines or rings, each cutter only where no faster one of the set does. */
final class CavityFinishing {
    /** Finished zones of walls reach so far beyond their cells. */
    private static final double OVERLAP_MM = 0.1;

    private static final double LONGEST_LINK_MM = 6;
    private static final double CONE_OVERLAP_MM = 0.05;

    /** Share of the normal that points up where ground ends: a slope a little steeper than where walls begin. */
    private static final double STEEPEST_GROUND = 0.45;

    /** Zones narrower than this are finished along their border. */
    private static final double BAND_MM = 4;

    /** Gaps between neighbouring axes of a ball on bulging ground are closed up to so many cells. */
    private static final double AXIS_GAP_CELLS = 1;

    /** Height of a slab of wall within which the body's room counts as the same. */
    private static final double SLAB_MM = 1;

    private final CuttingRoom room;
    private final CutterSet set;

    CavityFinishing(CuttingRoom room, CutterSet set) {
        this.room = room;
        this.set = set;
    }

    void finish(List<Task> tasks, Progress progress) {
        Map<SurfaceKind, BitSet> left = new EnumMap<>(SurfaceKind.class);
        room.table.surface().cells().forEach((k, cells) -> left.put(k, (BitSet) cells.clone()));
        int done = 0, all = 3 * set.count();
        for (SurfaceKind kind : List.of(SurfaceKind.FLOOR, SurfaceKind.WALL, SurfaceKind.CURVED)) {
            for (Candidate c : fastestFirst(kind)) {
                progress.at("finishing " + kind.words(), (double) done++ / all);
                BitSet open = left.get(kind), reached = c.reached().get(kind);
                if (open == null || reached == null) continue;
                BitSet own = (BitSet) open.clone();
                own.and(reached);
                if (own.isEmpty()) continue;
                open.andNot(own);
                finish(tasks, kind, c.cutter(), own, progress);
            }
        }
    }

    private List<Candidate> fastestFirst(SurfaceKind kind) {
        return set.shares().stream()
                .map(CutterSet.Share::candidate)
                .filter(c -> c.finishMm2PerMin().containsKey(kind))
                .sorted(Comparator.comparingDouble(
                        (Candidate c) -> -c.finishMm2PerMin().getOrDefault(kind, 0.0)))
                .toList();
    }

    private void finish(List<Task> tasks, SurfaceKind kind, MountedCutter m, BitSet own, Progress progress) {
        switch (kind) {
            case FLOOR -> floors(tasks, m, own);
            case WALL -> walls(tasks, m, own, progress);
            case CURVED -> ground(tasks, m, own);
            case FACE -> {}
        }
    }

    private void floors(List<Task> tasks, MountedCutter m, BitSet own) {
        Cutter c = m.cutter();
        double radius = c.radiusMm();
        CutData data = room.table.data(
                m, CutKind.FLOOR, CuttingRoom.FLOOR_STOCK_MM, 0.6 * c.diaMm().value());
        LevelContour contour = room.contour(m.profile());
        for (CuttingRoom.Floor f : room.floors(own)) {
            Region zone = room.zone(f.cells());
            if (zone.isEmpty()) continue;
            Region within =
                    Offset.by(zone, Math.max(0, radius - 0.5 * room.top.grid().cell()));
            Region allowed = room.free(contour, m.profile(), f.zMm() + CuttingRoom.OFF_FLOOR_MM, within)
                    .intersection(room.clearOfBody(m, f.zMm()));
            List<List<Vec3>> paths =
                    FloorRings.paths(allowed, f.zMm(), 2 * m.profile().flatRadiusMm());
            add(tasks, Phase.FLOOR, "finish floor", m, data, paths);
        }
    }

    private void walls(List<Task> tasks, MountedCutter m, BitSet own, Progress progress) {
        Cutter c = m.cutter();
        boolean cone = c.shape() == Cutter.Shape.TAPER;
        double low = Double.POSITIVE_INFINITY, high = Double.NEGATIVE_INFINITY, lean = 0;
        for (int i = own.nextSetBit(0); i >= 0; i = own.nextSetBit(i + 1)) {
            low = Math.min(low, room.top.heightMm(i));
            high = Math.max(high, room.top.heightMm(i));
            lean += Math.asin(Math.min(1, room.top.normalZ(i)));
        }
        lean /= own.cardinality();
        if (high - low < CuttingRoom.SAME_FLOOR_MM) return;
        CutData data = room.table.data(
                m,
                cone ? CutKind.DRAFT_WALL : CutKind.WALL,
                cone ? Math.min(high - low, c.fluteLengthMm().value()) : 0.15,
                0.1);
        double fall = cone
                ? Math.max(0.2, data.depthMm() - CONE_OVERLAP_MM)
                : c.shape() == Cutter.Shape.FLAT || c.shape() == Cutter.Shape.BULL
                        ? Math.min(0.5 * c.diaMm().value(), Cusp.downStepOfFlatMm(room.cuspMm, Math.max(1e-3, lean)))
                        : Cusp.downStepMm(c.cornerRadiusMm().value(), room.cuspMm, Math.PI / 2 - lean);
        double reach = c.largestDiaMm() / 2 + OVERLAP_MM;
        Region zone = Offset.by(room.zone(own), reach);
        LevelContour contour = room.contour(m.profile());
        List<List<Vec3>> paths = new ArrayList<>();
        int slabs = (int) Math.max(1, Math.ceil((high - low) / Math.max(fall, SLAB_MM)));
        for (int k = 0; k < slabs; k++) {
            double from = high + (low - high) * k / slabs, to = high + (low - high) * (k + 1) / slabs;
            Region free = zone.intersection(room.clearOfBody(m, to));
            if (!free.isEmpty())
                paths.addAll(
                        Waterline.loops(contour, free, from, to, fall, progress).paths());
        }
        add(tasks, Phase.WALL, "finish walls", m, data, paths);
    }

    private void ground(List<Task> tasks, MountedCutter m, BitSet own) {
        Cutter c = m.cutter();
        double step = Cusp.stepOfBallMm(c.cornerRadiusMm().value(), room.cuspMm);
        CutData data = room.table.data(m, CutKind.CURVED, 0.1, step);
        Region zone = axes(own, m.profile());
        List<List<Vec3>> paths = new ArrayList<>();
        DropCutter drop = new DropCutter(room.tree, m.profile(), room.lowestMm - 1);
        ExactPath exact = new ExactPath(drop);
        if (isBand(zone)) {
            for (Contour ring : CuspRings.lines(room.top, own, m.profile(), step)) paths.add(over(ring, exact));
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
            if (facet >= 0 && room.work.plain().doubleAreaNormal(facet).unit().z() >= STEEPEST_GROUND) {
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
        Grid grid = room.top.grid();
        double ballMm = ball.cornerRadiusMm();
        LocationMap tips = room.map(ball);
        BitSet axes = new BitSet(grid.count());
        for (int i = cells.nextSetBit(0); i >= 0; i = cells.nextSetBit(i + 1)) {
            Vec3 n = room.work.plain().doubleAreaNormal(room.top.facet(i)).unit();
            int x = (int) Math.floor((grid.x(i % grid.nx()) + ballMm * n.x() - grid.x0()) / grid.cell());
            int y = (int) Math.floor((grid.y(i / grid.nx()) + ballMm * n.y() - grid.y0()) / grid.cell());
            if (x < 0 || y < 0 || x >= grid.nx() || y >= grid.ny()) continue;
            double expected = room.top.heightMm(i) + ballMm * (n.z() - 1);
            if (tips.tipMm(grid.index(x, y)) < expected + grid.cell()) axes.set(grid.index(x, y));
        }
        // cells spread where the ground bulges leave gaps between their axes
        double gap = AXIS_GAP_CELLS * grid.cell();
        return room.zone(axes).offset(gap).offset(-gap + 0.5 * grid.cell());
    }

    private void add(
            List<Task> tasks, Phase phase, String words, MountedCutter m, CutData data, List<List<Vec3>> paths) {
        if (paths.isEmpty()) return;
        ExactPath exact = new ExactPath(new DropCutter(room.tree, m.profile(), room.lowestMm - 1));
        Linking linking = new Linking(
                exact,
                m.cutter().diaMm().value(),
                LONGEST_LINK_MM,
                room.stockTopZMm + CuttingRoom.RETRACT_MM,
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
                    pen.over(moves.getFirst().from(), room.stockTopZMm + CuttingRoom.RETRACT_MM);
                    pen.add(moves);
                }));
    }
}
