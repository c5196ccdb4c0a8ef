package shotwright.mesh;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * Grey morphology on heights over a grid: what a tool of a given shape, moved about without turning, can touch. Dilation is the height of
 * the tool's tip that just rests on the surface (the tool seen from below), closing is the surface that tool leaves, opening what it
 * leaves from the other side (Serra 1982, Image Analysis and Mathematical Morphology, chapter XII). Cells without surface hold −∞ (or +∞
 * in erosion) and count for nothing; so do places beside the grid: leave a margin of the tool's radius round the surface.
 */
public final class GreyMorphology {
    private GreyMorphology() {}

    /**
     * The shape of a tool's lower end: how far its surface lies above its tip at every cell of its footprint.
     *
     * @param radiusCells reach of the footprint in whole cells
     * @param rows for each row from {@code −radiusCells} up the heights above the tip, a whole number of cells to either side of the middle
     */
    public record Element(int radiusCells, float[][] rows, boolean flat) {
        public Element {
            if (rows.length != 2 * radiusCells + 1)
                throw new IllegalArgumentException("element: " + rows.length + " rows for radius " + radiusCells);
        }

        /** A round tool: {@code profile} gives the height above the tip for distances 0 … radius from its axis. */
        public static Element round(double radius, double cell, DoubleUnaryOperator profile) {
            if (!(radius >= 0) || !(cell > 0) || radius / cell > 4096)
                throw new IllegalArgumentException("element: radius " + radius + " on cells of " + cell);
            int r = (int) Math.floor(radius / cell + 1e-9);
            float[][] rows = new float[2 * r + 1][];
            boolean flat = true;
            for (int dy = -r; dy <= r; dy++) {
                int w = (int) Math.floor(Math.sqrt(Math.max(0, (radius / cell) * (radius / cell) - dy * dy)) + 1e-9);
                float[] row = new float[2 * w + 1];
                for (int dx = -w; dx <= w; dx++) {
                    row[dx + w] = (float) profile.applyAsDouble(Math.min(radius, cell * Math.hypot(dx, dy)));
                    flat &= row[dx + w] == 0;
                }
                rows[dy + r] = row;
            }
            return new Element(r, rows, flat);
        }

        /** A flat end of the given radius. */
        public static Element disc(double radius, double cell) {
            return round(radius, cell, d -> 0);
        }

        /** A ball end. */
        public static Element ball(double radius, double cell) {
            return round(radius, cell, d -> radius - Math.sqrt(Math.max(0, radius * radius - d * d)));
        }

        /** A flat square reaching so many cells to each side. */
        public static Element square(int halfCells) {
            float[][] rows = new float[2 * halfCells + 1][2 * halfCells + 1];
            return new Element(halfCells, rows, true);
        }
    }

    /** For each place the lowest tip height at which the tool, pointing down, does not dip below the surface. */
    public static float[] dilate(float[] z, Grid grid, Element tool) {
        float[] out = new float[check(z, grid)];
        Arrays.fill(out, Float.NEGATIVE_INFINITY);
        bands(grid, (from, to) -> {
            if (tool.flat) flat(z, out, grid, tool, from, to);
            else shaped(z, out, grid, tool, from, to);
        });
        return out;
    }

    /** The mirror of dilation: for each place the highest tip height at which the tool, pointing up, does not rise above the surface. */
    public static float[] erode(float[] z, Grid grid, Element tool) {
        return negated(dilate(negated(z), grid, tool));
    }

    /** The surface left by the tool working from above: narrow hollows are filled. Never below {@code z}. */
    public static float[] close(float[] z, Grid grid, Element tool) {
        return erode(dilate(z, grid, tool), grid, tool);
    }

    /** The surface left by the tool working from below: narrow ridges are cut off. Never above {@code z}. */
    public static float[] open(float[] z, Grid grid, Element tool) {
        return dilate(erode(z, grid, tool), grid, tool);
    }

    private static float[] negated(float[] z) {
        float[] n = new float[z.length];
        for (int i = 0; i < n.length; i++) n[i] = -z[i];
        return n;
    }

    private static int check(float[] z, Grid grid) {
        if (z.length != grid.count())
            throw new IllegalArgumentException("heights: " + z.length + " for a grid of " + grid.count() + " cells");
        return z.length;
    }

    private interface Band {
        void fill(int fromRow, int toRow);
    }

    private static void bands(Grid grid, Band band) {
        int rows = Math.max(16, grid.ny() / 16), count = (grid.ny() + rows - 1) / rows;
        Parallel.run(count, () -> b -> band.fill(b * rows, Math.min(grid.ny(), (b + 1) * rows)));
    }

    /** Numeric kernel: one pass over a row of cells for each cell of the footprint, in a form the compiler turns into vector code. */
    private static void shaped(float[] z, float[] out, Grid grid, Element tool, int from, int to) {
        int nx = grid.nx(), r = tool.radiusCells;
        for (int y = from; y < to; y++)
            for (int sy = Math.max(0, y - r), end = Math.min(grid.ny() - 1, y + r); sy <= end; sy++) {
                float[] row = tool.rows[sy - y + r];
                int w = row.length / 2;
                for (int dx = -w; dx <= w; dx++)
                    raise(out, y * nx + Math.max(0, -dx), z, sy * nx + Math.max(0, dx), nx - Math.abs(dx), row[dx + w]);
            }
    }

    private static void raise(float[] out, int at, float[] z, int from, int count, float above) {
        for (int i = 0; i < count; i++) out[at + i] = Math.max(out[at + i], z[from + i] - above);
    }

    /**
     * Flat tools: the highest of a window of any length is the higher of two windows whose length is a power of two. Each row makes these
     * once and hands them to the rows it reaches.
     */
    private static void flat(float[] z, float[] out, Grid grid, Element tool, int from, int to) {
        int nx = grid.nx(), r = tool.radiusCells;
        int wide = nx + 2 * r, levels = 32 - Integer.numberOfLeadingZeros(2 * r + 1);
        float[][] windows = new float[levels][wide];
        for (int sy = Math.max(0, from - r); sy < Math.min(grid.ny(), to + r); sy++) {
            Arrays.fill(windows[0], Float.NEGATIVE_INFINITY);
            System.arraycopy(z, sy * nx, windows[0], r, nx);
            for (int k = 1; k < levels; k++) pair(windows[k], windows[k - 1], 1 << (k - 1));
            for (int y = Math.max(from, sy - r); y <= Math.min(to - 1, sy + r); y++) {
                int length = tool.rows[sy - y + r].length;
                int k = 31 - Integer.numberOfLeadingZeros(length);
                int at = r - length / 2;
                raise(out, y * nx, windows[k], at, nx, 0);
                raise(out, y * nx, windows[k], at + length - (1 << k), nx, 0);
            }
        }
    }

    private static void pair(float[] twice, float[] once, int step) {
        int n = once.length - step;
        for (int i = 0; i < n; i++) twice[i] = Math.max(once[i], once[i + step]);
        System.arraycopy(once, n, twice, n, step);
    }
}
