package shotwright.machining.contact;

import java.util.Arrays;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;
import shotwright.mesh.Grid;
import shotwright.mesh.TriMesh;
import shotwright.progress.Parallel;

/**
 * What shows of a mesh from above, on a grid: the highest point over each cell's middle and the facet it lies on. Where the mesh lies under
 * itself this is its upper envelope. For planning and judging; coordinates of a finishing path come from {@link DropCutter}.
 */
public final class TopSurface {
    private static final int BAND_ROWS = 32;

    private final Grid grid;
    private final float[] heights;
    private final int[] facets;
    private final float[] normalZ;

    private TopSurface(TriMesh mesh, Grid grid) {
        this.grid = grid;
        heights = new float[grid.count()];
        facets = new int[grid.count()];
        Arrays.fill(heights, Float.NEGATIVE_INFINITY);
        Arrays.fill(facets, -1);
        normalZ = new float[mesh.facetCount()];
        for (int f = 0; f < normalZ.length; f++) {
            Vec3 n = mesh.doubleAreaNormal(f);
            double length = n.length();
            normalZ[f] = length > 0 ? (float) (n.z() / length) : 0;
        }
        int bands = Math.ceilDiv(grid.ny(), BAND_ROWS);
        Parallel.run(bands, () -> b -> {
            int to = Math.min(grid.ny(), (b + 1) * BAND_ROWS);
            for (int f = 0; f < normalZ.length; f++) if (normalZ[f] > 0) draw(mesh, f, b * BAND_ROWS, to);
        });
    }

    /** The surface over a grid; what lies beside it is left out. */
    public static TopSurface of(TriMesh mesh, Grid grid) {
        return new TopSurface(mesh, grid);
    }

    /** The surface with cells of the given side, and room for a tool of that radius round it. */
    public static TopSurface of(TriMesh mesh, double cellMm, double marginMm) {
        Box3 box = mesh.box();
        Vec3 m = new Vec3(marginMm, marginMm, 0);
        return new TopSurface(
                mesh, Grid.around(new Box3(box.min().minus(m), box.max().plus(m)), cellMm));
    }

    public Grid grid() {
        return grid;
    }

    /** The highest point over a cell's middle, mm; −∞ beside the mesh. */
    public float heightMm(int cell) {
        return heights[cell];
    }

    /** The heights themselves; not to be altered. */
    public float[] heightsMm() {
        return heights;
    }

    /** The facet that shows, or −1 beside the mesh. */
    public int facet(int cell) {
        return facets[cell];
    }

    /** How much of the outward normal points up, 1 on a level floor; 0 beside the mesh. */
    public float normalZ(int cell) {
        return facets[cell] < 0 ? 0 : normalZ[facets[cell]];
    }

    private void draw(TriMesh mesh, int f, int fromRow, int toRow) {
        Vec3 a = mesh.cornerPoint(f, 0), b = mesh.cornerPoint(f, 1), c = mesh.cornerPoint(f, 2);
        double lowY = Math.min(a.y(), Math.min(b.y(), c.y())), highY = Math.max(a.y(), Math.max(b.y(), c.y()));
        int j0 = Math.max(fromRow, (int) Math.ceil((lowY - grid.y0()) / grid.cell() - 0.5 - 1e-9));
        int j1 = Math.min(toRow - 1, (int) Math.floor((highY - grid.y0()) / grid.cell() - 0.5 + 1e-9));
        if (j0 > j1) return;
        Vec3 n = mesh.doubleAreaNormal(f);
        double dzx = -n.x() / n.z(), dzy = -n.y() / n.z();
        double lowZ = Math.min(a.z(), Math.min(b.z(), c.z())), highZ = Math.max(a.z(), Math.max(b.z(), c.z()));
        for (int j = j0; j <= j1; j++) {
            double y = Math.clamp(grid.y(j), lowY, highY);
            double[] span = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
            cross(a, b, y, span);
            cross(b, c, y, span);
            cross(c, a, y, span);
            int i0 = Math.max(0, (int) Math.ceil((span[0] - grid.x0()) / grid.cell() - 0.5 - 1e-9));
            int i1 = Math.min(grid.nx() - 1, (int) Math.floor((span[1] - grid.x0()) / grid.cell() - 0.5 + 1e-9));
            for (int i = i0; i <= i1; i++) {
                double z = a.z() + dzx * (grid.x(i) - a.x()) + dzy * (y - a.y());
                float at = (float) Math.clamp(z, lowZ, highZ);
                int cell = grid.index(i, j);
                if (at > heights[cell]) {
                    heights[cell] = at;
                    facets[cell] = f;
                }
            }
        }
    }

    private static void cross(Vec3 p, Vec3 q, double y, double[] span) {
        if (Math.min(p.y(), q.y()) > y || Math.max(p.y(), q.y()) < y) return;
        double one = p.y() == q.y() ? p.x() : p.x() + (q.x() - p.x()) * ((y - p.y()) / (q.y() - p.y()));
        double other = p.y() == q.y() ? q.x() : one;
        span[0] = Math.min(span[0], Math.min(one, other));
        span[1] = Math.max(span[1], Math.max(one, other));
    }
}
