package shotwright.layout.cavity;

import java.util.Arrays;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.layout.Half;
import shotwright.progress.Progress;

/**
 * Ways of the melt through the part, on a square grid seen along the pull. Each cell holds the height of the middle of its thickest piece of
 * plastic; a step costs its length in space, so that the way up a wall counts. Good to about 5 % plus one cell; parts with several layers
 * along the pull are seen as one.
 */
public final class FlowGrid {
    private static final int CELLS = 6000;
    private static final int[] DX = {1, 1, 0, -1, -1, -1, 0, 1, 2, 1, -1, -2, -2, -1, 1, 2};
    private static final int[] DY = {0, 1, 1, 1, 0, -1, -1, -1, 1, 2, 2, 1, -1, -2, -2, -1};

    private final double cellMm;
    private final double x0;
    private final double y0;
    private final int nx;
    private final int ny;
    private final double[] middle;
    private final double[] thick;

    private FlowGrid(double cellMm, double x0, double y0, int nx, int ny) {
        this.cellMm = cellMm;
        this.x0 = x0;
        this.y0 = y0;
        this.nx = nx;
        this.ny = ny;
        middle = new double[nx * ny];
        thick = new double[nx * ny];
    }

    /** Casts one ray per cell. */
    public static FlowGrid of(CavityShape shape, Progress progress) {
        double cell = Math.max(Math.sqrt(shape.shadow().area() / CELLS), 0.05);
        Vec2 lo = shape.shadow().min(), hi = shape.shadow().max();
        int nx = (int) Math.ceil((hi.x() - lo.x()) / cell) + 1, ny = (int) Math.ceil((hi.y() - lo.y()) / cell) + 1;
        FlowGrid g = new FlowGrid(cell, lo.x(), lo.y(), nx, ny);
        double zLow = shape.box().min().z(), span = shape.box().size().z();
        WallRay ray = new WallRay(shape.tree());
        double[] pieces = new double[16];
        for (int j = 0; j < ny; j++) {
            progress.at("measuring ways of the melt", j / (double) ny);
            for (int i = 0; i < nx; i++) {
                Vec3 from = g.centre(j * nx + i).atZ(zLow - 1);
                int n = ray.pieces(from, Vec3.Z, span + 2, pieces);
                for (int k = 0; k < n; k++) {
                    double t = pieces[2 * k + 1] - pieces[2 * k];
                    if (t > g.thick[j * nx + i]) {
                        g.thick[j * nx + i] = t;
                        g.middle[j * nx + i] = zLow - 1 + (pieces[2 * k] + pieces[2 * k + 1]) / 2;
                    }
                }
            }
        }
        return g;
    }

    public double cellMm() {
        return cellMm;
    }

    public int cells() {
        return nx * ny;
    }

    /** Height of plastic in a cell, 0 where there is none. */
    public double thicknessMm(int cell) {
        return thick[cell];
    }

    /** Height of the face that a half forms on the thickest plastic of a cell. */
    public double faceMm(int cell, Half half) {
        return middle[cell] + half.sign() * thick[cell] / 2;
    }

    public Vec2 centre(int cell) {
        return new Vec2(x0 + (cell % nx) * cellMm, y0 + (cell / nx) * cellMm);
    }

    /** The filled cell nearest to a point, searched within a few cells; −1 when there is none. */
    public int cellAt(Vec2 p) {
        int ci = (int) Math.round((p.x() - x0) / cellMm), cj = (int) Math.round((p.y() - y0) / cellMm);
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int j = Math.max(0, cj - 4); j <= Math.min(ny - 1, cj + 4); j++) {
            for (int i = Math.max(0, ci - 4); i <= Math.min(nx - 1, ci + 4); i++) {
                int c = j * nx + i;
                double d = centre(c).distance(p);
                if (thick[c] > 0 && d < least) {
                    least = d;
                    best = c;
                }
            }
        }
        return best;
    }

    /** The cell a point lies in when it holds plastic, else −1. */
    public int filledCell(double x, double y) {
        int i = (int) Math.round((x - x0) / cellMm), j = (int) Math.round((y - y0) / cellMm);
        return i < 0 || j < 0 || i >= nx || j >= ny || thick[j * nx + i] == 0 ? -1 : j * nx + i;
    }

    /** Cells with plastic whose centres lie within a radius of a cell's centre. */
    public int[] around(int cell, double radiusMm) {
        int n = (int) Math.max(0, Math.floor(radiusMm / cellMm)), ci = cell % nx, cj = cell / nx, found = 0;
        int[] out = new int[(2 * n + 1) * (2 * n + 1)];
        for (int j = Math.max(0, cj - n); j <= Math.min(ny - 1, cj + n); j++) {
            for (int i = Math.max(0, ci - n); i <= Math.min(nx - 1, ci + n); i++) {
                int c = j * nx + i;
                if (thick[c] > 0 && cellMm * Math.hypot(i - ci, j - cj) <= radiusMm) out[found++] = c;
            }
        }
        return Arrays.copyOf(out, found);
    }

    /** Way from a point to every cell; infinite for cells that cannot be reached. Numeric kernel: one loop with its own heap. */
    public double[] waysFrom(Vec2 p) {
        double[] way = new double[nx * ny];
        Arrays.fill(way, Double.POSITIVE_INFINITY);
        int start = cellAt(p);
        if (start < 0) return way;
        way[start] = 0;
        Heap heap = new Heap();
        heap.push(0, start);
        while (heap.size > 0) {
            double d = heap.key[0];
            int c = heap.pop();
            if (d > way[c]) continue;
            int ci = c % nx, cj = c / nx;
            for (int k = 0; k < DX.length; k++) {
                int i = ci + DX[k], j = cj + DY[k];
                if (i < 0 || j < 0 || i >= nx || j >= ny) continue;
                int o = j * nx + i;
                if (thick[o] == 0 || (k >= 8 && thick[(cj + DY[k] / 2) * nx + ci + DX[k] / 2] == 0)) continue;
                double flat = cellMm * Math.hypot(DX[k], DY[k]), rise = middle[o] - middle[c];
                double to = d + Math.sqrt(flat * flat + rise * rise);
                if (to < way[o]) {
                    way[o] = to;
                    heap.push(to, o);
                }
            }
        }
        return way;
    }

    /** The longest of the finite ways, mm. */
    public static double longestMm(double[] ways) {
        double most = 0;
        for (double w : ways) if (Double.isFinite(w)) most = Math.max(most, w);
        return most;
    }

    /** The cell at the end of the longest way. */
    public static int farthest(double[] ways) {
        int best = 0;
        double most = -1;
        for (int c = 0; c < ways.length; c++) {
            if (Double.isFinite(ways[c]) && ways[c] > most) {
                most = ways[c];
                best = c;
            }
        }
        return best;
    }

    private static final class Heap {
        double[] key = new double[1024];
        int[] value = new int[1024];
        int size;

        void push(double k, int v) {
            if (size == key.length) {
                key = Arrays.copyOf(key, 2 * size);
                value = Arrays.copyOf(value, 2 * size);
            }
            int i = size++;
            while (i > 0 && key[(i - 1) / 2] > k) {
                key[i] = key[(i - 1) / 2];
                value[i] = value[(i - 1) / 2];
                i = (i - 1) / 2;
            }
            key[i] = k;
            value[i] = v;
        }

        int pop() {
            int top = value[0];
            double k = key[--size];
            int v = value[size], i = 0;
            while (2 * i + 1 < size) {
                int c = 2 * i + 1;
                if (c + 1 < size && key[c + 1] < key[c]) c++;
                if (key[c] >= k) break;
                key[i] = key[c];
                value[i] = value[c];
                i = c;
            }
            key[i] = k;
            value[i] = v;
            return top;
        }
    }
}
