package shotwright.machining.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import shotwright.cutter.Cutter;
import shotwright.cutter.MountedCutter;
import shotwright.geom.Box3;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.layout.Block;
import shotwright.layout.Half;
import shotwright.layout.LayoutResult;
import shotwright.machining.channel.ChannelPlanner;
import shotwright.machining.channel.ChannelWay;
import shotwright.machining.choice.Candidate;
import shotwright.machining.choice.CandidateTable;
import shotwright.machining.choice.CutterSearch;
import shotwright.machining.choice.CutterSearch.Result;
import shotwright.machining.contact.Overhang;
import shotwright.machining.contact.TopSurface;
import shotwright.machining.face.FacePlanner;
import shotwright.machining.feed.Shopfloor;
import shotwright.machining.hole.HolePlanner;
import shotwright.machining.hole.HoleWay;
import shotwright.machining.path.Coolant;
import shotwright.machining.path.Operation;
import shotwright.machining.path.Program;
import shotwright.machining.proof.Descents;
import shotwright.machining.proof.StockHeights;
import shotwright.machining.setup.Blank;
import shotwright.machining.setup.BlankChoice;
import shotwright.machining.setup.HalfBlock;
import shotwright.machining.setup.Setup;
import shotwright.machining.setup.SetupWishes;
import shotwright.machining.setup.TwoSetups;
import shotwright.machining.workpiece.Channel;
import shotwright.machining.workpiece.Hole;
import shotwright.machining.workpiece.Task;
import shotwright.machining.workpiece.Workpiece;
import shotwright.measure.Quantity;
import shotwright.measure.QuantityRange;
import shotwright.measure.Source;
import shotwright.mold.MoldResult;
import shotwright.progress.Progress;
import shotwright.stock.Stock;

/** Plans a half from the bar to its last chamfer. */
public final class HalfPlanner {
    /** Ridges on finished ground and walls: smooth without polishing (common practice). */
    public static final double CUSP_MM = 0.004;

    private static final double CHAMFER_MM = 0.3;
    private static final double CLEAR_MM = 10;
    private static final double LONGEST_STICKOUT_MM = 40, SHORTEST_STICKOUT_MM = 12;
    private static final double SIDE_FORCE_N = 200;
    private static final double OUTSIDE_OVERLAP_MM = 0.5;

    /** The outsides of both clampings meet at least so far below the parting face, never on it (common practice). */
    private static final double BLEND_BELOW_MM = 1;

    /** Cells of the maps the cutters are chosen and paths are laid out on. */
    private static final double CELL_MM = 0.1;

    /** Sets larger than this never paid. */
    private static final int MOST_CUTTERS = 7;

    private final Shopfloor shop;

    public HalfPlanner(Shopfloor shop) {
        this.shop = shop;
    }

    /** The plan of a half. */
    public HalfPlan plan(Half half, LayoutResult layout, MoldResult mold, Progress progress) {
        Block block = layout.block();
        HalfBlock size = new HalfBlock(
                "half " + half,
                block.widthMm(),
                block.heightMm(),
                half == Half.A ? block.thicknessAMm() : block.thicknessBMm(),
                half == Half.A ? block.riseAMm() : block.riseBMm());
        List<String> notes = new ArrayList<>();
        Blank blank = blank(size, half == Half.A ? block.stockA() : block.stockB(), block.sawAllowanceMm(), notes);
        Workpiece work = Workpiece.of(half, layout, mold, blank.turned());
        TwoSetups setups = TwoSetups.of(blank, shop.mill(), wishes(work));
        return new Planning(work, setups, notes).plan(progress);
    }

    private Blank blank(HalfBlock size, String barId, double sawAllowanceMm, List<String> notes) {
        Stock named = shop.bars().stream()
                .filter(s -> s.id().equals(barId))
                .findFirst()
                .orElse(null);
        if (named != null) {
            BlankChoice choice = Blank.of(size, named, sawAllowanceMm);
            if (choice instanceof Blank b) return b;
        }
        Stock bought = toBuy(size);
        notes.add("No bar on the rack gives " + size.name() + "; the plan counts on a " + bought.name() + ".");
        if (Blank.of(size, bought, sawAllowanceMm) instanceof Blank b) return b;
        throw new IllegalStateException("a bar made to measure does not give " + size);
    }

    private Stock toBuy(HalfBlock size) {
        Source source = Source.computed("smallest even millimetre that gives the half");
        double thick = Math.ceil(size.overallMm() + 0.7);
        double wide = Math.min(size.widthMm(), size.heightMm()), longer = Math.max(size.widthMm(), size.heightMm());
        return new Stock(
                "to-buy",
                String.format(Locale.ROOT, "bar of %.0f × %.1f mm", thick, wide),
                Stock.Shape.BAR,
                shop.alloy().id(),
                new Quantity(thick, "mm", source),
                new Quantity(wide, "mm", source),
                new Quantity(longer + 100, "mm", source),
                Stock.SoldIn.MM,
                new Quantity(0.2, "mm", source),
                new QuantityRange(0, 0, "unit/kg", source));
    }

    private static SetupWishes wishes(Workpiece w) {
        double side = 0, deep = w.thicknessMm() / 2;
        for (Channel c : w.channels())
            if (c.openBefore() || c.openAfter()) side = Math.max(side, Math.max(c.fromDepthMm(), c.toDepthMm()));
        for (Hole h : w.holes()) deep = Math.max(deep, h.depthMm());
        return new SetupWishes(25, 10, side, deep, LONGEST_STICKOUT_MM, SHORTEST_STICKOUT_MM, SIDE_FORCE_N);
    }

    /** One half's plan in the making. */
    private final class Planning {
        private final Workpiece work;
        private final TwoSetups setups;
        private final List<String> notes;
        private final List<String> byHand = new ArrayList<>();
        private final List<String> benchHoles = new ArrayList<>();
        private final ToolTable tools = new ToolTable();
        private final FacePlanner faces = new FacePlanner(shop);
        private final HolePlanner holes = new HolePlanner(shop);
        private final ChannelPlanner channels = new ChannelPlanner(shop);
        private @Nullable Result choice;

        Planning(Workpiece work, TwoSetups setups, List<String> notes) {
            this.work = work;
            this.setups = setups;
            this.notes = notes;
            notes.addAll(setups.trouble());
        }

        HalfPlan plan(Progress progress) {
            List<Task> back = backTasks(), parting = partingTasks(progress);
            back.forEach(tools::use);
            parting.forEach(tools::use);
            Program backProgram = program(setups.back(), back);
            Program partingProgram = program(setups.parting(), parting);
            if (partingProgram == null)
                throw new IllegalStateException("nothing to mill on the parting face of half " + work.half());
            StockHeights raw = StockHeights.block(setups.parting().stock(), CELL_MM);
            return new HalfPlan(
                    work.half(),
                    setups,
                    work,
                    backProgram == null
                            ? null
                            : shortened(
                                    backProgram,
                                    StockHeights.block(setups.back().stock(), CELL_MM)),
                    shortened(partingProgram, raw),
                    tools.all(),
                    choice,
                    byHand,
                    benchHoles,
                    notes);
        }

        private @Nullable Program program(Setup setup, List<Task> tasks) {
            double clear = setup.stock().max().z() + CLEAR_MM;
            Vec2 start = new Vec2(setup.stock().min().x(), setup.stock().min().y());
            List<Operation> operations = new TaskOrder(tools, Coolant.MIST, clear).operations(tasks, start);
            return operations.isEmpty()
                    ? null
                    : new Program(setup.name(), setup.offset(), setup.stock(), clear, operations);
        }

        private Program shortened(Program program, StockHeights start) {
            Map<Integer, MountedCutter> mounted = new HashMap<>();
            for (ToolTable.Tool t : tools.all()) mounted.put(t.number(), t.mounted());
            return Descents.shortened(program, mounted, start, Progress.SILENT);
        }

        private void add(List<Task> tasks, @Nullable Task task, String otherwise) {
            if (task != null) tasks.add(task);
            else notes.add(otherwise);
        }

        private List<Task> backTasks() {
            List<Task> tasks = new ArrayList<>();
            Setup s = setups.back();
            Box3 raw = s.stock(), size = s.finished();
            if (raw.max().z() > size.max().z() + 1e-6)
                add(
                        tasks,
                        faces.face(raw, size.max().z(), s.facing() != Setup.Facing.ALONG_Y),
                        "No cutter on the rack faces the back.");
            outside(tasks, raw, size);
            double length = setups.blank().lengthMm(), thick = work.thicknessMm();
            for (Hole h : work.holes()) if (!h.fromParting()) hole(tasks, h.backUp(length, thick), floor(h));
            add(tasks, faces.chamfer(size, CHAMFER_MM), "No 45° cutter on the rack: break the outside edges by hand.");
            return tasks;
        }

        private void outside(List<Task> tasks, Box3 raw, Box3 size) {
            if (raw.min().x() > size.min().x() - 1e-6
                    && raw.max().x() < size.max().x() + 1e-6) return;
            Box3 top = new Box3(
                    raw.min(), new Vec3(raw.max().x(), raw.max().y(), size.max().z()));
            add(
                    tasks,
                    faces.outside(top, size),
                    "No cutter on the rack reaches down the outside: mill it in steps by hand.");
        }

        /** Metal below the end of a blind hole. */
        private double floor(Hole h) {
            if (h.through()) return Double.POSITIVE_INFINITY;
            return h.fromParting() ? h.endZMm() + work.thicknessMm() : -h.endZMm();
        }

        private void hole(List<Task> tasks, Hole h, double floorMm) {
            HoleWay way = holes.plan(h, floorMm);
            tasks.addAll(way.tasks());
            notes.addAll(way.notes());
            if (way.tasks().isEmpty()) benchHoles.add(h.name());
            if (!way.byHand().isEmpty()) byHand.add(way.byHand());
        }

        private List<Task> partingTasks(Progress progress) {
            List<Task> tasks = new ArrayList<>();
            Setup s = setups.parting();
            Box3 raw = s.stock(), size = s.finished();
            double rise = work.metal().max().z();
            if (raw.max().z() > rise + 1e-6)
                add(
                        tasks,
                        faces.face(raw, rise, s.facing() != Setup.Facing.ALONG_Y),
                        "No cutter on the rack faces the parting face.");
            double met = -work.thicknessMm() - setups.back().finished().min().z() - OUTSIDE_OVERLAP_MM;
            double jaws = -work.thicknessMm() + s.gripMm() + OUTSIDE_OVERLAP_MM;
            double milledTo = Math.max(jaws, Math.min(met, -BLEND_BELOW_MM));
            outside(tasks, raw, new Box3(new Vec3(size.min().x(), size.min().y(), milledTo), size.max()));
            cavity(tasks, rise, progress);
            for (Hole h : work.holes()) if (h.fromParting()) hole(tasks, h, floor(h));
            for (Channel c : work.channels()) {
                ChannelWay way = channels.plan(c);
                tasks.addAll(way.tasks());
                notes.addAll(way.notes());
            }
            if (rise < 1e-6)
                add(
                        tasks,
                        faces.chamfer(size, CHAMFER_MM),
                        "No 45° cutter on the rack: break the outside edges by hand.");
            return tasks;
        }

        private void cavity(List<Task> tasks, double topZMm, Progress progress) {
            double widest = shop.cutters().stream()
                    .filter(c -> c.shape().mills() && c.shape() != Cutter.Shape.FACE)
                    .mapToDouble(Cutter::largestDiaMm)
                    .max()
                    .orElse(6);
            progress.at("looking at half " + work.half() + " from above", 0);
            TopSurface top = TopSurface.of(work.plain(), CELL_MM, widest / 2 + 1);
            CandidateTable table = new CandidateTable(top, topZMm, shop, CUSP_MM);
            for (Overhang o : Overhang.in(work.plain(), top.grid()))
                notes.add(String.format(
                        Locale.ROOT,
                        "Metal of half %s overhangs %.1f mm² near x %.1f, y %.1f mm from the zero: nothing reaches what lies beneath.",
                        work.half(),
                        o.areaMm2(),
                        o.place().x(),
                        o.place().y()));
            if (table.surface().cells().isEmpty()) return;
            progress.at("choosing cutters for half " + work.half(), 0.1);
            List<Candidate> rows = table.rows();
            choice = new CutterSearch(Pruning.of(rows), table.surface(), changeS(), MOST_CUTTERS)
                    .search()
                    .orElse(null);
            if (choice == null) {
                notes.add("No set of cutters on the rack mills the cavity of half " + work.half() + ".");
                return;
            }
            CuttingRoom room = new CuttingRoom(work, top, table, topZMm, CUSP_MM);
            new CavityRoughing(room, choice.best()).rough(tasks, progress.part(0.4, 0.7));
            new CavityFinishing(room, choice.best()).finish(tasks, progress.part(0.7, 1));
        }

        private double changeS() {
            return shop.mill().toolChangeS().value() + shop.mill().spinUpS().value();
        }
    }
}
