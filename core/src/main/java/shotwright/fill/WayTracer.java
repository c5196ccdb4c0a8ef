package shotwright.fill;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

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

    WayTracer(MeltCells cells, LocalWalls walls, FrontMarch march, boolean[] gate) {
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
        while (!wet[c]) {
            back.add(c);
            int next = best(c, true, arrival);
            if (next == c) return List.of();
            c = next;
        }
        while (!gate[c]) {
            back.add(c);
            int next = best(c, false, arrival);
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

    /** The neighbour that filled first (dry) or has the highest pressure (wet), itself when none is better. */
    private int best(int c, boolean byArrival, double[] arrival) {
        int best = c;
        for (int s = 0; s < 6; s++) {
            int o = cells.neighbour[6 * c + s];
            if (o == MeltCells.NONE) continue;
            if (byArrival ? arrival[o] < arrival[best] : pressure[o] > pressure[best]) best = o;
        }
        return best;
    }

    /** Pieces from the gate outward. Their length is pressure over slope, so that a way across the corners of cubes is not taken for longer. */
    private List<FlowField.Slice> pieces(List<Integer> back, int start, double[] arrival) {
        List<FlowField.Slice> out = new ArrayList<>();
        double way = 0, lastSpeed = 0;
        int before = start;
        for (int k = back.size() - 1; k >= 0; k--) {
            int c = back.get(k);
            double straight = cells.centreMm(c).distance(cells.centreMm(before)), length = straight;
            if (wet[c]) {
                double mean = gate[before] ? slope[c] : (slope[c] + slope[before]) / 2;
                if (mean > 0) length = Math.min(straight, (pressure[before] - pressure[c]) / mean);
                lastSpeed = gate[before] ? speed[c] : (speed[c] + speed[before]) / 2;
            }
            way += length;
            double narrow = FrontMarch.narrow(walls.widthRatio[c]);
            out.add(new FlowField.Slice(
                    way, length, walls.wallMm[c], narrow, lastSpeed, Math.min(1, Math.max(0, arrival[c]))));
            before = c;
        }
        return out;
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
