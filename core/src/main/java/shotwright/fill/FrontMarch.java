package shotwright.fill;

import java.util.ArrayDeque;
import java.util.Arrays;
import shotwright.progress.Progress;
import shotwright.solve.ConjugateGradient;
import shotwright.solve.SymmetricMatrix;

/**
 * The melt front through the cells at constant flow, melt of one temperature, power law. In every cell the mean velocity is
 * v = F·(h/2)·n/(2n+1)·(h·G/2m)^(1/n) with wall h, pressure slope G and F the drag of narrow sides; the pressure is solved over the wet
 * cells with zero at the front, then the front takes what flows into it. m = 1 and Q = 1 here: the picture of the flow does not depend on
 * them. Source: Hele–Shaw flow (Hieber and Shen 1980) on cubes instead of a mid-surface; ZTF §3.1.
 */
final class FrontMarch {
    private static final double TOLERANCE = 1e-4;
    private static final int MOST_ITERATIONS = 4000;
    private static final double FULL = 0.999;

    private final MeltCells cells;
    private final double exponent;
    private final double advance;
    private final double[] speed;
    private final double[] mobility;
    private final double[] slope;
    private final boolean[] gate;
    private final boolean[] wet;
    private final double[] fill;
    private final int[] unknown;
    private final double reachable;
    private double[] pressure;
    private double poured;
    private double pool;

    /** Share of the volume filled when the front came to a cell. */
    final double[] arrival;

    FrontMarch(MeltCells cells, LocalWalls walls, boolean[] gate, double exponent, double advance) {
        this.cells = cells;
        this.exponent = exponent;
        this.advance = advance;
        this.gate = gate;
        int n = cells.count();
        speed = new double[n];
        mobility = new double[n];
        slope = new double[n];
        wet = gate.clone();
        fill = new double[n];
        unknown = new int[n];
        pressure = new double[n];
        arrival = new double[n];
        Arrays.fill(arrival, Double.NaN);
        for (int c = 0; c < n; c++) {
            double h = walls.wallMm[c], f = narrow(walls.widthRatio[c]);
            speed[c] = f * h / 2 * exponent / (2 * exponent + 1) * Math.pow(h / 2, 1 / exponent);
            mobility[c] = speed[c];
        }
        reachable = reachableVolume();
        for (int c = 0; c < n; c++) {
            if (!gate[c]) continue;
            arrival[c] = 0;
            fill[c] = 1;
            poured += volume(c);
        }
    }

    /** Drag of the narrow sides of a duct, F of Q = F·W·H³ΔP/(12ηL), in the short form 1 − 0.63·H/W; 0.42 for a square. */
    static double narrow(double widthRatio) {
        return Math.max(0.42, 1 - 0.63 / widthRatio);
    }

    private double volume(int c) {
        return cells.share[c] * cells.cellMm * cells.cellMm * cells.cellMm;
    }

    private double reachableVolume() {
        boolean[] seen = gate.clone();
        ArrayDeque<Integer> queue = new ArrayDeque<>();
        for (int c = 0; c < gate.length; c++) if (gate[c]) queue.add(c);
        double v = 0;
        while (!queue.isEmpty()) {
            int c = queue.remove();
            v += volume(c);
            for (int s = 0; s < 6; s++) {
                int o = cells.neighbour[6 * c + s];
                if (o == MeltCells.NONE || seen[o]) continue;
                seen[o] = true;
                queue.add(o);
            }
        }
        return v;
    }

    double reachableMm3() {
        return reachable;
    }

    double filledShare() {
        return poured / reachable;
    }

    boolean isWet(int c) {
        return wet[c];
    }

    double pressureAt(int c) {
        return pressure[c];
    }

    /** Pressure slope, in units of the flow picture. */
    double slopeAt(int c) {
        return slope[c];
    }

    /** Mean velocity over total flow, 1/mm². */
    double speedAt(int c) {
        return speed[c] * Math.pow(slope[c], 1 / exponent);
    }

    /** Goes on until a share of the reachable volume is full; the pressure then belongs to the front as it stands. */
    void fillTo(double shareFull, Progress progress) {
        boolean first = filledShare() < 0.02;
        int stuck = 0;
        while (filledShare() < shareFull && stuck < 50) {
            progress.at("following the front", Math.min(1, filledShare()));
            for (int k = first ? 5 : 1; k > 0; k--) solve();
            first = false;
            double before = poured;
            step(shareFull);
            stuck = poured - before < 1e-9 * reachable ? stuck + 1 : 0;
        }
        for (int k = 0; k < 6; k++) solve();
    }

    /** Cells the front never came to before the end get the order in which it would reach them. */
    void finish() {
        ArrayDeque<Integer> queue = new ArrayDeque<>();
        for (int c = 0; c < wet.length; c++) if (wet[c]) queue.add(c);
        while (!queue.isEmpty()) {
            int c = queue.remove();
            for (int s = 0; s < 6; s++) {
                int o = cells.neighbour[6 * c + s];
                if (o == MeltCells.NONE || !Double.isNaN(arrival[o])) continue;
                arrival[o] = Math.min(1, Math.max(filledShare(), arrival[c] + 1e-4));
                queue.add(o);
            }
        }
    }

    /** One pressure solve and one correction of the mobilities. Numeric kernel. */
    private void solve() {
        int n = 1;
        for (int c = 0; c < wet.length; c++) {
            if (wet[c]) unknown[c] = gate[c] ? 0 : n++;
        }
        SymmetricMatrix.Builder a = new SymmetricMatrix.Builder(n);
        for (int c = 0; c < wet.length; c++) {
            if (!wet[c]) continue;
            for (int s = 0; s < 6; s++) {
                int o = cells.neighbour[6 * c + s];
                if (o == MeltCells.NONE) continue;
                if (!wet[o]) {
                    mobility[o] = mobilityOf(o, slope[c]);
                    a.tieToZero(unknown[c], conductance(c, s));
                } else if (s % 2 == 1) {
                    a.link(unknown[c], unknown[o], conductance(c, s));
                }
            }
        }
        double[] b = new double[n], x = new double[n];
        b[0] = 1;
        for (int c = 0; c < wet.length; c++) if (wet[c]) x[unknown[c]] = pressure[c];
        ConjugateGradient.solve(a.build(), b, x, TOLERANCE, MOST_ITERATIONS);
        for (int c = 0; c < wet.length; c++) pressure[c] = wet[c] ? x[unknown[c]] : 0;
        correct();
    }

    private double mobilityOf(int c, double g) {
        return g > 0 ? speed[c] * Math.pow(g, 1 / exponent - 1) : speed[c];
    }

    private double conductance(int c, int side) {
        double a = mobility[c], b = mobility[cells.neighbour[6 * c + side]];
        return cells.opening[6 * c + side] * cells.cellMm * 2 * a * b / (a + b);
    }

    /**
     * Slope from the work done in a cell, then the mobility brought part of the way to what that slope asks (factor n, which settles a flow
     * that goes one way in one step).
     */
    private void correct() {
        double cube = cells.cellMm * cells.cellMm * cells.cellMm;
        for (int c = 0; c < wet.length; c++)
            if (wet[c]) slope[c] = Math.sqrt(workIn(c) / (cells.share[c] * mobility[c] * cube));
        for (int c = 0; c < wet.length; c++) {
            if (wet[c] && slope[c] > 0) mobility[c] *= Math.pow(mobilityOf(c, slope[c]) / mobility[c], exponent);
        }
    }

    /** What the pressure drops across a cell's faces do on its own side of them. */
    private double workIn(int c) {
        double work = 0;
        for (int s = 0; s < 6; s++) {
            int o = cells.neighbour[6 * c + s];
            if (o == MeltCells.NONE) continue;
            double d = pressure[c] - pressure[o];
            work += conductance(c, s) * d * d * mobility[o] / (mobility[c] + mobility[o]);
        }
        return work;
    }

    /** Moves the front by what flows into it; a cell that is over-full spills into the dry ones beyond it, the rest waits for the next step. */
    private void step(double shareFull) {
        int n = wet.length;
        double[] inflow = new double[n];
        double sum = 0, room = 0;
        for (int c = 0; c < n; c++) {
            if (wet[c]) continue;
            for (int s = 0; s < 6; s++) {
                int o = cells.neighbour[6 * c + s];
                if (o != MeltCells.NONE && wet[o]) inflow[c] += conductance(c, s) * pressure[o];
            }
            if (inflow[c] > 0) room += (1 - fill[c]) * volume(c);
            sum += inflow[c];
        }
        if (!(sum > 0)) {
            pool = 0;
            return;
        }
        double left = Math.max(0, shareFull - filledShare()) * reachable;
        double dv = Math.max(pool, Math.min(advance * room, left + pool));
        poured += dv - pool;
        pool = 0;
        ArrayDeque<Integer> overFull = new ArrayDeque<>();
        for (int c = 0; c < n; c++) {
            if (!(inflow[c] > 0)) continue;
            fill[c] += inflow[c] / sum * dv / volume(c);
            if (fill[c] >= FULL) overFull.add(c);
        }
        while (!overFull.isEmpty()) flood(overFull.remove(), overFull);
        pool = Math.max(0, pool);
    }

    private void flood(int c, ArrayDeque<Integer> overFull) {
        if (wet[c]) return;
        double excess = (fill[c] - 1) * volume(c);
        fill[c] = 1;
        wet[c] = true;
        arrival[c] = Math.min(1, filledShare());
        slope[c] = neighbourSlope(c);
        mobility[c] = mobilityOf(c, slope[c]);
        int beyond = 0;
        for (int s = 0; s < 6; s++) if (isDry(cells.neighbour[6 * c + s])) beyond++;
        if (beyond == 0 || excess <= 0) {
            pool += excess;
            return;
        }
        for (int s = 0; s < 6; s++) {
            int o = cells.neighbour[6 * c + s];
            if (!isDry(o)) continue;
            boolean before = fill[o] >= FULL;
            fill[o] += excess / beyond / volume(o);
            if (!before && fill[o] >= FULL) overFull.add(o);
        }
    }

    private boolean isDry(int c) {
        return c != MeltCells.NONE && !wet[c];
    }

    private double neighbourSlope(int c) {
        double sum = 0;
        int n = 0;
        for (int s = 0; s < 6; s++) {
            int o = cells.neighbour[6 * c + s];
            if (o == MeltCells.NONE || !wet[o] || !(slope[o] > 0)) continue;
            sum += slope[o];
            n++;
        }
        return n == 0 ? 0 : sum / n;
    }
}
