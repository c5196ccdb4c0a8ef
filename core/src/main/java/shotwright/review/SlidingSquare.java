package shotwright.review;

import shotwright.mesh.Grid;

/**
 * Grey opening and closing with a flat square, row by row and then column by column: the highest (or lowest) of a window of any length is
 * that of two windows whose length is a power of two.
 */
final class SlidingSquare {
    private SlidingSquare() {}

    /**
     * What a square of {@code 2 reach + 1} cells leaves when it slides on the surface: from below, cutting off what stands out (opening), or
     * from above, filling what is sunk (closing). Cells beside the surface hold +∞ for opening and −∞ for closing.
     */
    static float[] slide(float[] z, Grid grid, int reach, boolean opening) {
        float sign = opening ? -1 : 1;
        float[] a = new float[z.length];
        for (int i = 0; i < z.length; i++) a[i] = sign * z[i];
        highest(a, grid, reach);
        for (int i = 0; i < a.length; i++) a[i] = -a[i];
        highest(a, grid, reach);
        for (int i = 0; i < a.length; i++) a[i] = -sign * a[i];
        return a;
    }

    private static void highest(float[] z, Grid grid, int reach) {
        int nx = grid.nx(), ny = grid.ny();
        float[] work = new float[Math.max(nx, ny) + 2 * reach];
        for (int j = 0; j < ny; j++) line(z, j * nx, 1, nx, reach, work);
        for (int i = 0; i < nx; i++) line(z, i, nx, ny, reach, work);
    }

    private static void line(float[] z, int from, int step, int count, int reach, float[] work) {
        int n = count + 2 * reach, window = 2 * reach + 1;
        java.util.Arrays.fill(work, 0, n, Float.NEGATIVE_INFINITY);
        for (int i = 0; i < count; i++) work[reach + i] = z[from + i * step];
        int length = 1;
        for (; 2 * length <= window; length *= 2)
            for (int i = 0; i + length < n; i++) work[i] = Math.max(work[i], work[i + length]);
        for (int i = 0; i < count; i++) z[from + i * step] = Math.max(work[i], work[i + window - length]);
    }
}
