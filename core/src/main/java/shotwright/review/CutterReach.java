package shotwright.review;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;
import shotwright.mesh.GreyMorphology;
import shotwright.mesh.GreyMorphology.Element;
import shotwright.mesh.Grid;
import shotwright.part.PulledPart;
import shotwright.progress.Progress;

/**
 * Where in the two halves a round cutter leaves metal standing. The surface is closed with the cutter (grey closing over heights); a cell
 * where both a flat and a ball end of that size leave more than {@value #REST_MM} mm is out of its reach. The first and largest size is tried
 * everywhere, each smaller one only round the places the one before has left, on cells of a tenth of its radius.
 */
final class CutterReach {
    static final double REST_MM = 0.05;
    private static final int MOST_CELLS = 400_000;
    private static final int MOST_WINDOWS = 40;
    private static final double SHANK_MM = 3;
    /** A patch smaller than this times radius squared is the stair of a round wall (a sharp corner leaves 0.2146 of it). */
    private static final double LEAST_PATCH = 0.05;

    private final PulledPart pulled;
    private final RimLevels levels;

    CutterReach(PulledPart pulled) {
        this.pulled = pulled;
        levels = RimLevels.of(pulled);
    }

    /**
     * A place left by a cutter.
     *
     * @param side the half
     * @param pulledMm its deepest point
     * @param restMm2 its area
     * @param depthMm how far it lies below the metal round it
     * @param widthMm how wide the metal leaves it, infinite when wide
     * @param window its extent in the plane
     */
    record Spot(Side side, Vec3 pulledMm, double restMm2, double depthMm, double widthMm, Box3 window) {}

    /** What each radius leaves, in the order given (largest first); ends with the first that leaves nothing. */
    List<List<Spot>> review(double[] radiiMm, Progress progress) {
        List<List<Spot>> left = new ArrayList<>();
        List<Box3> windows = List.of(pulled.mesh().box());
        for (int k = 0; k < radiiMm.length; k++) {
            double r = radiiMm[k];
            List<Spot> spots = new ArrayList<>();
            for (int w = 0; w < windows.size(); w++) {
                progress.at("trying cutters in corners", (k + w / (double) windows.size()) / radiiMm.length);
                spots.addAll(inWindow(windows.get(w), r, k == 0));
            }
            left.add(spots);
            if (spots.isEmpty()) break;
            windows = windows(spots, r);
        }
        return left;
    }

    private List<Spot> inWindow(Box3 window, double r, boolean everywhere) {
        Box3 wide = window.grow(2 * r + 0.1);
        double area = wide.size().x() * wide.size().y();
        double fine = Math.sqrt(area / MOST_CELLS);
        Grid grid = Grid.around(wide, everywhere ? Math.max(0.05, fine) : Math.max(r / 10, fine));
        List<Spot> spots = new ArrayList<>();
        for (HalfSurface half : HalfSurface.both(pulled.mesh(), levels, grid)) {
            BitSet rest = everywhere ? restOfFlat(half, r) : rest(half, r);
            for (GridPatches.Patch p : GridPatches.of(grid, rest)) {
                if (!p.isSolid() || p.areaMm2(grid) < LEAST_PATCH * r * r) continue;
                Spot s = spot(half, p, r);
                if (everywhere || isInside(window, s.pulledMm)) spots.add(s);
            }
        }
        return spots;
    }

    private static boolean isInside(Box3 window, Vec3 p) {
        return p.x() >= window.min().x()
                && p.x() <= window.max().x()
                && p.y() >= window.min().y()
                && p.y() <= window.max().y();
    }

    private static Spot spot(HalfSurface half, GridPatches.Patch p, double r) {
        Grid grid = half.grid();
        int deepest = p.cells()[0];
        for (int c : p.cells()) if (half.heightMm()[c] < half.heightMm()[deepest]) deepest = c;
        double depth = half.highestNear(deepest, SHANK_MM) - half.heightMm()[deepest];
        int[] e = p.extent(grid);
        Box3 window = new Box3(
                new Vec3(grid.x(e[0]), grid.y(e[2]), 0).minus(new Vec3(grid.cell(), grid.cell(), 0)),
                new Vec3(grid.x(e[1]), grid.y(e[3]), 0).plus(new Vec3(grid.cell(), grid.cell(), 0)));
        return new Spot(
                half.side(), half.place(deepest), p.areaMm2(grid), depth, width(half, deepest, 2.2 * r), window);
    }

    /** Cells where a flat end leaves metal. */
    private static BitSet restOfFlat(HalfSurface half, double r) {
        Grid grid = half.grid();
        float[] z = half.heightMm();
        float[] flat = GreyMorphology.close(z, grid, Element.disc(r, grid.cell()));
        BitSet rest = new BitSet(grid.count());
        for (int c = 0; c < z.length; c++) if (flat[c] - z[c] > REST_MM) rest.set(c);
        return rest;
    }

    /** Cells where flat and ball end alike leave metal. */
    static BitSet rest(HalfSurface half, double r) {
        BitSet rest = restOfFlat(half, r);
        Grid grid = half.grid();
        float[] z = half.heightMm();
        float[] ball = GreyMorphology.closeAt(rest, z, grid, Element.ball(r, grid.cell()));
        for (int c = rest.nextSetBit(0); c >= 0; c = rest.nextSetBit(c + 1))
            if (!(ball[c] - z[c] > REST_MM)) rest.clear(c);
        return rest;
    }

    /** Windows round the spots, those that overlap put together. */
    private static List<Box3> windows(List<Spot> spots, double r) {
        List<Box3> all = new ArrayList<>();
        for (Spot s : spots) {
            Box3 mine = s.window.grow(0.2 * r);
            for (int i = all.size() - 1; i >= 0; i--) if (overlap(all.get(i), mine)) mine = mine.join(all.remove(i));
            all.add(mine);
        }
        while (all.size() > MOST_WINDOWS) all.add(0, all.removeLast().join(all.removeLast()));
        return all;
    }

    private static boolean overlap(Box3 a, Box3 b) {
        return a.min().x() <= b.max().x()
                && b.min().x() <= a.max().x()
                && a.min().y() <= b.max().y()
                && b.min().y() <= a.max().y();
    }

    /** Least distance between metal on opposite sides, over four directions; infinite when it is wider than asked. */
    private static double width(HalfSurface half, int cell, double mostMm) {
        Grid g = half.grid();
        double best = Double.POSITIVE_INFINITY;
        int[][] ways = {{1, 0}, {1, 1}, {0, 1}, {-1, 1}};
        for (int[] w : ways) {
            double step = g.cell() * Math.hypot(w[0], w[1]);
            double there = wall(half, cell, w[0], w[1], mostMm / step),
                    back = wall(half, cell, -w[0], -w[1], mostMm / step);
            best = Math.min(best, (there + back - 1) * step);
        }
        return best;
    }

    private static double wall(HalfSurface half, int cell, int di, int dj, double most) {
        Grid g = half.grid();
        int i = cell % g.nx(), j = cell / g.nx();
        for (int n = 1; n <= most; n++) {
            i += di;
            j += dj;
            if (i < 0 || j < 0 || i >= g.nx() || j >= g.ny()) break;
            if (half.heightMm()[g.index(i, j)] > half.heightMm()[cell] + 2 * REST_MM) return n;
        }
        return Double.POSITIVE_INFINITY;
    }
}
