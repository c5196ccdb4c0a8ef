package shotwright.machining;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import shotwright.cutter.Cutter;
import shotwright.cutter.Holder;
import shotwright.cutter.MountedCutter;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;
import shotwright.machining.feed.FeedTable;
import shotwright.machining.feed.Shopfloor;
import shotwright.machining.path.Coolant;
import shotwright.machining.path.Operation;
import shotwright.machining.path.PathBuilder;
import shotwright.machining.path.Program;
import shotwright.machining.path.Step;
import shotwright.machining.path.WorkOffset;
import shotwright.machining.proof.Half;
import shotwright.machining.proof.Hole;
import shotwright.machining.proof.Level;
import shotwright.machining.proof.Proof;
import shotwright.machining.proof.ProofTask;
import shotwright.machining.proof.Proveout;
import shotwright.machining.proof.StockHeights;
import shotwright.machining.workpiece.Task;
import shotwright.mesh.TriMesh;
import shotwright.mill.Mill;
import shotwright.mill.MillRack;
import shotwright.progress.Progress;
import shotwright.stock.MoldMaterial;
import shotwright.stock.StockRack;

/** Tasks run one after the other on a block, as a program and through the removal of stock. */
public final class Trial {
    /** Height of the tip over everything. */
    public static final double CLEAR_MM = 20;

    public static final Mill MILL = MillRack.standard().byId("small-vmc-30k");
    public static final MoldMaterial ALLOY = StockRack.materials().byId("6061-t6");
    public static final FeedTable FEEDS = FeedTable.standard().byId("aluminium");

    private Trial() {}

    /** A shop with these cutters and this mill. */
    public static Shopfloor shop(List<Cutter> cutters, Mill mill) {
        return new Shopfloor(cutters, mill, ALLOY, FEEDS, StockRack.standard().all());
    }

    /** The steps a task takes from over the block's first corner. */
    public static List<Step> steps(Task task) {
        PathBuilder pen = new PathBuilder(new Vec3(-30, -30, CLEAR_MM));
        task.path().write(pen, CLEAR_MM);
        return pen.moves().stream().flatMap(m -> m.steps().stream()).toList();
    }

    /** One operation for each task. */
    public static Program program(List<Task> tasks, Box3 stock) {
        List<Operation> operations = new ArrayList<>();
        Vec3 tip = new Vec3(-30, -30, CLEAR_MM);
        for (Task t : tasks) {
            PathBuilder pen = new PathBuilder(tip);
            t.path().write(pen, CLEAR_MM);
            tip = pen.tip();
            int n = operations.size() + 1;
            operations.add(new Operation(
                    n,
                    t.words(),
                    n,
                    t.cutter().id(),
                    t.stickoutMm(),
                    Math.rint(t.speedRpm()),
                    Coolant.MIST,
                    pen.moves()));
        }
        return new Program("trial", WorkOffset.G54, stock, CLEAR_MM, operations);
    }

    /** What runs of the tasks on a plain block show. */
    public static Proof proof(
            List<Task> tasks,
            Box3 stock,
            double cellMm,
            List<Hole> circles,
            List<Level> flats,
            @Nullable TriMesh half) {
        Map<Integer, MountedCutter> cutters = new TreeMap<>();
        for (int i = 0; i < tasks.size(); i++) {
            Cutter cutter = tasks.get(i).cutter();
            cutters.put(i + 1, new MountedCutter(cutter, tasks.get(i).stickoutMm(), Holder.ER16));
        }
        ProofTask task = ProofTask.of(program(tasks, stock), cutters).with(circles, flats);
        if (half != null) task = task.against(new Half(half));
        return Proveout.run(task, StockHeights.block(stock, cellMm), Progress.SILENT);
    }
}
