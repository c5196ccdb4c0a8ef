package shotwright.machining.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import shotwright.cutter.MountedCutter;
import shotwright.geom.Box3;
import shotwright.geom.Transform;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.gcode.Dialect;
import shotwright.machining.gcode.GcodeReader;
import shotwright.machining.gcode.Listing;
import shotwright.machining.path.Operation;
import shotwright.machining.path.Program;
import shotwright.machining.proof.Fault;
import shotwright.machining.proof.Half;
import shotwright.machining.proof.Hole;
import shotwright.machining.proof.KeepOut;
import shotwright.machining.proof.Leftover;
import shotwright.machining.proof.Level;
import shotwright.machining.proof.Proof;
import shotwright.machining.proof.ProofTask;
import shotwright.machining.proof.Proveout;
import shotwright.machining.proof.StockHeights;
import shotwright.machining.setup.Setup;
import shotwright.machining.workpiece.Channel;
import shotwright.machining.workpiece.Phase;
import shotwright.mesh.Grid;
import shotwright.mesh.TriMesh;
import shotwright.mesh.complex.Material;
import shotwright.mill.Mill;
import shotwright.progress.Progress;

/**
 * Proves the program of one clamping as it is read back from its file.
 *
 * <p>The operation that breaks the outside edges cuts into the half there, and means to. It comes last and is run by itself on what the others
 * left: its cuts into the half are left out where they lie on an outside edge, nowhere else, and everything else is held against it as usual.
 * So leftover and deepest cut are those of the half with its edges still sharp.
 */
final class ClampingProof {
    private static final double CELL_MM = 0.05;

    /** A grid may round up to a few cells more. */
    private static final double MOST_CELLS = Grid.MOST / 1.05;

    /** How far above its clearance height the spindle's top is taken to be. */
    private static final double TOP_MM = 50;

    /** Broken edges are no wider, in plan. */
    private static final double EDGE_MM = 1;

    private static final double SAME_MM = 1e-4;

    /** The middle of a vent is looked at, so much of its width and length. */
    private static final double MIDDLE_SHARE = 0.25;

    private final Setup setup;
    private final TriMesh finished;
    private final Box3 metal;
    private final List<Hole> holes;
    private final List<Level> levels;
    private final Map<Integer, MountedCutter> cutters;
    private final Mill mill;

    /**
     * What a proof said of a program.
     *
     * @param listing the program as read back
     * @param faults with the operation's index in the listing
     * @param leftover what is left before edges are broken
     * @param removedMm3 metal taken
     */
    record Answer(
            Listing listing, List<Fault> faults, @Nullable Leftover leftover, double removedMm3) {}

    private ClampingProof(
            Setup setup,
            TriMesh finished,
            Box3 metal,
            List<Hole> holes,
            List<Level> levels,
            Map<Integer, MountedCutter> cutters,
            Mill mill) {
        this.setup = setup;
        this.finished = finished;
        this.metal = metal;
        this.holes = holes;
        this.levels = levels;
        this.cutters = cutters;
        this.mill = mill;
    }

    /** The clamping with the parting face up. */
    static ClampingProof parting(HalfPlan plan, Program parting, Map<Integer, MountedCutter> cutters, Mill mill) {
        List<shotwright.machining.workpiece.Hole> holes =
                plan.work().holes().stream().filter(h -> h.fromParting()).toList();
        List<Level> vents = new ArrayList<>();
        for (Channel c : plan.work().channels())
            if (c.use().material() == Material.VENT && !c.round() && c.isStraight()) vents.add(level(c));
        return new ClampingProof(
                plan.setups().parting(),
                plan.work().finished(),
                plan.work().metal(),
                new MadeHoles(parting, cutters, plan.benchHoles())
                        .held(holes, plan.work().metal().min().z()),
                vents,
                cutters,
                mill);
    }

    /** The clamping with the back up. */
    static ClampingProof back(HalfPlan plan, Program back, Map<Integer, MountedCutter> cutters, Mill mill) {
        double along = plan.work().metal().max().x(), thick = plan.work().thicknessMm();
        Box3 m = plan.work().metal();
        Vec3 high = plan.setups().turned(m.max()), low = plan.setups().turned(m.min());
        Box3 turned = new Box3(
                new Vec3(high.x(), m.min().y(), high.z()),
                new Vec3(low.x(), m.max().y(), low.z()));
        List<shotwright.machining.workpiece.Hole> holes = plan.work().holes().stream()
                .filter(h -> !h.fromParting())
                .map(h -> h.backUp(along, thick))
                .toList();
        List<Hole> held = new MadeHoles(back, cutters, plan.benchHoles())
                .held(holes, turned.min().z());
        return new ClampingProof(plan.setups().back(), turned(plan), turned, held, List.of(), cutters, mill);
    }

    private static TriMesh turned(HalfPlan plan) {
        Transform over = Transform.turn(Vec3.Y, Math.PI)
                .then(Transform.translate(plan.setups().turned(Vec3.ZERO)));
        return plan.work().finished().transform(over);
    }

    private static Level level(Channel c) {
        Vec3 middle = c.fromMm().toward(c.toMm(), 0.5);
        double half = MIDDLE_SHARE * Math.min(c.fromWidthMm(), c.lengthMm());
        return new Level(
                c.name(),
                new Vec2(middle.x() - half, middle.y() - half),
                new Vec2(middle.x() + half, middle.y() + half),
                middle.z() - c.fromDepthMm());
    }

    /**
     * Runs the program.
     *
     * @param name name of its file
     * @param text its lines
     */
    Answer run(Program planned, Dialect control, String name, String text, Progress progress) {
        Listing listing =
                new GcodeReader(control.dwellUnit()).read(name, text, setup.stock(), planned.clearanceZMm() + TOP_MM);
        Program read = listing.program();
        List<Operation> all = read.operations();
        if (all.size() != planned.operations().size())
            throw new IllegalStateException(name + " reads back as " + all.size() + " operations, not "
                    + planned.operations().size());
        int edges = all.size();
        while (edges > 1 && breaksEdges(planned.operations().get(edges - 1))) edges--;
        Half half = new Half(finished);
        Proof before = Proveout.run(task(read, all.subList(0, edges), half, true), stock(), progress.part(0, 0.9));
        List<Fault> faults = new ArrayList<>(before.faults());
        double removed = before.removedMm3();
        if (edges < all.size()) {
            Proof after = Proveout.run(
                    task(read, all.subList(edges, all.size()), half, false), before.stock(), progress.part(0.9, 1));
            removed += after.removedMm3();
            for (Fault f : after.faults())
                if (!isBrokenEdge(f) && !wasThere(f, before.stock())) faults.add(later(f, edges));
        }
        return new Answer(listing, faults, before.leftover(), removed);
    }

    static boolean breaksEdges(Operation o) {
        return o.words().equals(Phase.CHAMFER.words());
    }

    private boolean isBrokenEdge(Fault f) {
        if (f.kind() != Fault.Kind.GOUGE) return false;
        Vec3 p = f.at();
        double inside = Math.min(
                Math.min(p.x() - metal.min().x(), metal.max().x() - p.x()),
                Math.min(p.y() - metal.min().y(), metal.max().y() - p.y()));
        return inside <= EDGE_MM;
    }

    /** A place that was cut too deep before edges were broken: told of the operation that did it. */
    private static boolean wasThere(Fault f, StockHeights before) {
        if (f.kind() != Fault.Kind.GOUGE) return false;
        Grid g = before.grid();
        int i = (int) Math.clamp(Math.round((f.at().x() - g.x(0)) / g.cell()), 0, g.nx() - 1);
        int j = (int) Math.clamp(Math.round((f.at().y() - g.y(0)) / g.cell()), 0, g.ny() - 1);
        return before.topMm(g.index(i, j)) <= f.at().z() + SAME_MM;
    }

    private static Fault later(Fault f, int by) {
        return new Fault(f.kind(), f.operation() + by, f.move(), f.at(), f.what(), f.found(), f.limit());
    }

    private ProofTask task(Program read, List<Operation> operations, Half half, boolean held) {
        ProofTask task = ProofTask.of(read.withOperations(operations), cutters)
                .against(half)
                .around(jaws())
                .on(mill);
        return held ? task.with(holes, levels) : task;
    }

    private List<KeepOut> jaws() {
        List<KeepOut> out = new ArrayList<>();
        for (Box3 b : setup.keepOut()) out.add(new KeepOut(out.isEmpty() ? "fixed jaw" : "moving jaw", b));
        return out;
    }

    /**
     * The block as clamped. With the parting face up the rim that the jaws held before still stands around the top; what was milled off the
     * sides lies under it, where no cutter comes from above.
     */
    private StockHeights stock() {
        Box3 box = setup.stock();
        double cell = Math.max(CELL_MM, Math.sqrt(box.size().x() * box.size().y() / MOST_CELLS));
        return StockHeights.block(box, cell);
    }
}
