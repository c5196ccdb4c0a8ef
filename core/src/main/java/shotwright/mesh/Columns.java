package shotwright.mesh;

import java.util.Arrays;

/**
 * Where the facets of a mesh cross the vertical lines of some rows of a grid. Each facet visits the cells under it; one pass counts, the
 * second fills.
 * Facets sharing an edge decide by the same number on which side of it a line runs, so no line is lost between them or counted twice.
 */
final class Columns {
    /** Crossings of all columns, one column after the other. */
    double[] z = new double[0];
    /** The facet crossed looks up. */
    boolean[] up = new boolean[0];

    private final int[] end;
    private final Grid grid;
    private final int fromRow, toRow;
    private final double[] xyz;
    private final int[] tri;

    Columns(Grid grid, int fromRow, int toRow, double[] xyz, int[] tri) {
        this.grid = grid;
        this.fromRow = fromRow;
        this.toRow = toRow;
        this.xyz = xyz;
        this.tri = tri;
        end = new int[(toRow - fromRow) * grid.nx()];
        int[] cells = new int[2 * end.length];
        double[] heights = new double[cells.length];
        int n = 0;
        byte[] looksUp = new byte[cells.length];
        Scan scan = new Scan();
        for (int f = 0; f < tri.length; f += 3) {
            scan.facet(f);
            if (n + scan.count > cells.length) {
                int more = Math.max(2 * cells.length, n + scan.count);
                cells = Arrays.copyOf(cells, more);
                heights = Arrays.copyOf(heights, more);
                looksUp = Arrays.copyOf(looksUp, more);
            }
            System.arraycopy(scan.cells, 0, cells, n, scan.count);
            System.arraycopy(scan.heights, 0, heights, n, scan.count);
            Arrays.fill(looksUp, n, n + scan.count, (byte) (scan.up ? 1 : 0));
            n += scan.count;
        }
        fill(n, cells, heights, looksUp);
    }

    private void fill(int n, int[] cells, double[] heights, byte[] looksUp) {
        for (int i = 0; i < n; i++) end[cells[i]]++;
        int sum = 0;
        for (int c = 0; c < end.length; c++) {
            int k = end[c];
            end[c] = sum;
            sum += k;
        }
        z = new double[n];
        up = new boolean[n];
        for (int i = 0; i < n; i++) {
            int at = end[cells[i]]++;
            z[at] = heights[i];
            up[at] = looksUp[i] == 1;
        }
    }

    /** Columns of these rows; they are numbered from 0. */
    int count() {
        return end.length;
    }

    int from(int column) {
        return column == 0 ? 0 : end[column - 1];
    }

    int to(int column) {
        return end[column];
    }

    /** Lowest first; at one height entering before leaving, so that a knife edge is entered before it is left. */
    void sort(int from, int to) {
        for (int i = from + 1; i < to; i++) {
            double h = z[i];
            boolean u = up[i];
            int j = i - 1;
            while (j >= from && (z[j] > h || (z[j] == h && up[j] && !u))) {
                z[j + 1] = z[j];
                up[j + 1] = up[j];
                j--;
            }
            z[j + 1] = h;
            up[j + 1] = u;
        }
    }

    /** The cells under one facet. */
    private final class Scan {
        private int[] cells = new int[64];
        private double[] heights = new double[64];
        private int count;
        private boolean up;
        private double ax, ay, az, bx, by, bz, cx, cy, cz;
        private double left, right;

        void facet(int f) {
            count = 0;
            int a = 3 * tri[f], b = 3 * tri[f + 1], c = 3 * tri[f + 2];
            ax = xyz[a];
            ay = xyz[a + 1];
            az = xyz[a + 2];
            bx = xyz[b];
            by = xyz[b + 1];
            bz = xyz[b + 2];
            cx = xyz[c];
            cy = xyz[c + 1];
            cz = xyz[c + 2];
            double h = grid.cell();
            int i0 = firstCell(Math.min(ax, Math.min(bx, cx)) - grid.x0(), h);
            int i1 = Math.min(grid.nx() - 1, lastCell(Math.max(ax, Math.max(bx, cx)) - grid.x0(), h));
            int j0 = Math.max(fromRow, firstCell(Math.min(ay, Math.min(by, cy)) - grid.y0(), h));
            int j1 = Math.min(toRow - 1, lastCell(Math.max(ay, Math.max(by, cy)) - grid.y0(), h));
            if (i0 > i1 || j0 > j1) return;
            double det = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
            boolean narrow = i1 - i0 < 4;
            for (int j = j0; j <= j1; j++) {
                double y = grid.y(j);
                int from = i0, to = i1;
                if (!narrow) {
                    span(y);
                    from = Math.max(i0, firstCell(left - grid.x0(), h) - 1);
                    to = Math.min(i1, lastCell(right - grid.x0(), h) + 1);
                }
                for (int i = from; i <= to; i++) visit(grid.x(i), y, grid.index(i, j - fromRow), det);
            }
        }

        private static int firstCell(double offset, double h) {
            return (int) Math.max(0, Math.ceil(offset / h - 0.5));
        }

        private static int lastCell(double offset, double h) {
            return (int) Math.floor(offset / h - 0.5);
        }

        /** Where a row passes the facet, to rounding. */
        private void span(double y) {
            left = Double.POSITIVE_INFINITY;
            right = Double.NEGATIVE_INFINITY;
            cross(y, ax, ay, bx, by);
            cross(y, bx, by, cx, cy);
            cross(y, cx, cy, ax, ay);
        }

        private void cross(double y, double px, double py, double qx, double qy) {
            if (Math.min(py, qy) > y || Math.max(py, qy) < y) return;
            double x = py == qy ? px : px + (qx - px) * ((y - py) / (qy - py));
            double other = py == qy ? qx : x;
            left = Math.min(left, Math.min(x, other));
            right = Math.max(right, Math.max(x, other));
        }

        private void visit(double x, double y, int cell, double det) {
            boolean ab = leftOf(ax, ay, bx, by, x, y);
            if (leftOf(bx, by, cx, cy, x, y) != ab || leftOf(cx, cy, ax, ay, x, y) != ab) return;
            double zLow = Math.min(az, Math.min(bz, cz)), zHigh = Math.max(az, Math.max(bz, cz));
            double s = ((x - ax) * (cy - ay) - (y - ay) * (cx - ax)) / det;
            double t = ((bx - ax) * (y - ay) - (by - ay) * (x - ax)) / det;
            double at = az + s * (bz - az) + t * (cz - az);
            at = at >= zLow ? Math.min(at, zHigh) : zLow;
            up = ab;
            if (count == cells.length) {
                cells = Arrays.copyOf(cells, 2 * count);
                heights = Arrays.copyOf(heights, 2 * count);
            }
            cells[count] = cell;
            heights[count++] = at;
        }

        /** On which side of an edge the line runs; seen from both ends of the edge the same number decides. */
        private static boolean leftOf(double px, double py, double qx, double qy, double x, double y) {
            boolean turned = px > qx || (px == qx && py > qy);
            double e =
                    turned ? (px - qx) * (y - qy) - (py - qy) * (x - qx) : (qx - px) * (y - py) - (qy - py) * (x - px);
            if (e != 0) return e > 0 != turned;
            // as if the line stood a little to the right and still less farther up
            return qy != py ? qy < py : qx > px;
        }
    }
}
