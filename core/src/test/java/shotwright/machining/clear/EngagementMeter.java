package shotwright.machining.clear;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.path.Feed;
import shotwright.machining.path.Move;
import shotwright.mesh.Grid;
import shotwright.region.Region;

/**
 * Measures over how much of its rim a cutter meets metal along a path at one level: the metal is a map of small cells; before each step the
 * rim is asked every two degrees, then the cutter's disc is taken away. Cells of a hundredth of the diameter, the rim half a cell inside,
 * steps of four cells: with finer steps the cutter would only meet what rounding left.
 */
public final class EngagementMeter {
    private static final double RIM_STEP_DEG = 2;
    private static final double CELL_SHARE = 0.01;
    private static final int CELLS_A_STEP = 4;

    private final Grid grid;
    private final boolean[] metal;
    private final double radiusMm;
    private final List<Sample> samples = new ArrayList<>();
    /** Places since the last sample. */
    private final List<Vec2> passed = new ArrayList<>();

    private Vec2 last = new Vec2(Double.NaN, Double.NaN);
    private double way;

    /**
     * One step.
     *
     * @param at where
     * @param lengthMm length of the step
     * @param engagementDeg angle of the rim in metal
     * @param feedMmPerMin feed of the move it ended in
     */
    public record Sample(Vec2 at, double lengthMm, double engagementDeg, double feedMmPerMin) {}

    /** A meter over some metal, for one cutter. */
    public EngagementMeter(Region metalThere, double radiusMm) {
        this.radiusMm = radiusMm;
        double cell = CELL_SHARE * 2 * radiusMm;
        Vec2 lo = metalThere.min(), hi = metalThere.max();
        grid = new Grid(
                lo.x() - cell,
                lo.y() - cell,
                cell,
                (int) Math.ceil((hi.x() - lo.x()) / cell) + 2,
                (int) Math.ceil((hi.y() - lo.y()) / cell) + 2);
        metal = new boolean[grid.count()];
        for (int j = 0; j < grid.ny(); j++)
            for (int i = 0; i < grid.nx(); i++) metal[grid.index(i, j)] = metalThere.contains(grid.x(i), grid.y(j));
    }

    /** Takes away what lies within a distance of the path of centres, without measuring. */
    public void take(Region centres) {
        Region gone = centres.offset(radiusMm);
        for (int j = 0; j < grid.ny(); j++)
            for (int i = 0; i < grid.nx(); i++)
                if (metal[grid.index(i, j)] && gone.contains(grid.x(i), grid.y(j))) metal[grid.index(i, j)] = false;
    }

    /** Follows the feed moves that end at the level; entries from above count as taken away, unmeasured. */
    public void follow(List<? extends Move> moves, double zMm) {
        for (Move m : moves) {
            if (!(m instanceof Feed f) || Math.abs(f.to().z() - zMm) > 1e-6) continue;
            boolean level = Math.abs(f.from().z() - zMm) < 1e-6;
            double length = f.lengthMm(), step = CELLS_A_STEP * grid.cell();
            int n = Math.max(1, (int) Math.ceil(length / step));
            for (int k = 0; k <= n; k++) {
                Vec3 p = f.at(k / (double) n);
                if (level) pending(p.xy(), k == 0 ? 0 : length / n, f.feedMmPerMin());
                else clear(p.xy());
            }
        }
        passed.forEach(this::clear);
        passed.clear();
    }

    private void pending(Vec2 p, double lengthMm, double feedMmPerMin) {
        way += lengthMm;
        passed.add(p);
        if (last.distance(p) < CELLS_A_STEP * grid.cell() * 0.999) return;
        samples.add(new Sample(p, way, rim(p), feedMmPerMin));
        passed.forEach(this::clear);
        passed.clear();
        last = p;
        way = 0;
    }

    private double rim(Vec2 p) {
        double r = radiusMm - grid.cell() / 2, angle = 0;
        for (double a = 0; a < 360; a += RIM_STEP_DEG) {
            double x = p.x() + r * Math.cos(Math.toRadians(a)), y = p.y() + r * Math.sin(Math.toRadians(a));
            int i = (int) Math.floor((x - grid.x0()) / grid.cell()),
                    j = (int) Math.floor((y - grid.y0()) / grid.cell());
            if (i >= 0 && j >= 0 && i < grid.nx() && j < grid.ny() && metal[grid.index(i, j)]) angle += RIM_STEP_DEG;
        }
        return angle;
    }

    private void clear(Vec2 p) {
        int j0 = Math.max(0, (int) Math.ceil((p.y() - radiusMm - grid.y0()) / grid.cell() - 0.5));
        int j1 = Math.min(grid.ny() - 1, (int) Math.floor((p.y() + radiusMm - grid.y0()) / grid.cell() - 0.5));
        for (int j = j0; j <= j1; j++) {
            double dy = grid.y(j) - p.y(), w = Math.sqrt(Math.max(0, radiusMm * radiusMm - dy * dy));
            int i0 = Math.max(0, (int) Math.ceil((p.x() - w - grid.x0()) / grid.cell() - 0.5));
            int i1 = Math.min(grid.nx() - 1, (int) Math.floor((p.x() + w - grid.x0()) / grid.cell() - 0.5));
            if (i1 >= i0) Arrays.fill(metal, grid.index(i0, j), grid.index(i1, j) + 1, false);
        }
    }

    public List<Sample> samples() {
        return List.copyOf(samples);
    }

    /** The engagement not exceeded over a share of the way. */
    public double quantileDeg(double share) {
        return quantileDeg(share, s -> true);
    }

    /** The engagement not exceeded over a share of the way that some samples make. */
    public double quantileDeg(double share, Predicate<Sample> of) {
        List<Sample> sorted = samples.stream()
                .filter(of)
                .sorted(Comparator.comparingDouble(Sample::engagementDeg))
                .toList();
        double whole = sorted.stream().mapToDouble(Sample::lengthMm).sum(), run = 0;
        for (Sample s : sorted) {
            run += s.lengthMm();
            if (run >= share * whole) return s.engagementDeg();
        }
        return 0;
    }

    /** Metal still there, mm². */
    public double leftMm2() {
        int n = 0;
        for (boolean m : metal) if (m) n++;
        return n * grid.cell() * grid.cell();
    }
}
