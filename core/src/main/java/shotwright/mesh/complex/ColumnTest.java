package shotwright.mesh.complex;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * The independent check of a complex: columns along z are shot through it, one at a random place in each cell of a raster, and in every column
 * the materials must follow one another: what a facet claims to have below it must be what the facet before has above it, from the world in to
 * the world out. Closed solids and volumes that add up come by construction even for nonsense; this does not.
 *
 * @param columns columns that met anything
 * @param bad columns in which the cells do not follow one another
 * @param underPart columns that pass through a part
 * @param lockedA of those, columns in which half A is not one piece of metal
 * @param lockedB the same of half B
 * @param hidden of those, columns in which the part is not one piece
 */
public record ColumnTest(int columns, int bad, int underPart, int lockedA, int lockedB, int hidden) {
    /** Columns a side of the raster in the usual test. */
    public static final int SIDE = 400;

    private static final long SEED = 20250117;

    public double lockShareA() {
        return underPart == 0 ? 0 : (double) lockedA / underPart;
    }

    public double lockShareB() {
        return underPart == 0 ? 0 : (double) lockedB / underPart;
    }

    /** Share of the columns under the part that pass through it more than once. */
    public double hiddenShare() {
        return underPart == 0 ? 0 : (double) hidden / underPart;
    }

    public double badShare() {
        return columns == 0 ? 0 : (double) bad / columns;
    }

    /** Shoots {@code side × side} columns through the box around the facets that bound a part. */
    public static ColumnTest overParts(Complex c, int side) {
        return new Columns(c, side, true).run();
    }

    /** Shoots {@code side × side} columns through everything. */
    public static ColumnTest overAll(Complex c, int side) {
        return new Columns(c, side, false).run();
    }

    private static final class Columns {
        private final Complex c;
        private final int side;
        private final double x0;
        private final double y0;
        private final double dx;
        private final double dy;
        private final double[] x;
        private final double[] y;
        private int[] column = new int[1 << 16];
        private int[] facet = new int[1 << 16];
        private double[] height = new double[1 << 16];
        private int hits;

        Columns(Complex complex, int side, boolean parts) {
            this.c = complex;
            this.side = side;
            double[] box = {1e300, 1e300, -1e300, -1e300};
            for (int f = 0; f < c.facetCount(); f++) {
                if (parts && c.material(c.behind(f)) != Material.PART && c.material(c.front(f)) != Material.PART)
                    continue;
                for (int k = 0; k < 3; k++) {
                    int v = c.corner(f, k);
                    box[0] = Math.min(box[0], c.x(v));
                    box[1] = Math.min(box[1], c.y(v));
                    box[2] = Math.max(box[2], c.x(v));
                    box[3] = Math.max(box[3], c.y(v));
                }
            }
            x0 = box[0];
            y0 = box[1];
            dx = Math.max(0, box[2] - box[0]) / side;
            dy = Math.max(0, box[3] - box[1]) / side;
            x = new double[side * side];
            y = new double[side * side];
            SplittableRandom random = new SplittableRandom(SEED);
            for (int i = 0; i < x.length; i++) {
                x[i] = x0 + (i % side + random.nextDouble()) * dx;
                y[i] = y0 + (i / side + random.nextDouble()) * dy;
            }
        }

        ColumnTest run() {
            for (int f = 0; f < c.facetCount(); f++) shoot(f);
            int[] order = sorted();
            int[] tally = new int[6];
            for (int i = 0; i < hits; ) {
                int j = i;
                while (j < hits && column[order[j]] == column[order[i]]) j++;
                judge(order, i, j, tally);
                i = j;
            }
            return new ColumnTest(tally[0], tally[1], tally[2], tally[3], tally[4], tally[5]);
        }

        private void shoot(int f) {
            int a = c.corner(f, 0), b = c.corner(f, 1), d = c.corner(f, 2);
            double lx = Math.min(c.x(a), Math.min(c.x(b), c.x(d))), hx = Math.max(c.x(a), Math.max(c.x(b), c.x(d)));
            double ly = Math.min(c.y(a), Math.min(c.y(b), c.y(d))), hy = Math.max(c.y(a), Math.max(c.y(b), c.y(d)));
            int i0 = (int) Math.max(0, Math.floor((lx - x0) / dx)), j0 = (int) Math.max(0, Math.floor((ly - y0) / dy));
            int i1 = (int) Math.min(side - 1, Math.floor((hx - x0) / dx)),
                    j1 = (int) Math.min(side - 1, Math.floor((hy - y0) / dy));
            for (int j = j0; j <= j1; j++) {
                for (int i = i0; i <= i1; i++) {
                    int k = j * side + i;
                    boolean ab = left(a, b, k), bd = left(b, d, k), da = left(d, a, k);
                    if (ab == bd && bd == da) hit(k, f, heightAt(a, b, d, k));
                }
            }
        }

        /** On which side of an edge a column passes; the same answer for both facets of the edge, so that no column slips between. */
        private boolean left(int a, int b, int k) {
            int p = Math.min(a, b), q = Math.max(a, b);
            double cross = (c.x(q) - c.x(p)) * (y[k] - c.y(p)) - (c.y(q) - c.y(p)) * (x[k] - c.x(p));
            return (a < b) == (cross > 0);
        }

        private double heightAt(int a, int b, int d, int k) {
            double ux = c.x(b) - c.x(a), uy = c.y(b) - c.y(a), vx = c.x(d) - c.x(a), vy = c.y(d) - c.y(a);
            double px = x[k] - c.x(a), py = y[k] - c.y(a), det = ux * vy - uy * vx;
            double s = Math.clamp((px * vy - py * vx) / det, 0, 1), t = Math.clamp((ux * py - uy * px) / det, 0, 1);
            return c.z(a) + s * (c.z(b) - c.z(a)) + t * (c.z(d) - c.z(a));
        }

        private void hit(int k, int f, double z) {
            if (hits == column.length) {
                column = Arrays.copyOf(column, 2 * hits);
                facet = Arrays.copyOf(facet, 2 * hits);
                height = Arrays.copyOf(height, 2 * hits);
            }
            column[hits] = k;
            facet[hits] = f;
            height[hits++] = z;
        }

        /** Hits by column (counting sort), within a column by height. */
        private int[] sorted() {
            int[] start = new int[side * side + 1];
            for (int h = 0; h < hits; h++) start[column[h] + 1]++;
            for (int k = 0; k < side * side; k++) start[k + 1] += start[k];
            int[] order = new int[hits], next = start.clone();
            for (int h = 0; h < hits; h++) order[next[column[h]]++] = h;
            for (int k = 0; k < side * side; k++) {
                for (int i = start[k] + 1; i < start[k + 1]; i++) {
                    int moved = order[i], j = i;
                    for (; j > start[k] && height[order[j - 1]] > height[moved]; j--) order[j] = order[j - 1];
                    order[j] = moved;
                }
            }
            return order;
        }

        private void judge(int[] order, int from, int to, int[] tally) {
            int cell = Complex.WORLD, runsA = 0, runsB = 0, runsPart = 0;
            boolean follows = true;
            for (int i = from; i < to; i++) {
                int f = facet[order[i]];
                boolean up = c.doubleAreaNormal(f).z() > 0;
                int below = up ? c.behind(f) : c.front(f), above = up ? c.front(f) : c.behind(f);
                follows &= below == cell;
                Material was = c.material(below), is = c.material(above);
                if (was != is && is == Material.A) runsA++;
                if (was != is && is == Material.B) runsB++;
                if (was != is && is == Material.PART) runsPart++;
                cell = above;
            }
            tally[0]++;
            if (!follows || cell != Complex.WORLD) tally[1]++;
            if (runsPart == 0) return;
            tally[2]++;
            if (runsA != 1) tally[3]++;
            if (runsB != 1) tally[4]++;
            if (runsPart > 1) tally[5]++;
        }
    }
}
