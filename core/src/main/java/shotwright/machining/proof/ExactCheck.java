package shotwright.machining.proof;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import shotwright.cutter.CutterProfile;
import shotwright.geom.Vec3;
import shotwright.machining.contact.DropCutter;
import shotwright.machining.path.Feed;
import shotwright.machining.path.Move;
import shotwright.machining.path.Operation;
import shotwright.machining.path.Step;
import shotwright.progress.Parallel;
import shotwright.progress.Progress;

/**
 * The end and the middle of every cutting step against the exact contact of its cutter with the half, the cutter made a little smaller because
 * paths along walls touch them everywhere. A tip too low is judged by how much smaller the cutter would have to be to fit there, or by the
 * height it lacks, whichever is less.
 */
final class ExactCheck {
    private static final int CHUNK = 256;

    /** So far below its height a place is no longer the business of a level, mm. */
    private static final double LEVEL_MM = 0.1;

    private final ProofTask task;
    private final Half half;

    ExactCheck(ProofTask task, Half half) {
        this.task = task;
        this.half = half;
    }

    List<Fault> check(int index, Operation operation, Progress progress) {
        CutterProfile profile = task.cutter(operation).profile();
        CutterProfile smaller = profile.widenedMm(-Math.min(task.limits().shrinkMm(), 0.4 * smallest(profile)));
        List<Move> moves = operation.moves();
        DropCutter tip = half.under(smaller);
        int chunks = Math.ceilDiv(moves.size(), CHUNK);
        List<List<Fault>> found = new ArrayList<>(Collections.nCopies(chunks, List.of()));
        Runnable done = Parallel.steps(progress, "checking operation " + operation.number() + " exactly", chunks);
        Parallel.run(chunks, () -> {
            DropCutter.Cursor cursor = new DropCutter.Cursor();
            SmallerCutters fitting = new SmallerCutters(half, profile, 0.9 * smallest(profile));
            return c -> {
                List<Fault> faults = new ArrayList<>();
                for (int m = c * CHUNK; m < Math.min(moves.size(), (c + 1) * CHUNK); m++) {
                    Fault f = worst(index, m, moves.get(m), profile, p -> tip.tipMm(p.x(), p.y(), cursor), fitting);
                    if (f != null) faults.add(f);
                }
                synchronized (found) {
                    found.set(c, faults);
                }
                done.run();
            };
        });
        return found.stream().flatMap(List::stream).toList();
    }

    private static double smallest(CutterProfile p) {
        return p.flatRadiusMm() > 0 ? p.flatRadiusMm() + p.cornerRadiusMm() : Math.max(p.cornerRadiusMm(), 1e-3);
    }

    private @Nullable Fault worst(
            int index, int m, Move move, CutterProfile profile, ToDoubleFunction<Vec3> tip, SmallerCutters fitting) {
        Vec3 worst = null;
        double most = task.limits().exactMm();
        for (Step s : move.steps()) {
            if (!(s instanceof Feed)) continue;
            for (Vec3 p : List.of(s.at(0.5), s.to())) {
                if (elsewhere(p, profile)) continue;
                double low = tip.applyAsDouble(p) - p.z();
                if (low > most) {
                    most = low;
                    worst = p;
                }
            }
        }
        if (worst == null) return null;
        double depth = Math.min(most, fitting.tooWideMm(worst));
        if (depth <= task.limits().gougeMm()) return null;
        return Fault.of(
                Fault.Kind.GOUGE, index, m, worst, "", depth, task.limits().gougeMm());
    }

    /** Holes and levels are held against their own numbers. */
    private boolean elsewhere(Vec3 p, CutterProfile profile) {
        for (Hole h : task.holes())
            if (p.xy().distance(h.centre()) + profile.radiusAtMm(0) < h.diameterMm() / 2 + 0.1) return true;
        double r = profile.largestRadiusMm();
        for (Level l : task.levels())
            if (p.x() >= l.min().x() - r
                    && p.x() <= l.max().x() + r
                    && p.y() >= l.min().y() - r
                    && p.y() <= l.max().y() + r
                    && p.z() >= l.zMm() - LEVEL_MM) return true;
        return false;
    }
}
