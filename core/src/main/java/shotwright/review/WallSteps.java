package shotwright.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import shotwright.geom.Vec3;
import shotwright.mesh.WallThickness;

/** Where thick walls meet thin ones: middles of the largest balls in neighbouring cells of space. */
final class WallSteps {
    private static final int LEAST_SAMPLES = 5;
    private static final int[][] NEIGHBOURS = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};

    /** Two neighbouring cells. */
    record Pair(Vec3 place, double thickMm, double thinMm) {}

    private record Cell(int i, int j, int k) {}

    private record Middle(double ballMm, Vec3 place) {}

    private final Map<Cell, Middle> middles = new HashMap<>();
    private final double sideMm;

    private WallSteps(double sideMm) {
        this.sideMm = sideMm;
    }

    static WallSteps of(WallThickness samples, int[] which, double sideMm) {
        WallSteps steps = new WallSteps(sideMm);
        Map<Cell, List<Integer>> cells = new HashMap<>();
        for (int i : which) {
            Vec3 p = samples.point(i);
            cells.computeIfAbsent(steps.cell(p), c -> new ArrayList<>()).add(i);
        }
        cells.forEach((c, list) -> {
            if (list.size() < LEAST_SAMPLES) return;
            double[] balls = list.stream().mapToDouble(samples::sphere).sorted().toArray();
            Vec3 sum = Vec3.ZERO;
            for (int i : list) sum = sum.plus(samples.point(i));
            steps.middles.put(c, new Middle(balls[balls.length / 2], sum.times(1.0 / list.size())));
        });
        return steps;
    }

    private Cell cell(Vec3 p) {
        return new Cell(
                (int) Math.floor(p.x() / sideMm), (int) Math.floor(p.y() / sideMm), (int) Math.floor(p.z() / sideMm));
    }

    /** The worst pairs above a ratio, worst first, no two nearer than three cells. */
    List<Pair> worst(double limitRatio, int most) {
        List<Pair> pairs = new ArrayList<>();
        middles.forEach((c, m) -> Arrays.stream(NEIGHBOURS).forEach(d -> {
            Middle o = middles.get(new Cell(c.i + d[0], c.j + d[1], c.k + d[2]));
            if (o == null) return;
            double thick = Math.max(m.ballMm, o.ballMm), thin = Math.min(m.ballMm, o.ballMm);
            if (thick > limitRatio * thin) pairs.add(new Pair(m.place.toward(o.place, 0.5), thick, thin));
        }));
        pairs.sort(Comparator.comparingDouble((Pair p) -> -p.thickMm / p.thinMm)
                .thenComparingDouble(p -> p.place.x())
                .thenComparingDouble(p -> p.place.y()));
        List<Pair> kept = new ArrayList<>();
        for (Pair p : pairs) {
            if (kept.size() == most) break;
            if (kept.stream().noneMatch(k -> k.place.distance(p.place) < 3 * sideMm)) kept.add(p);
        }
        return kept;
    }
}
