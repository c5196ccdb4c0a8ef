package shotwright.machining.contact;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import shotwright.cutter.MountedCutter;
import shotwright.geom.Vec2;
import shotwright.mesh.Grid;
import shotwright.progress.Progress;

/**
 * How much of a surface one cutter finishes.
 *
 * @param cutter the cutter as mounted
 * @param kinds for each kind of surface there is, what was reached of it
 */
public record Reach(MountedCutter cutter, Map<SurfaceKind, Part> kinds) {
    /**
     * One kind of surface.
     *
     * @param areaMm2 its area
     * @param reachedMm2 where no more than the tolerance is left, along the normal
     * @param deepestMm the most that is left anywhere, along the normal
     * @param deepest where that is, or null when nothing is left
     */
    public record Part(
            double areaMm2,
            double reachedMm2,
            double deepestMm,
            @Nullable Vec2 deepest) {
        /** Reached share of the area. */
        public double share() {
            return areaMm2 > 0 ? reachedMm2 / areaMm2 : 1;
        }

        private Part with(Part o) {
            boolean deeper = o.deepestMm > deepestMm;
            return new Part(
                    areaMm2 + o.areaMm2,
                    reachedMm2 + o.reachedMm2,
                    deeper ? o.deepestMm : deepestMm,
                    deeper ? o.deepest : deepest);
        }
    }

    public Reach {
        kinds = Map.copyOf(kinds);
    }

    /** One kind of surface; without area when there is none of it. */
    public Part part(SurfaceKind kind) {
        return kinds.getOrDefault(kind, new Part(0, 0, 0, null));
    }

    /** All kinds but the parting face together. */
    public Part below() {
        Part sum = new Part(0, 0, 0, null);
        for (var k : kinds.entrySet()) if (k.getKey() != SurfaceKind.FACE) sum = sum.with(k.getValue());
        return sum;
    }

    /** One row for each cutter, in the order given. */
    public static List<Reach> table(
            TopSurface surface, List<MountedCutter> cutters, double toleranceMm, Progress progress) {
        List<Reach> rows = new ArrayList<>();
        for (MountedCutter c : cutters) {
            progress.at("asking what " + c.cutter().name() + " reaches", rows.size() / (double) cutters.size());
            rows.add(of(surface, c, toleranceMm));
        }
        return List.copyOf(rows);
    }

    /** What one cutter reaches; the surface's grid needs a margin of the cutter's radius. */
    public static Reach of(TopSurface surface, MountedCutter cutter, double toleranceMm) {
        float[] leftover = LocationMap.of(surface, cutter).leftoverMm();
        Grid grid = surface.grid();
        float top = Float.NEGATIVE_INFINITY;
        for (int i = 0; i < grid.count(); i++) top = Math.max(top, surface.heightMm(i));
        Map<SurfaceKind, Sum> sums = new EnumMap<>(SurfaceKind.class);
        for (int i = 0; i < leftover.length; i++) {
            if (surface.facet(i) < 0) continue;
            SurfaceKind kind = SurfaceKind.of(surface.normalZ(i), top - surface.heightMm(i));
            sums.computeIfAbsent(kind, k -> new Sum())
                    .add(i, grid.cell() * grid.cell() / surface.normalZ(i), leftover[i], toleranceMm);
        }
        Map<SurfaceKind, Part> kinds = new EnumMap<>(SurfaceKind.class);
        sums.forEach((kind, sum) -> kinds.put(kind, sum.part(grid)));
        return new Reach(cutter, kinds);
    }

    private static final class Sum {
        private double area, reached, deepest;
        private int at = -1;

        void add(int cell, double areaMm2, double leftMm, double toleranceMm) {
            area += areaMm2;
            if (leftMm <= toleranceMm) reached += areaMm2;
            if (leftMm > deepest) {
                deepest = leftMm;
                at = cell;
            }
        }

        Part part(Grid grid) {
            return new Part(
                    area, reached, deepest, at < 0 ? null : new Vec2(grid.x(at % grid.nx()), grid.y(at / grid.nx())));
        }
    }
}
