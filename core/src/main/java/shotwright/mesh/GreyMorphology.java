package shotwright.mesh;

import java.util.Arrays;
import java.util.BitSet;
import java.util.function.DoubleUnaryOperator;
import shotwright.progress.Parallel;

/**
 * Grey morphology on heights over a grid: what a tool of a given shape, moved about without turning, can touch. Dilation is the height of
 * the tool's tip that just rests on the surface (the tool seen from below), closing is the surface that tool leaves, opening what it
 * leaves from the other side (Serra 1982, Image Analysis and Mathematical Morphology, chapter XII). Cells without surface hold −∞ (or +∞
 * in erosion) and count for nothing; so do places beside the grid: leave a margin of the tool's radius round the surface.
 */
public final class GreyMorphology {
    /** Columns of a square's second pass taken together: memory is walked along the rows. */
    private static final int STRIP = 64;

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

        private boolean isSquare() {
            return flat && Arrays.stream(rows).allMatch(row -> row.length == rows.length);
        }
    }

    /** For each place the lowest tip height at which the tool, pointing down, does not dip below the surface. */
    public static float[] dilate(float[] z, Grid grid, Element tool) {
        check(z, grid);
        if (tool.isSquare()) return square(z, grid, tool.radiusCells);
        float[] out = filled(grid.count());
        bands(grid, (from, to) -> {
            if (tool.flat) flat(z, out, grid, tool, from, to);
            else for (int y = from; y < to; y++) shaped(z, out, grid, tool, y, 0, grid.nx());
        });
        return out;
    }

    private static float[] dilateAt(BitSet asked, float[] z, Grid grid, Element tool) {
        float[] out = filled(grid.count());
        bands(grid, (from, to) -> runs(asked, grid, from, to, (y, a, b) -> shaped(z, out, grid, tool, y, a, b)));
        return out;
    }

    private static float[] filled(int count) {
        float[] out = new float[count];
        Arrays.fill(out, Float.NEGATIVE_INFINITY);
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

    /** As {@link #close}, but worked out at the asked cells only; what the others hold means nothing. */
    public static float[] closeAt(BitSet asked, float[] z, Grid grid, Element tool) {
        check(z, grid);
        float[] tip = dilateAt(under(asked, grid, tool), z, grid, tool);
        return negated(dilateAt(asked, negated(tip), grid, tool));
    }

    /** The cells under the tool while its axis stands on one of the given. */
    private static BitSet under(BitSet axis, Grid grid, Element tool) {
        int r = tool.radiusCells, nx = grid.nx();
        BitSet under = new BitSet(grid.count());
        runs(axis, grid, 0, grid.ny(), (y, a, b) -> {
            for (int j = Math.max(0, y - r); j <= Math.min(grid.ny() - 1, y + r); j++) {
                int w = tool.rows[j - y + r].length / 2;
                under.set(grid.index(Math.max(0, a - w), j), grid.index(0, j) + Math.min(nx, b + w));
            }
        });
        return under;
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

    private static void check(float[] z, Grid grid) {
        if (z.length != grid.count())
            throw new IllegalArgumentException("heights: " + z.length + " for a grid of " + grid.count() + " cells");
    }

    private interface Run {
        /** Neighbouring cells of a row, the last column not among them. */
        void at(int row, int fromColumn, int toColumn);
    }

    private static void runs(BitSet cells, Grid grid, int fromRow, int toRow, Run run) {
        for (int y = fromRow, nx = grid.nx(); y < toRow; y++) {
            int end = (y + 1) * nx;
            for (int to, at = cells.nextSetBit(y * nx); at >= 0 && at < end; at = cells.nextSetBit(to)) {
                to = Math.min(end, cells.nextClearBit(at));
                run.at(y, at - y * nx, to - y * nx);
            }
        }
    }

    private interface Band {
        void fill(int fromRow, int toRow);
    }

    private static void bands(Grid grid, Band band) {
        int rows = Math.max(16, grid.ny() / 16), count = (grid.ny() + rows - 1) / rows;
        Parallel.run(count, () -> b -> band.fill(b * rows, Math.min(grid.ny(), (b + 1) * rows)));
    }

    private static void shaped(float[] z, float[] out, Grid grid, Element tool, int y, int from, int to) {
        int nx = grid.nx(), r = tool.radiusCells, count = to - from;
        float[] best = filled(count), shifted = new float[count], line = filled(count + 2 * r);
        int left = Math.max(0, from - r), right = Math.min(nx, to + r);
        for (int sy = Math.max(0, y - r); sy <= Math.min(grid.ny() - 1, y + r); sy++) {
            System.arraycopy(z, sy * nx + left, line, left - from + r, right - left);
            float[] above = tool.rows[sy - y + r];
            int w = above.length / 2;
            for (int dx = -w; dx <= w; dx++) raise(best, line, r + dx, count, above[dx + w], shifted);
        }
        System.arraycopy(best, 0, out, y * nx + from, count);
    }

    /** Numeric kernel: shifted to the beginning first, since the compiler makes vector code only where both arrays run from one index. */
    private static void raise(float[] best, float[] z, int from, int count, float above, float[] shifted) {
        System.arraycopy(z, from, shifted, 0, count);
        for (int i = 0; i < count; i++) best[i] = Math.max(best[i], shifted[i] - above);
    }

    /**
     * Flat tools: the highest of a window of any length is the higher of two windows whose length is a power of two. Each row makes these
     * once and hands them to the rows it reaches.
     */
    private static void flat(float[] z, float[] out, Grid grid, Element tool, int from, int to) {
        int nx = grid.nx(), r = tool.radiusCells;
        int wide = nx + 2 * r, levels = 32 - Integer.numberOfLeadingZeros(2 * r + 1);
        float[][] best = new float[to - from][], windows = new float[levels][];
        for (int y = 0; y < best.length; y++) best[y] = filled(nx);
        for (int k = 0; k < levels; k++) windows[k] = filled(wide);
        float[] shifted = new float[wide];
        for (int sy = Math.max(0, from - r); sy < Math.min(grid.ny(), to + r); sy++) {
            System.arraycopy(z, sy * nx, windows[0], r, nx);
            for (int k = 1, step = 1; k < levels; k++, step *= 2) {
                System.arraycopy(windows[k - 1], 0, windows[k], 0, wide);
                raise(windows[k], windows[k - 1], step, wide - step, 0, shifted);
            }
            for (int y = Math.max(from, sy - r); y <= Math.min(to - 1, sy + r); y++) {
                int length = tool.rows[sy - y + r].length;
                int k = 31 - Integer.numberOfLeadingZeros(length);
                int at = r - length / 2;
                raise(best[y - from], windows[k], at, nx, 0, shifted);
                raise(best[y - from], windows[k], at + length - (1 << k), nx, 0, shifted);
            }
        }
        for (int y = from; y < to; y++) System.arraycopy(best[y - from], 0, out, y * nx, nx);
    }

    /** Squares: the highest along each row, then of these along each column. */
    private static float[] square(float[] z, Grid grid, int reach) {
        int nx = grid.nx(), ny = grid.ny();
        float[] out = new float[z.length];
        bands(grid, (from, to) -> {
            float[] work = new float[nx + 2 * reach], shifted = new float[work.length];
            for (int y = from; y < to; y++) {
                Arrays.fill(work, Float.NEGATIVE_INFINITY);
                System.arraycopy(z, y * nx, work, reach, nx);
                highest(work, 1, reach, shifted);
                System.arraycopy(work, 0, out, y * nx, nx);
            }
        });
        Parallel.run((nx + STRIP - 1) / STRIP, () -> strip -> {
            int x = strip * STRIP, wide = Math.min(STRIP, nx - x);
            float[] work = filled((ny + 2 * reach) * wide);
            for (int y = 0; y < ny; y++) System.arraycopy(out, y * nx + x, work, (y + reach) * wide, wide);
            highest(work, wide, reach, new float[work.length]);
            for (int y = 0; y < ny; y++) System.arraycopy(work, y * wide, out, y * nx + x, wide);
        });
        return out;
    }

    /** Lines of so many cells: each becomes the highest of itself and the {@code 2 reach} lines after it, as far as there are so many. */
    private static void highest(float[] work, int wide, int reach, float[] shifted) {
        int window = 2 * reach + 1, length = 1;
        for (; 2 * length <= window; length *= 2)
            raise(work, work, length * wide, work.length - length * wide, 0, shifted);
        int rest = (window - length) * wide;
        raise(work, work, rest, work.length - rest, 0, shifted);
    }
}
