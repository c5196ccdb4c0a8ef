package shotwright.machining.proof;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import shotwright.cutter.MountedCutter;
import shotwright.machining.path.Operation;
import shotwright.machining.path.Program;
import shotwright.mill.Mill;

/**
 * What is to be proved.
 *
 * @param program the program, as read back from its file
 * @param cutters the cutter of each tool number as it stands in the spindle
 * @param half the half it should leave; null to look for contact only
 * @param keepOuts jaws, clamps
 * @param holes holes held against their circles
 * @param levels flat places held against their height
 * @param mill the mill; null to leave its limits out
 * @param engagementDeg the widest angle each operation means to be held by, by operation number; others are not held against one
 * @param limits how much is too much
 */
public record ProofTask(
        Program program,
        Map<Integer, MountedCutter> cutters,
        @Nullable Half half,
        List<KeepOut> keepOuts,
        List<Hole> holes,
        List<Level> levels,
        @Nullable Mill mill,
        Map<Integer, Double> engagementDeg,
        Limits limits) {
    public ProofTask {
        cutters = Map.copyOf(cutters);
        keepOuts = List.copyOf(keepOuts);
        holes = List.copyOf(holes);
        levels = List.copyOf(levels);
        engagementDeg = Map.copyOf(engagementDeg);
        for (Operation o : program.operations())
            if (!cutters.containsKey(o.toolNumber()))
                throw new IllegalArgumentException("cutters: operation " + o.number() + " (" + o.words() + ") calls T"
                        + o.toolNumber() + ", and no cutter has that number");
    }

    /** A program against its stock alone. */
    public static ProofTask of(Program program, Map<Integer, MountedCutter> cutters) {
        return new ProofTask(program, cutters, null, List.of(), List.of(), List.of(), null, Map.of(), Limits.USUAL);
    }

    /** The same held against a half. */
    public ProofTask against(Half finished) {
        return new ProofTask(program, cutters, finished, keepOuts, holes, levels, mill, engagementDeg, limits);
    }

    /** The same with things that must not be touched. */
    public ProofTask around(List<KeepOut> boxes) {
        return new ProofTask(program, cutters, half, boxes, holes, levels, mill, engagementDeg, limits);
    }

    /** The same with places held against their own numbers. */
    public ProofTask with(List<Hole> circles, List<Level> flats) {
        return new ProofTask(program, cutters, half, keepOuts, circles, flats, mill, engagementDeg, limits);
    }

    /** The same on a mill. */
    public ProofTask on(Mill machine) {
        return new ProofTask(program, cutters, half, keepOuts, holes, levels, machine, engagementDeg, limits);
    }

    /** The same with the engagement each operation means to keep to. */
    public ProofTask engaged(Map<Integer, Double> plannedDeg) {
        return new ProofTask(program, cutters, half, keepOuts, holes, levels, mill, plannedDeg, limits);
    }

    MountedCutter cutter(Operation o) {
        MountedCutter c = cutters.get(o.toolNumber());
        if (c == null) throw new IllegalStateException("T" + o.toolNumber());
        return c;
    }
}
