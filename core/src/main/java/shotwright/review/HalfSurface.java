package shotwright.review;

import shotwright.geom.Vec3;
import shotwright.mesh.Grid;
import shotwright.mesh.HeightMap;
import shotwright.part.PulledPart;

/**
 * The metal surface of one half as the cutter sees it, looking down on it: heights over a grid, higher is nearer to the spindle. Beside the
 * part, and in its through holes, it is the height at which the nearest rim can be parted.
 *
 * @param grid cells, in x and y of the pulled frame
 * @param side which half
 * @param heightMm height of the metal in every cell; z of the pulled frame for B, −z for A
 * @param covered cells under the part's shadow
 */
record HalfSurface(Grid grid, Side side, float[] heightMm, java.util.BitSet covered) {
    /** Both halves, A first. */
    static HalfSurface[] both(PulledPart pulled, double cellMm, double marginMm) {
        Grid grid = Grid.around(pulled.mesh().box().grow(marginMm), cellMm);
        HeightMap map = HeightMap.of(pulled.mesh(), grid);
        float[] low = map.lower(Float.NaN), high = map.upper(Float.NaN);
        java.util.BitSet covered = new java.util.BitSet(grid.count());
        for (int c = 0; c < grid.count(); c++) if (!Float.isNaN(low[c])) covered.set(c);
        int[] nearest = nearest(grid, covered);
        float[] a = new float[grid.count()];
        for (int c = 0; c < grid.count(); c++) a[c] = covered.get(c) ? -high[c] : -low[nearest[c]];
        for (int c = 0; c < grid.count(); c++) if (!covered.get(c)) low[c] = -a[c];
        return new HalfSurface[] {
            new HalfSurface(grid, Side.A, a, covered), new HalfSurface(grid, Side.B, low, covered)
        };
    }

    /** For every cell beside the part the covered cell whose row and column offsets, handed on from neighbours, are least. */
    private static int[] nearest(Grid grid, java.util.BitSet covered) {
        int nx = grid.nx(), ny = grid.ny();
        int[] from = new int[grid.count()];
        for (int c = 0; c < from.length; c++) from[c] = covered.get(c) ? c : -1;
        for (int j = 0; j < ny; j++) {
            for (int i = 0; i < nx; i++)
                for (int k = -1; k <= 1; k++) take(grid, from, i, j, i + k, j - 1);
            for (int i = 1; i < nx; i++) take(grid, from, i, j, i - 1, j);
            for (int i = nx - 2; i >= 0; i--) take(grid, from, i, j, i + 1, j);
        }
        for (int j = ny - 1; j >= 0; j--) {
            for (int i = 0; i < nx; i++)
                for (int k = -1; k <= 1; k++) take(grid, from, i, j, i + k, j + 1);
            for (int i = 1; i < nx; i++) take(grid, from, i, j, i - 1, j);
            for (int i = nx - 2; i >= 0; i--) take(grid, from, i, j, i + 1, j);
        }
        return from;
    }

    private static void take(Grid grid, int[] from, int i, int j, int ni, int nj) {
        if (ni < 0 || nj < 0 || ni >= grid.nx() || nj >= grid.ny()) return;
        int c = grid.index(i, j), o = from[grid.index(ni, nj)];
        if (o >= 0 && (from[c] < 0 || square(grid, c, o) < square(grid, c, from[c]))) from[c] = o;
    }

    private static long square(Grid grid, int c, int o) {
        long x = c % grid.nx() - o % grid.nx(), y = c / grid.nx() - o / grid.nx();
        return x * x + y * y;
    }

    /** The place on the metal in a cell, in the pulled frame. */
    Vec3 place(int cell) {
        double z = side == Side.A ? -heightMm[cell] : heightMm[cell];
        return new Vec3(grid.x(cell % grid.nx()), grid.y(cell / grid.nx()), z);
    }

    /** Highest metal within a distance of a cell. */
    double highestNear(int cell, double distanceMm) {
        int r = (int) Math.ceil(distanceMm / grid.cell()), i0 = cell % grid.nx(), j0 = cell / grid.nx();
        float best = heightMm[cell];
        for (int j = Math.max(0, j0 - r); j <= Math.min(grid.ny() - 1, j0 + r); j++)
            for (int i = Math.max(0, i0 - r); i <= Math.min(grid.nx() - 1, i0 + r); i++)
                if ((i - i0) * (i - i0) + (j - j0) * (j - j0) <= r * r) best = Math.max(best, heightMm[grid.index(i, j)]);
        return best;
    }
}
