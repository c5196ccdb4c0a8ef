package shotwright.mesh.pull;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import shotwright.mesh.Bvh;
import shotwright.mesh.Edges;
import shotwright.mesh.Shadow;
import shotwright.mesh.TriMesh;
import shotwright.progress.Progress;

/** An upright round wall whose upper edge is divided half a step off the lower one: its triangles lean, the wall they stand for does not. */
class WallBoundsTest {
    private static final int SIDES = 24;
    private static final double RADIUS = 10, HEIGHT = 4;

    private static TriMesh barrel() {
        double[] xyz = new double[3 * (2 * SIDES + 2)];
        for (int i = 0; i < SIDES; i++) {
            for (int top = 0; top < 2; top++) {
                double angle = 2 * Math.PI * (i + 0.5 * top) / SIDES;
                int v = 3 * (top * SIDES + i);
                xyz[v] = RADIUS * Math.cos(angle);
                xyz[v + 1] = RADIUS * Math.sin(angle);
                xyz[v + 2] = top * HEIGHT;
            }
        }
        xyz[3 * (2 * SIDES + 1) + 2] = HEIGHT;
        int[] tri = new int[12 * SIDES];
        for (int i = 0; i < SIDES; i++) {
            int next = (i + 1) % SIDES, low = 2 * SIDES, high = low + 1, up = SIDES + i, nextUp = SIDES + next;
            int[] four = {i, next, up, next, nextUp, up, low, next, i, high, up, nextUp};
            System.arraycopy(four, 0, tri, 12 * i, 12);
        }
        return new TriMesh(xyz, tri);
    }

    private static Columns columns(TriMesh mesh, double[] lean) {
        Shadow shadow = Shadow.of(mesh, Progress.SILENT);
        SightTolerance finest = SightTolerance.LADDER.getFirst();
        Sight[] sight =
                FacetSight.of(mesh, lean, Bvh.of(mesh), shadow, Progress.SILENT).at(finest);
        return Columns.of(mesh, Edges.of(mesh), sight, finest.leanDeg(), shadow);
    }

    @Test
    void everyCornerOfTheWallIsBoundByBothItsEdges() {
        TriMesh mesh = barrel();
        double[] lean = FacetSight.leans(mesh);
        double steepest = 0;
        for (int f = 0; f < lean.length; f++) {
            if (lean[f] > 0.5) continue;
            steepest = Math.max(steepest, lean[f]);
            lean[f] = 0;
        }
        // sagitta of a chord over the height: r (1 − cos(π/24)) / h
        assertThat(steepest)
                .isEqualTo(Math.sin(Math.atan(RADIUS * (1 - Math.cos(Math.PI / SIDES)) / HEIGHT)), within(1e-12));
        Columns columns = columns(mesh, lean);
        for (int v = 0; v < 2 * SIDES; v++) {
            int j = columns.columnOf(v);
            assertThat(columns.lower(j)).isEqualTo(0, within(1e-12));
            assertThat(columns.upper(j)).isEqualTo(HEIGHT, within(1e-12));
        }
        assertThat(columns.outerBand()).isEqualTo(new Columns.FreeBand(0, HEIGHT));
    }

    @Test
    void trianglesTakenForTheSurfaceLeaveNoLevelParting() {
        TriMesh mesh = barrel();
        Columns.FreeBand band = columns(mesh, FacetSight.leans(mesh)).outerBand();
        assertThat(band.low()).isGreaterThan(band.high());
    }
}
