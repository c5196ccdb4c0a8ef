package shotwright.mesh;

import java.util.Arrays;
import shotwright.geom.Box3;
import shotwright.geom.Transform;
import shotwright.geom.Vec3;
import shotwright.progress.Parallel;

/**
 * A mesh seen as columns along z: for each cell of a grid the pieces of solid that a vertical line through its middle passes, lowest first.
 * Exact in z along the lines; as coarse as the cells across.
 *
 * <p>A line through an edge or a corner is counted as if it ran beside it, always on the same side, so that a closed mesh is entered as
 * often as it is left. Where bodies overlap, their pieces are joined.
 */
public final class HeightMap {
    private static final int BAND_CELLS = 1 << 17;

    private final Grid grid;
    private final int[] start;
    private final double[] ends;
    private final int unbalancedCount;

    private HeightMap(Grid grid, Band[] bands) {
        this.grid = grid;
        start = new int[grid.count() + 1];
        ends = new double[Arrays.stream(bands).mapToInt(b -> b.ends.length).sum()];
        int column = 0, kept = 0, bad = 0;
        for (Band b : bands) {
            for (int pieces : b.pieces) start[++column] = kept / 2 + pieces;
            System.arraycopy(b.ends, 0, ends, kept, b.ends.length);
            kept += b.ends.length;
            bad += b.unbalancedCount;
        }
        unbalancedCount = bad;
    }

    /**
     * Some rows of the map.
     *
     * @param pieces for each column how many pieces of solid there are up to and with it
     * @param ends lower and upper ends of the pieces
     */
    @SuppressWarnings("ArrayRecordComponent")
    private record Band(int[] pieces, double[] ends, int unbalancedCount) {}

    private static Band joined(Columns columns) {
        int[] pieces = new int[columns.count()];
        double[] joined = new double[columns.z.length];
        int kept = 0, bad = 0;
        for (int c = 0; c < pieces.length; c++) {
            int from = columns.from(c), to = columns.to(c);
            columns.sort(from, to);
            int depth = 0, first = kept;
            for (int i = from; i < to; i++) {
                int after = depth + (columns.up[i] ? -1 : 1);
                boolean opens = depth == 0 && after == 1, closes = depth == 1 && after == 0;
                if (closes && joined[kept - 1] == columns.z[i]) kept--;
                else if (opens || closes) joined[kept++] = columns.z[i];
                depth = after < 0 ? 0 : after;
                if (after < 0) bad++;
            }
            if (depth > 0) {
                bad++;
                if ((kept - first) % 2 == 1) kept--;
            }
            pieces[c] = kept / 2;
        }
        return new Band(pieces, Arrays.copyOf(joined, kept), bad);
    }

    /** The columns of a mesh over a grid; parts of the mesh outside the grid are left out. */
    public static HeightMap of(TriMesh mesh, Grid grid) {
        int rows = Math.ceilDiv(BAND_CELLS, grid.nx());
        Band[] bands = new Band[Math.ceilDiv(grid.ny(), rows)];
        Parallel.run(bands.length, () -> b -> {
            int to = Math.min(grid.ny(), (b + 1) * rows);
            bands[b] = joined(new Columns(grid, b * rows, to, mesh.xyz(), mesh.tri()));
        });
        return new HeightMap(grid, bands);
    }

    /** The columns over the whole mesh with cells of the given side. */
    public static HeightMap of(TriMesh mesh, double cell) {
        return of(mesh, Grid.around(mesh.box(), cell));
    }

    /** The columns along any unit direction, the mesh first turned as by {@link Transform#bringToZ}; so many cells on the longer side. */
    public static HeightMap along(TriMesh mesh, Vec3 direction, int cells) {
        TriMesh turned = new TriMesh(turn(mesh.xyz(), Transform.bringToZ(direction)), mesh.tri());
        Box3 box = turned.box();
        return of(turned, Grid.around(box, cells));
    }

    private static double[] turn(double[] p, Transform t) {
        double ax = t.a().x(), ay = t.a().y(), az = t.a().z();
        double bx = t.b().x(), by = t.b().y(), bz = t.b().z();
        double cx = t.c().x(), cy = t.c().y(), cz = t.c().z();
        double[] q = new double[p.length];
        for (int i = 0; i < p.length; i += 3) {
            double x = p[i], y = p[i + 1], z = p[i + 2];
            q[i] = ax * x + ay * y + az * z;
            q[i + 1] = bx * x + by * y + bz * z;
            q[i + 2] = cx * x + cy * y + cz * z;
        }
        return q;
    }

    public Grid grid() {
        return grid;
    }

    /** How many pieces of solid stand in a column: 0 beside the part, 1 where nothing is hidden. */
    public int intervalCount(int cell) {
        return start[cell + 1] - start[cell];
    }

    /** Lower end of the {@code k}-th piece from below. */
    public double low(int cell, int k) {
        return ends[2 * (start[cell] + k)];
    }

    /** Upper end of the {@code k}-th piece from below. */
    public double high(int cell, int k) {
        return ends[2 * (start[cell] + k) + 1];
    }

    /** The highest point of every column, {@code none} beside the part. */
    public float[] upper(float none) {
        float[] z = new float[grid.count()];
        for (int c = 0; c < z.length; c++) z[c] = start[c + 1] > start[c] ? (float) ends[2 * start[c + 1] - 1] : none;
        return z;
    }

    /** The lowest point of every column, {@code none} beside the part. */
    public float[] lower(float none) {
        float[] z = new float[grid.count()];
        for (int c = 0; c < z.length; c++) z[c] = start[c + 1] > start[c] ? (float) ends[2 * start[c]] : none;
        return z;
    }

    /** Columns that pass through solid. */
    public int coveredCount() {
        int n = 0;
        for (int c = 0; c < grid.count(); c++) if (start[c + 1] > start[c]) n++;
        return n;
    }

    /** The raster's estimate of the shadow: covered columns times the area of a cell. */
    public double coveredArea() {
        return coveredCount() * grid.cell() * grid.cell();
    }

    /** Columns with more than one piece of solid, as a share of the covered ones; 0 when nothing is covered. */
    public double hiddenShare() {
        int covered = coveredCount(), hidden = 0;
        for (int c = 0; c < grid.count(); c++) if (start[c + 1] - start[c] > 1) hidden++;
        return covered == 0 ? 0 : hidden / (double) covered;
    }

    /** The raster's estimate of the solid's volume. */
    public double volume() {
        double sum = 0;
        for (int i = 0; i < ends.length; i += 2) sum += ends[i + 1] - ends[i];
        return sum * grid.cell() * grid.cell();
    }

    /** The raster's estimate of the empty space between the pieces of solid of each column: what a straight pull cannot reach. */
    public double gapVolume() {
        double sum = 0;
        for (int c = 0; c < grid.count(); c++)
            for (int i = start[c] + 1; i < start[c + 1]; i++) sum += ends[2 * i] - ends[2 * i - 1];
        return sum * grid.cell() * grid.cell();
    }

    /** Columns that are left more or less often than entered: 0 for a closed mesh, but for a rare column through a corner. */
    public int unbalancedCount() {
        return unbalancedCount;
    }
}
