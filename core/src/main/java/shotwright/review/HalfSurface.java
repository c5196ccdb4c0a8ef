package shotwright.review;

import java.util.BitSet;
import shotwright.geom.Vec3;
import shotwright.mesh.Grid;
import shotwright.mesh.HeightMap;
import shotwright.mesh.TriMesh;

/**
 * The metal surface of one half as the cutter sees it, looking down on it: heights over a grid, higher is nearer to the spindle. Beside the
 * part, and in its through holes, it is the height at which the halves meet.
 *
 * @param grid cells, in x and y of the pulled frame
 * @param side which half
 * @param heightMm height of the metal in every cell; z of the pulled frame for B, −z for A
 */
record HalfSurface(Grid grid, Side side, float[] heightMm) {
    /** Both halves over a grid, A first. */
    static HalfSurface[] both(TriMesh mesh, RimLevels levels, Grid grid) {
        HeightMap map = HeightMap.of(mesh, grid);
        float[] a = map.upper(Float.NaN), b = map.lower(Float.NaN);
        BitSet beside = new BitSet(grid.count());
        for (int c = 0; c < a.length; c++) {
            a[c] = -a[c];
            if (Float.isNaN(b[c])) beside.set(c);
        }
        int[] nearest = null;
        for (GridPatches.Patch p : GridPatches.of(grid, beside)) {
            int first = p.cells()[0];
            double level = levels.at(grid.x(first % grid.nx()), grid.y(first / grid.nx()));
            if (Double.isNaN(level) && nearest == null) nearest = nearest(grid, beside);
            for (int c : p.cells()) {
                float z = (float) level;
                if (nearest != null && Double.isNaN(level))
                    z = nearest[c] < 0 ? (float) mesh.box().min().z() : b[nearest[c]];
                b[c] = z;
                a[c] = -z;
            }
        }
        return new HalfSurface[] {new HalfSurface(grid, Side.A, a), new HalfSurface(grid, Side.B, b)};
    }

    /** For every cell beside the part the covered cell whose offsets, handed on from neighbours, are least; −1 when none is covered. */
    private static int[] nearest(Grid grid, BitSet beside) {
        int nx = grid.nx(), ny = grid.ny();
        int[] x = new int[grid.count()], y = new int[grid.count()];
        for (int c = 0; c < x.length; c++) {
            x[c] = beside.get(c) ? -1 : c % nx;
            y[c] = c / nx;
        }
        for (int pass = 0; pass < 2; pass++) {
            int step = pass == 0 ? 1 : -1;
            for (int n = 0, j = pass == 0 ? 0 : ny - 1; n < ny; n++, j += step) {
                int row = j * nx, before = row - step * nx;
                for (int i = 0; i < nx && n > 0; i++)
                    for (int k = Math.max(0, i - 1); k <= Math.min(nx - 1, i + 1); k++)
                        take(x, y, i, j, row + i, before + k);
                for (int i = 1; i < nx; i++) take(x, y, i, j, row + i, row + i - 1);
                for (int i = nx - 2; i >= 0; i--) take(x, y, i, j, row + i, row + i + 1);
            }
        }
        int[] from = new int[x.length];
        for (int c = 0; c < from.length; c++) from[c] = x[c] < 0 ? -1 : grid.index(x[c], y[c]);
        return from;
    }

    private static void take(int[] x, int[] y, int i, int j, int cell, int neighbour) {
        if (x[neighbour] < 0) return;
        if (x[cell] >= 0 && square(i - x[neighbour], j - y[neighbour]) >= square(i - x[cell], j - y[cell])) return;
        x[cell] = x[neighbour];
        y[cell] = y[neighbour];
    }

    private static long square(long x, long y) {
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
                if ((i - i0) * (i - i0) + (j - j0) * (j - j0) <= r * r)
                    best = Math.max(best, heightMm[grid.index(i, j)]);
        return best;
    }
}
