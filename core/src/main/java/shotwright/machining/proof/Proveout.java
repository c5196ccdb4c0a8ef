package shotwright.machining.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shotwright.cutter.MountedCutter;
import shotwright.geom.Vec3;
import shotwright.machining.path.Operation;
import shotwright.progress.Progress;

/** Runs a program against its stock and tells every fault. The same task gives the same answer on any number of processors. */
public final class Proveout {
    /** Most faults of one kind told for one operation; more say nothing new. */
    private static final int MOST_OF_A_KIND = 20;

    /** Most places looked up for the move that cut them. */
    private static final int MOST_PLACES = 500;

    /** What part of the work the heights are, and what part the exact check. */
    private static final double HEIGHTS = 0.6;

    private static final double EXACT = 0.9;

    private final ProofTask task;

    private Proveout(ProofTask task) {
        this.task = task;
    }

    /**
     * Proves a program.
     *
     * @param start the stock as it comes into the vise; it is not changed
     * @throws Progress.Cancelled when asked to stop
     */
    public static Proof run(ProofTask task, StockHeights start, Progress progress) {
        return new Proveout(task).run(start, progress);
    }

    private Proof run(StockHeights start, Progress progress) {
        StockRemoval removal = new StockRemoval(start.copy());
        List<Fault> faults = new ArrayList<>(new MillRules(task).check());
        List<Operation> operations = task.program().operations();
        KeepOutCheck keepOuts = new KeepOutCheck(task);
        for (int o = 0; o < operations.size(); o++) {
            Progress part = share(progress, o, operations.size(), 0, HEIGHTS);
            MountedCutter cutter = task.cutter(operations.get(o));
            Double planned = task.engagementDeg().get(operations.get(o).number());
            EngagementMeter meter = planned == null
                    ? null
                    : new EngagementMeter(
                            cutter.profile().largestRadiusMm(), start.grid().cell());
            var contacts =
                    removal.run(o, operations.get(o), cutter, task.limits().clearanceMm(), meter, part);
            for (StockRemoval.Contact c : contacts) faults.add(fault(c));
            if (meter != null && planned != null) faults.addAll(meter.faults(o, planned));
            faults.addAll(keepOuts.check(o, operations.get(o)));
        }
        faults.addAll(new HoleCheck(task).check());
        Half half = task.half();
        Leftover leftover = null;
        if (half != null) {
            ExactCheck check = new ExactCheck(task, half);
            for (int o = 0; o < operations.size(); o++)
                faults.addAll(check.check(o, operations.get(o), share(progress, o, operations.size(), HEIGHTS, EXACT)));
            HalfComparison comparison = new HalfComparison(removal.stock(), half, task);
            leftover = comparison.compare(progress.part(EXACT, 1));
            gouges(comparison, faults);
        }
        double removedMm3 = start.volumeMm3() - removal.stock().volumeMm3();
        return new Proof(removal.stock(), told(faults), leftover, removedMm3, removal.cellCount());
    }

    private static Progress share(Progress progress, int index, int count, double from, double to) {
        return progress.part(from + (to - from) * index / count, from + (to - from) * (index + 1) / count);
    }

    private static Fault fault(StockRemoval.Contact c) {
        var part = c.part();
        return part == null
                ? Fault.of(Fault.Kind.RAPID_IN_STOCK, c.operation(), c.move(), c.at(), "", c.depthMm(), 0)
                : Fault.of(Fault.Kind.BODY_CONTACT, c.operation(), c.move(), c.at(), part.words(), c.depthMm(), 0);
    }

    private void gouges(HalfComparison comparison, List<Fault> faults) {
        List<Integer> cells = comparison.gouged().stream().limit(MOST_PLACES).toList();
        List<Vec3> places = cells.stream().map(comparison::place).toList();
        DeepestCut guilty = new DeepestCut(task, places);
        for (int p = 0; p < places.size(); p++)
            if (guilty.operation(p) >= 0)
                faults.add(Fault.of(
                        Fault.Kind.GOUGE,
                        guilty.operation(p),
                        guilty.move(p),
                        places.get(p),
                        "",
                        comparison.cutIntoMm(cells.get(p)),
                        task.limits().gougeMm()));
    }

    /** The worst of each kind in each operation, one of a kind for a move, in the order of the program. */
    private static List<Fault> told(List<Fault> faults) {
        record Key(Fault.Kind kind, int operation, String what) {}
        record Once(Fault.Kind kind, int operation, int move, String what) {}
        List<Fault> worstFirst = new ArrayList<>(faults);
        worstFirst.sort(Comparator.comparingDouble(
                        (Fault f) -> -Math.abs(f.found().value() - f.limit().value()))
                .thenComparingInt(Fault::operation)
                .thenComparingInt(Fault::move));
        Set<Once> seen = new HashSet<>();
        Map<Key, Integer> counts = new HashMap<>();
        List<Fault> kept = new ArrayList<>();
        for (Fault f : worstFirst) {
            if (!seen.add(new Once(f.kind(), f.operation(), f.move(), f.what()))) continue;
            if (counts.merge(new Key(f.kind(), f.operation(), f.what()), 1, Integer::sum) > MOST_OF_A_KIND) continue;
            kept.add(f);
        }
        kept.sort(Comparator.comparingInt(Fault::operation)
                .thenComparingInt(Fault::move)
                .thenComparing(Fault::kind)
                .thenComparing(Fault::what));
        return kept;
    }
}
