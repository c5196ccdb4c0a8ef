package shotwright.fill;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;

/** Reads the nearly full cavity: the way back from the last corner to the gate, and the pressure over the projected area. */
final class WayTracer {
    private final MeltCells cells;
    private final LocalWalls walls;
    private final boolean[] gate;
    private final boolean[] wet;
    private final double[] pressure;
    private final double[] slope;
    private final double[] speed;
    private final double gatePressure;
    private final double exponent;
    private double tailFactor = 1;

    WayTracer(MeltCells cells, LocalWalls walls, FrontMarch march, boolean[] gate, double exponent) {
        this.exponent = exponent;
        this.cells = cells;
        this.walls = walls;
        this.gate = gate;
        int n = cells.count();
        wet = new boolean[n];
        pressure = new double[n];
        slope = new double[n];
        speed = new double[n];
        double top = 0;
        for (int c = 0; c < n; c++) {
            wet[c] = march.isWet(c);
            pressure[c] = march.pressureAt(c);
            slope[c] = march.slopeAt(c);
            speed[c] = march.speedAt(c);
            if (gate[c]) top = pressure[c];
        }
        gatePressure = top;
    }

    /** Highest pressure in every column of cells along the pull, averaged over the columns, against the gate. */
    double meanPressureShare() {
        Map<Integer, Double> column = new HashMap<>();
        for (int c = 0; c < wet.length; c++) column.merge(cells.column(c), pressure[c], Math::max);
        double sum = column.values().stream().mapToDouble(Double::doubleValue).sum();
        return gatePressure > 0 ? Math.clamp(sum / column.size() / gatePressure, 0, 1) : 0;
    }

    double projectedAreaMm2() {
        Map<Integer, Double> column = new HashMap<>();
        for (int c = 0; c < wet.length; c++) column.merge(cells.column(c), cells.share[c], Math::max);
        double sum = column.values().stream().mapToDouble(s -> Math.min(1, s)).sum();
        return sum * cells.cellMm * cells.cellMm;
    }

    List<FlowField.Slice> way(double[] arrival, int mostSlices) {
        List<Integer> back = new ArrayList<>();
        int c = last(arrival);
        List<Integer> tail = tail(c);
        if (tail.isEmpty()) return List.of();
        back.addAll(tail.subList(0, tail.size() - 1));
        double straight = cells.centreMm(c).distance(cells.centreMm(tail.getLast()));
        tailFactor = tail.size() > 1 ? straight / lengthMm(tail) : 1;
        c = tail.getLast();
        while (!gate[c]) {
            back.add(c);
            int next = uphill(c);
            if (next == c) break;
            c = next;
        }
        return merge(pieces(back, c, arrival), mostSlices);
    }

    private static int last(double[] arrival) {
        int last = 0;
        for (int c = 0; c < arrival.length; c++) {
            if (arrival[c] > arrival[last] || Double.isNaN(arrival[last])) last = c;
        }
        return last;
    }

    /**
     * Cells from a dry one to the wet one over which the way to the gate is shortest, both included; empty when there is none. A ragged front
     * is nearest somewhere aside, and going there first would be a detour: of the wet cells about as near as the nearest, the one with the
     * shortest way in all is taken.
     */
    private List<Integer> tail(int from) {
        double[] far = new double[wet.length];
        int[] cameFrom = new int[wet.length];
        Arrays.fill(far, Double.POSITIVE_INFINITY);
        PriorityQueue<Reach> queue = new PriorityQueue<>(Comparator.comparingDouble(Reach::farMm));
        queue.add(new Reach(from, 0));
        far[from] = 0;
        cameFrom[from] = MeltCells.NONE;
        int best = MeltCells.NONE;
        double least = Double.POSITIVE_INFINITY, limit = Double.POSITIVE_INFINITY;
        while (!queue.isEmpty() && queue.peek().farMm() <= limit) {
            Reach r = queue.remove();
            if (r.farMm() > far[r.cell()]) continue;
            if (wet[r.cell()]) {
                if (best == MeltCells.NONE && Double.isFinite(wetMm(r.cell()))) limit = 2 * (r.farMm() + cells.cellMm);
                double whole = r.farMm() + wetMm(r.cell());
                if (whole < least) {
                    least = whole;
                    best = r.cell();
                }
                continue;
            }
            for (int o : cells.around(r.cell())) {
                double d = r.farMm() + cells.centreMm(r.cell()).distance(cells.centreMm(o));
                if (d >= far[o]) continue;
                far[o] = d;
                cameFrom[o] = r.cell();
                queue.add(new Reach(o, d));
            }
        }
        List<Integer> line = new ArrayList<>();
        for (int k = best; k != MeltCells.NONE; k = cameFrom[k]) line.addFirst(k);
        return line;
    }

    private record Reach(int cell, double farMm) {}

    private double lengthMm(List<Integer> line) {
        double sum = 0;
        for (int i = 1; i < line.size(); i++)
            sum += cells.centreMm(line.get(i - 1)).distance(cells.centreMm(line.get(i)));
        return sum;
    }

    /** Way from a wet cell up the pressure to the gate, mm; infinite from a wet pocket that is cut off from it. */
    private double wetMm(int from) {
        double sum = 0;
        for (int c = from; !gate[c]; ) {
            int next = uphill(c);
            if (next == c) return Double.POSITIVE_INFINITY;
            sum += stepMm(next, c);
            c = next;
        }
        return sum;
    }

    /** From a wet cell to the next one down: pressure over slope, no more than from centre to centre. */
    private double stepMm(int before, int c) {
        double straight = cells.centreMm(c).distance(cells.centreMm(before));
        double mean = gate[before] ? slope[c] : (slope[c] + slope[before]) / 2;
        return mean > 0 ? Math.min(straight, (pressure[before] - pressure[c]) / mean) : straight;
    }

    /** The neighbour with the highest pressure, itself when none is higher. */
    private int uphill(int c) {
        int best = c;
        for (int s = 0; s < 6; s++) {
            int o = cells.neighbour[6 * c + s];
            if (o != MeltCells.NONE && pressure[o] > pressure[best]) best = o;
        }
        return best;
    }

    /** Pieces from the gate outward. Their length is pressure over slope, so that a way across the corners of cubes is not taken for longer; beyond the front it goes straight. */
    private List<FlowField.Slice> pieces(List<Integer> back, int start, double[] arrival) {
        List<FlowField.Slice> out = new ArrayList<>();
        double way = 0, lastSpeed = 0;
        int solved = 0;
        int before = start;
        for (int k = back.size() - 1; k >= 0; k--) {
            int c = back.get(k);
            boolean ontoFront = !wet[c] && wet[before];
            double straight = cells.centreMm(c).distance(cells.centreMm(before));
            double length = wet[c] ? stepMm(before, c) : ontoFront ? straight : straight * tailFactor;
            if (wet[c]) lastSpeed = gate[before] ? speed[c] : (speed[c] + speed[before]) / 2;
            way += length;
            double narrow = FrontMarch.narrow(walls.widthRatio[c]);
            out.add(new FlowField.Slice(
                    way, length, walls.wallMm[c], narrow, lastSpeed, Math.min(1, Math.max(0, arrival[c]))));
            if (wet[c] || ontoFront) solved++;
            before = c;
        }
        return toGatePressure(out, solved);
    }

    /** The pieces up to the front stretched so that their drops add up to the pressure solved at the gate (cubes leave a few per cent either way). */
    private List<FlowField.Slice> toGatePressure(List<FlowField.Slice> pieces, int solved) {
        double drop = 0;
        for (FlowField.Slice s : pieces.subList(0, solved)) drop += s.lengthMm() * slopeOf(s);
        double factor = drop > 0 ? Math.clamp(gatePressure / drop, 0.8, 1.25) : 1, way = 0;
        List<FlowField.Slice> out = new ArrayList<>();
        for (int k = 0; k < pieces.size(); k++) {
            FlowField.Slice s = pieces.get(k);
            double length = k < solved ? s.lengthMm() * factor : s.lengthMm();
            way += length;
            out.add(new FlowField.Slice(
                    way, length, s.wallMm(), s.narrowFactor(), s.speedPerFlowPerMm2(), s.arrivalShare()));
        }
        return out;
    }

    /** Slope of the flow picture (m = 1, Q = 1) that belongs to a piece's velocity. */
    private double slopeOf(FlowField.Slice s) {
        double v = s.speedPerFlowPerMm2() / s.narrowFactor(), n = exponent;
        return 2 / s.wallMm() * Math.pow((2 * n + 1) / n * 2 * v / s.wallMm(), n);
    }

    private static List<FlowField.Slice> merge(List<FlowField.Slice> pieces, int most) {
        if (pieces.size() <= most) return List.copyOf(pieces);
        List<FlowField.Slice> out = new ArrayList<>();
        for (int k = 0; k < most; k++) {
            int from = k * pieces.size() / most, to = (k + 1) * pieces.size() / most;
            out.add(mean(pieces.subList(from, to)));
        }
        return List.copyOf(out);
    }

    private static FlowField.Slice mean(List<FlowField.Slice> group) {
        double length = 0, wall = 0, narrow = 0, speed = 0, arrival = 0;
        for (FlowField.Slice s : group) {
            double w = Math.max(s.lengthMm(), 1e-9);
            length += w;
            wall += w * s.wallMm();
            narrow += w * s.narrowFactor();
            speed += w * s.speedPerFlowPerMm2();
            arrival += w * s.arrivalShare();
        }
        return new FlowField.Slice(
                group.getLast().fromGateMm(), length, wall / length, narrow / length, speed / length, arrival / length);
    }
}
