package shotwright.machining.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicIntegerArray;
import shotwright.geom.Vec3;
import shotwright.machining.path.Feed;
import shotwright.mesh.Grid;

/**
 * How much of a cutter's rim stands in metal: before each step the leading half of the rim, half a cell inside, is asked every two degrees at
 * places no nearer than four cells, and whatever stands higher than the tip holds it. Side milling of width a_e by a cutter of diameter D is
 * acos(1 − 2a_e/D).
 */
final class EngagementMeter {
    /** Rim points are so far apart. */
    static final int STEP_DEG = 2;

    private static final int NEAREST_CELLS = 4;

    /** Metal must stand this much above the tip to count, mm. */
    private static final double ABOVE_MM = 0.01;

    /** Short peaks, as where a cut begins, are left to the feed: only this many diameters of way above the limit are told. */
    private static final double LASTING_DIAMETERS = 0.5;

    /** A plan may be passed by so much (handbook 4.8). */
    private static final double OVER_PLAN = 1.25;

    private record Sample(int move, Vec3 at, double headingRad, double wayMm) {}

    private final double radiusMm;
    private final double cellMm;
    private final List<Sample> samples = new ArrayList<>();
    private AtomicIntegerArray counts = new AtomicIntegerArray(0);

    EngagementMeter(double radiusMm, double cellMm) {
        this.radiusMm = radiusMm - cellMm / 2;
        this.cellMm = cellMm;
    }

    /** Takes the places of a step; answers the number of the first, the last is the one before the next step's first. */
    int add(int move, Feed step) {
        int first = samples.size();
        double lengthMm = step.lengthMm();
        int n = (int) Math.max(1, Math.floor(lengthMm / (NEAREST_CELLS * cellMm)));
        for (int k = 1; k <= n; k++) {
            Vec3 at = step.at(k / (double) n), before = step.at((k - 0.01) / n);
            double headingRad = Math.atan2(at.y() - before.y(), at.x() - before.x());
            samples.add(new Sample(move, at, headingRad, lengthMm / n));
        }
        return first;
    }

    int count() {
        return samples.size();
    }

    Vec3 at(int sample) {
        return samples.get(sample).at();
    }

    /** Call when all steps are in. */
    void start() {
        counts = new AtomicIntegerArray(samples.size());
    }

    /** Adds the rim points of one place that lie in some rows. */
    void look(int sample, float[] top, Grid grid, int fromRow, int toRow) {
        Sample s = samples.get(sample);
        int held = 0;
        for (int deg = -90 + STEP_DEG / 2; deg < 90; deg += STEP_DEG) {
            double a = s.headingRad + Math.toRadians(deg);
            int i = (int) Math.round((s.at.x() + radiusMm * Math.cos(a) - grid.x(0)) / grid.cell());
            int j = (int) Math.round((s.at.y() + radiusMm * Math.sin(a) - grid.y(0)) / grid.cell());
            boolean here = j >= fromRow && j < toRow && i >= 0 && i < grid.nx();
            if (here && top[grid.index(i, j)] > s.at.z() + ABOVE_MM) held++;
        }
        if (held > 0) counts.addAndGet(sample, held);
    }

    /** Angle held at a place. */
    double heldDeg(int sample) {
        return counts.get(sample) * (double) STEP_DEG;
    }

    /** Where the cutter was held wider than planned for longer than a moment. */
    List<Fault> faults(int operation, double plannedDeg) {
        double limitDeg = OVER_PLAN * plannedDeg, overMm = 0;
        int worst = -1;
        List<Fault> faults = new ArrayList<>();
        for (int k = 0; k <= samples.size(); k++) {
            boolean over = k < samples.size() && heldDeg(k) > limitDeg;
            if (over) {
                overMm += samples.get(k).wayMm;
                if (worst < 0 || heldDeg(k) > heldDeg(worst)) worst = k;
                continue;
            }
            if (overMm > LASTING_DIAMETERS * 2 * radiusMm) {
                Sample s = samples.get(worst);
                faults.add(Fault.of(Fault.Kind.ENGAGEMENT, operation, s.move, s.at, "", heldDeg(worst), limitDeg));
            }
            overMm = 0;
            worst = -1;
        }
        return faults;
    }
}
