package shotwright.machining.time;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shotwright.machining.path.Feed;
import shotwright.machining.path.Operation;
import shotwright.machining.path.Program;
import shotwright.machining.path.Rapid;
import shotwright.machining.path.Step;
import shotwright.measure.Band;
import shotwright.mill.Mill;

/**
 * How long a program runs.
 *
 * @param operations its operations
 * @param cutterChanges how often a cutter is put in, the first included
 * @param changeS all cutter changes
 * @param spinUpS waiting for the spindle after them
 */
public record ProgramTime(List<OperationTime> operations, int cutterChanges, double changeS, double spinUpS) {
    public ProgramTime {
        operations = List.copyOf(operations);
    }

    /** Works the times out for a mill. */
    public static ProgramTime of(Program program, Mill mill) {
        return of(program, mill, 1);
    }

    /**
     * The same with what the shop learned.
     *
     * @param learnedFactor measured over estimated time of earlier programs on this mill
     */
    public static ProgramTime of(Program program, Mill mill, double learnedFactor) {
        if (!(learnedFactor > 0))
            throw new IllegalArgumentException("learnedFactor: " + learnedFactor + " is not above zero");
        MotionLimits limits = MotionLimits.of(mill);
        List<OperationTime> out = new ArrayList<>();
        int changes = 0;
        String inSpindle = "";
        for (Operation o : program.operations()) {
            out.add(operation(o, limits, learnedFactor));
            if (!o.cutterId().equals(inSpindle)) changes++;
            inSpindle = o.cutterId();
        }
        return new ProgramTime(
                out,
                changes,
                changes * mill.toolChangeS().value(),
                changes * mill.spinUpS().value());
    }

    private static OperationTime operation(Operation o, MotionLimits limits, double learnedFactor) {
        List<Step> steps = o.steps();
        double[] times = StepTimes.ofS(steps, limits);
        double feed = 0, rapid = 0, dwell = 0, plain = 0;
        for (int i = 0; i < times.length; i++) {
            switch (steps.get(i)) {
                case Feed f -> {
                    feed += times[i];
                    plain += 60 * f.lengthMm() / f.feedMmPerMin();
                }
                case Rapid r -> {
                    rapid += times[i];
                    if (r.lengthMm() > 0) plain += 60 * StepTimes.share(r) * r.lengthMm() / limits.rapidMmPerMin();
                }
                default -> {
                    dwell += times[i];
                    plain += times[i];
                }
            }
        }
        return new OperationTime(
                o.number(), o.words(), o.cutterId(), learnedFactor * feed, learnedFactor * rapid, dwell, plain);
    }

    /** The program moving, cutter changes left out. */
    public double movingS() {
        return operations.stream().mapToDouble(OperationTime::allS).sum();
    }

    /** Length over feed for the whole program, cutter changes left out. */
    public double lengthOverFeedS() {
        return operations.stream().mapToDouble(OperationTime::lengthOverFeedS).sum();
    }

    /** Everything: moving with its spread, cutter changes and spin-ups. */
    public Band allS() {
        Band moving = Band.plusMinus(movingS(), OperationTime.SPREAD_SHARE);
        double rest = changeS + spinUpS;
        return moving.plus(new Band(rest, rest, rest));
    }

    /** Seconds each cutter moves, in the order they are first used. */
    public Map<String, Double> byCutterS() {
        Map<String, Double> out = new LinkedHashMap<>();
        for (OperationTime o : operations) out.merge(o.cutterId(), o.allS(), Double::sum);
        return out;
    }
}
