package shotwright.machining.proof;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import shotwright.geom.Vec3;
import shotwright.mesh.Grid;
import shotwright.progress.Parallel;
import shotwright.progress.Progress;

/**
 * What is left of the stock against the half. Distances are along the normal: the distance of the stock's point from the half's surface, since
 * plain differences of height mean nothing on a draft wall.
 */
final class HalfComparison {
    private static final int BAND_ROWS = 32;

    /** Worst places of one kind are told at most once in a square of this side, mm. */
    private static final double PLACE_MM = 2;

    /** Steeper than this, 88.9°, area is not stretched further. */
    private static final double MOST_STRETCH = 50;

    private final StockHeights stock;
    private final Half half;
    private final ProofTask task;
    private final float[] heights;
    private final float[] distance;

    HalfComparison(StockHeights stock, Half half, ProofTask task) {
        this.stock = stock;
        this.half = half;
        this.task = task;
        heights = half.heights(stock.grid());
        distance = new float[heights.length];
    }

    /** Compares every cell that is not the business of a hole or a level. */
    Leftover compare(Progress progress) {
        Grid grid = stock.grid();
        int bands = Math.ceilDiv(grid.ny(), BAND_ROWS);
        Runnable done = Parallel.steps(progress, "comparing with the half", bands);
        Parallel.run(bands, () -> b -> {
            for (int j = b * BAND_ROWS; j < Math.min(grid.ny(), (b + 1) * BAND_ROWS); j++)
                for (int i = 0; i < grid.nx(); i++) distance[grid.index(i, j)] = distanceMm(i, j);
            done.run();
        });
        return gathered();
    }

    private float distanceMm(int i, int j) {
        Grid grid = stock.grid();
        int cell = grid.index(i, j);
        float h = heights[cell], d = stock.topMm(cell) - h;
        if (h == Float.NEGATIVE_INFINITY || elsewhere(grid.x(i), grid.y(j))) return Float.NaN;
        double small = d < 0 ? task.limits().gougeMm() : 0.008;
        if (Math.abs(d) <= small) return d;
        double mm = half.distanceMm(new Vec3(grid.x(i), grid.y(j), stock.topMm(cell)), Math.abs(d));
        return (float) (d < 0 ? -mm : mm);
    }

    private boolean elsewhere(double x, double y) {
        double around = stock.grid().cell();
        for (Hole h : task.holes()) {
            double reach = h.diameterMm() / 2 + around;
            double dx = x - h.centre().x(), dy = y - h.centre().y();
            if (dx * dx + dy * dy <= reach * reach) return true;
        }
        for (Level l : task.levels())
            if (x >= l.min().x() - around
                    && x <= l.max().x() + around
                    && y >= l.min().y() - around
                    && y <= l.max().y() + around) return true;
        return false;
    }

    /** Area of the surface over a cell: that of the cell over the cosine of its slope. */
    private double areaMm2(int i, int j) {
        Grid grid = stock.grid();
        double dx = rise(grid.index(Math.max(0, i - 1), j), grid.index(Math.min(grid.nx() - 1, i + 1), j));
        double dy = rise(grid.index(i, Math.max(0, j - 1)), grid.index(i, Math.min(grid.ny() - 1, j + 1)));
        double run = 2 * grid.cell();
        double stretch = Math.sqrt(1 + (dx * dx + dy * dy) / (run * run));
        return grid.cell() * grid.cell() * Math.min(MOST_STRETCH, stretch);
    }

    private double rise(int a, int b) {
        double d = heights[b] - heights[a];
        return Double.isFinite(d) ? d : 0;
    }

    private Leftover gathered() {
        Grid grid = stock.grid();
        double[] bounds = Leftover.BOUNDS_UM, areas = new double[bounds.length + 1];
        double[] left = new double[distance.length];
        int count = 0;
        double worst = 0, deepest = 0;
        for (int j = 0; j < grid.ny(); j++) {
            for (int i = 0; i < grid.nx(); i++) {
                double d = distance[grid.index(i, j)];
                if (Double.isNaN(d)) continue;
                int bin = 0;
                while (bin < bounds.length && d * 1000 > bounds[bin]) bin++;
                areas[bin] += areaMm2(i, j);
                left[count++] = d;
                worst = Math.max(worst, d);
                deepest = Math.max(deepest, -d);
            }
        }
        List<Leftover.Bin> bins = new ArrayList<>();
        for (int b = 0; b <= bounds.length; b++)
            bins.add(new Leftover.Bin(
                    b == 0 ? Double.NEGATIVE_INFINITY : bounds[b - 1],
                    b == bounds.length ? Double.POSITIVE_INFINITY : bounds[b],
                    areas[b]));
        Arrays.sort(left, 0, count);
        double share95 = count == 0 ? 0 : left[(int) Math.min(count - 1L, Math.round(0.95 * count))];
        List<Leftover.Place> places = worst(1, task.limits().leftoverMm()).stream()
                .map(c -> new Leftover.Place(place(c), distance[c]))
                .toList();
        return new Leftover(bins, worst, share95, deepest, places);
    }

    /** Cells that were cut too deep, the worst of each place. */
    List<Integer> gouged() {
        return worst(-1, task.limits().gougeMm());
    }

    double cutIntoMm(int cell) {
        return -distance[cell];
    }

    Vec3 place(int cell) {
        Grid grid = stock.grid();
        return new Vec3(grid.x(cell % grid.nx()), grid.y(cell / grid.nx()), stock.topMm(cell));
    }

    private List<Integer> worst(int sign, double limitMm) {
        Grid grid = stock.grid();
        int side = (int) Math.max(1, Math.round(PLACE_MM / grid.cell())), across = grid.nx() / side + 1;
        Map<Integer, Integer> worst = new HashMap<>();
        for (int c = 0; c < distance.length; c++) {
            if (!(sign * distance[c] > limitMm)) continue;
            int square = c / grid.nx() / side * across + c % grid.nx() / side;
            Integer before = worst.get(square);
            if (before == null || sign * distance[c] > sign * distance[before]) worst.put(square, c);
        }
        List<Integer> cells = new ArrayList<>(worst.values());
        Collections.sort(cells);
        cells.sort(Comparator.comparingDouble((Integer c) -> -sign * distance[c]));
        return cells;
    }
}
