package shotwright.machining.proof;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.cutter.CutterProfile;
import shotwright.geom.Vec3;
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

    private final ProofTask task;
    private final ExactDrop exact;

    ExactCheck(ProofTask task, ExactDrop exact) {
        this.task = task;
        this.exact = exact;
    }

    List<Fault> check(int index, Operation operation, Progress progress) {
        CutterProfile profile = task.cutter(operation).profile();
        CutterProfile smaller = profile.widenedMm(-Math.min(task.limits().shrinkMm(), 0.4 * smallest(profile)));
        List<Move> moves = operation.moves();
        int chunks = Math.ceilDiv(moves.size(), CHUNK);
        List<List<Fault>> found = new ArrayList<>(Collections.nCopies(chunks, List.of()));
        Runnable done = Parallel.steps(progress, "checking operation " + operation.number() + " exactly", chunks);
        Parallel.run(chunks, () -> {
            ExactDrop.TipHeight tip = exact.under(smaller);
            SmallerCutters fitting = new SmallerCutters(exact, profile, 0.9 * smallest(profile));
            return c -> {
                List<Fault> faults = new ArrayList<>();
                for (int m = c * CHUNK; m < Math.min(moves.size(), (c + 1) * CHUNK); m++) {
                    Fault f = worst(index, m, moves.get(m), profile, tip, fitting);
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
            int index, int m, Move move, CutterProfile profile, ExactDrop.TipHeight tip, SmallerCutters fitting) {
        Vec3 worst = null;
        double most = task.limits().exactMm();
        for (Step s : move.steps()) {
            if (!(s instanceof Feed)) continue;
            for (Vec3 p : List.of(s.at(0.5), s.to())) {
                if (elsewhere(p, profile)) continue;
                double low = tip.tipMm(p.x(), p.y()) - p.z();
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
        for (Level l : task.levels())
            if (p.x() >= l.min().x()
                    && p.x() <= l.max().x()
                    && p.y() >= l.min().y()
                    && p.y() <= l.max().y()) return true;
        return false;
    }
}
