package shotwright.machining.proof;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.atomic.LongAdder;
import org.jspecify.annotations.Nullable;
import shotwright.cutter.CutterProfile;
import shotwright.cutter.MountedCutter;
import shotwright.geom.Vec3;
import shotwright.machining.path.Feed;
import shotwright.machining.path.Move;
import shotwright.machining.path.Operation;
import shotwright.machining.path.Rapid;
import shotwright.machining.path.Step;
import shotwright.mesh.Grid;
import shotwright.progress.Parallel;
import shotwright.progress.Progress;

/**
 * Takes from the stock what the moves take, in bands of rows: every band sees all moves in their order, so what stands in the way of a move is
 * known at each cell without a lock, and the result does not depend on the number of processors.
 */
final class StockRemoval {
    private static final int BAND_ROWS = 32;

    /** After so many moves a band asks whether to go on. */
    private static final int ASK_EVERY = 1 << 12;

    /** Shallower contact is rounding of the heights, mm. */
    private static final double CONTACT_MM = 0.005;

    /** What a sweep does to the stock. */
    private enum Role {
        CUT,
        RAPID,
        BODY,
        METER
    }

    private record Passing(Sweep sweep, Role role, int move, MountedCutter.@Nullable Part part, int sample) {}

    /**
     * Something met the stock that should not.
     *
     * @param operation operation, from 0
     * @param move move, from 0
     * @param part what met it; null when a rapid ran into it with the cutting end
     * @param at where, on top of the stock
     * @param depthMm how deep
     */
    record Contact(int operation, int move, MountedCutter.@Nullable Part part, Vec3 at, double depthMm) {}

    private final StockHeights stock;
    private final short[] lastOperation;
    private final LongAdder cells = new LongAdder();

    StockRemoval(StockHeights stock) {
        this.stock = stock;
        lastOperation = new short[stock.grid().count()];
    }

    StockHeights stock() {
        return stock;
    }

    /** Operation that cut a cell last, from 1; 0 where none did. */
    int lastOperation(int cell) {
        return lastOperation[cell];
    }

    /** Cells looked at so far. */
    long cellCount() {
        return cells.sum();
    }

    /**
     * Runs an operation; the contacts in order of its moves.
     *
     * @param clearanceMm air a shank or holder wider than the cutting end must have
     * @param meter takes how the cutter is held; null to leave that out
     */
    List<Contact> run(
            int index,
            Operation operation,
            MountedCutter cutter,
            double clearanceMm,
            @Nullable EngagementMeter meter,
            Progress progress) {
        List<Passing> passings = passings(operation, cutter, clearanceMm, highest(), meter);
        if (meter != null) meter.start();
        Grid grid = stock.grid();
        int bands = Math.ceilDiv(grid.ny(), BAND_ROWS);
        List<List<Contact>> found = new ArrayList<>(Collections.nCopies(bands, List.of()));
        Runnable done = Parallel.steps(progress, "proving operation " + operation.number(), bands);
        Parallel.run(bands, () -> {
            Band band = new Band(index, passings, meter, progress);
            return b -> {
                List<Contact> contacts = band.run(b * BAND_ROWS, Math.min(grid.ny(), (b + 1) * BAND_ROWS));
                synchronized (found) {
                    found.set(b, contacts);
                }
                done.run();
            };
        });
        List<Contact> all = new ArrayList<>();
        for (List<Contact> f : found) all.addAll(f);
        return worstOfEachMove(all);
    }

    private float highest() {
        float highest = Float.NEGATIVE_INFINITY;
        for (float z : stock.top()) highest = Math.max(highest, z);
        return highest;
    }

    private static List<Contact> worstOfEachMove(List<Contact> all) {
        all.sort(Comparator.comparingInt(Contact::move)
                .thenComparing(c -> c.part() == null ? "" : c.part().words())
                .thenComparing(Comparator.comparingDouble(Contact::depthMm).reversed()));
        List<Contact> worst = new ArrayList<>();
        for (Contact c : all) {
            Contact last = worst.isEmpty() ? null : worst.getLast();
            if (last == null || last.move() != c.move() || last.part() != c.part()) worst.add(c);
        }
        return worst;
    }

    private static List<Passing> passings(
            Operation operation,
            MountedCutter cutter,
            double clearanceMm,
            float highest,
            @Nullable EngagementMeter meter) {
        CutterProfile end = cutter.profile();
        List<MountedCutter.Cylinder> body = cutter.cylinders().stream()
                .filter(c -> c.part() != MountedCutter.Part.FLUTES)
                .toList();
        List<Passing> out = new ArrayList<>();
        for (int m = 0; m < operation.moves().size(); m++) {
            Move move = operation.moves().get(m);
            for (Step step : move.steps()) {
                double low = Math.min(step.from().z(), step.to().z());
                if (low >= highest) continue;
                if (meter != null && step instanceof Feed feed) {
                    for (int k = meter.add(m, feed); k < meter.count(); k++)
                        out.add(new Passing(new LineSweep(end, meter.at(k), meter.at(k)), Role.METER, m, null, k));
                }
                Role role = step instanceof Rapid ? Role.RAPID : Role.CUT;
                for (Sweep s : Sweep.of(step, end, 0)) out.add(new Passing(s, role, m, null, -1));
                for (MountedCutter.Cylinder c : body) {
                    if (low + c.fromMm() >= highest) continue;
                    double radiusMm = c.radiusMm() > end.largestRadiusMm() ? c.radiusMm() + clearanceMm : c.radiusMm();
                    for (Sweep s : Sweep.of(step, CutterProfile.flat(radiusMm), c.fromMm()))
                        out.add(new Passing(s, Role.BODY, m, c.part(), -1));
                }
            }
        }
        return out;
    }

    /** What one thread needs for its bands. */
    private final class Band {
        private final int operation;
        private final List<Passing> passings;
        private final @Nullable EngagementMeter meter;
        private final Progress progress;
        private final float[] row = new float[stock.grid().nx()];
        private final float[] before = new float[stock.grid().nx() * BAND_ROWS];
        private final double[] ends = new double[2];

        Band(int operation, List<Passing> passings, @Nullable EngagementMeter meter, Progress progress) {
            this.operation = operation;
            this.passings = passings;
            this.meter = meter;
            this.progress = progress;
        }

        List<Contact> run(int fromRow, int toRow) {
            Grid grid = stock.grid();
            float[] top = stock.top();
            int first = fromRow * grid.nx(), count = (toRow - fromRow) * grid.nx();
            System.arraycopy(top, first, before, 0, count);
            float highest = Float.NEGATIVE_INFINITY;
            for (int i = 0; i < count; i++) highest = Math.max(highest, before[i]);
            double lowY = grid.y(fromRow), highY = grid.y(toRow - 1);
            List<Contact> contacts = new ArrayList<>();
            long looked = 0;
            for (int k = 0; k < passings.size(); k++) {
                if (k % ASK_EVERY == ASK_EVERY - 1)
                    progress.at("proving operation " + (operation + 1), k / (double) passings.size());
                Passing p = passings.get(k);
                if (p.sweep.lowestMm() >= highest || p.sweep.lowestY() > highY || p.sweep.highestY() < lowY) continue;
                if (p.role != Role.METER) looked += pass(p, fromRow, toRow, contacts);
                else if (meter != null) meter.look(p.sample, top, grid, fromRow, toRow);
            }
            cells.add(looked);
            for (int i = 0; i < count; i++)
                if (top[first + i] < before[i]) lastOperation[first + i] = (short) (operation + 1);
            return contacts;
        }

        private long pass(Passing p, int fromRow, int toRow, List<Contact> contacts) {
            Grid grid = stock.grid();
            float[] top = stock.top();
            int j0 = Math.max(fromRow, (int) Math.ceil((p.sweep.lowestY() - grid.y(0)) / grid.cell()));
            int j1 = Math.min(toRow - 1, (int) Math.floor((p.sweep.highestY() - grid.y(0)) / grid.cell()));
            long looked = 0;
            double deepest = CONTACT_MM;
            Vec3 at = null;
            for (int j = j0; j <= j1; j++) {
                double y = grid.y(j);
                if (!p.sweep.span(y, ends)) continue;
                int i0 = Math.max(0, (int) Math.ceil((ends[0] - grid.x(0)) / grid.cell()));
                int i1 = Math.min(grid.nx() - 1, (int) Math.floor((ends[1] - grid.x(0)) / grid.cell()));
                int n = i1 - i0 + 1, o = j * grid.nx() + i0;
                if (n <= 0) continue;
                looked += n;
                p.sweep.fill(row, n, grid.x(i0), grid.cell(), y, top, o);
                if (p.role != Role.CUT) {
                    int worst = worst(top, o, n);
                    if (top[o + worst] - row[worst] > deepest) {
                        deepest = top[o + worst] - row[worst];
                        at = new Vec3(grid.x(i0 + worst), y, top[o + worst]);
                    }
                }
                if (p.role != Role.BODY) lower(top, o, row, n);
            }
            if (at != null) contacts.add(new Contact(operation, p.move, p.part, at, deepest));
            return looked;
        }

        private int worst(float[] top, int o, int n) {
            int worst = 0;
            float deepest = Float.NEGATIVE_INFINITY;
            for (int i = 0; i < n; i++) {
                float depth = top[o + i] - row[i];
                if (depth > deepest) {
                    deepest = depth;
                    worst = i;
                }
            }
            return worst;
        }
    }

    private static void lower(float[] top, int o, float[] to, int n) {
        for (int i = 0; i < n; i++) if (to[i] < top[o + i]) top[o + i] = to[i];
    }
}
