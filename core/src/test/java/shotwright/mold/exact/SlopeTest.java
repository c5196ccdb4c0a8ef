package shotwright.mold.exact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;
import shotwright.mesh.TriMesh;

/** Surfaces over the square 0 to 10 by 0 to 10 mm, in 20 by 20 cells, against their closed forms. */
class SlopeTest {
    private static final int CELLS = 20;
    private static final double SIDE_MM = 10;

    private static Slope over(DoubleBinaryOperator height, Rim rim) {
        List<Vec3> corners = new ArrayList<>();
        for (int i = 0; i <= CELLS; i++)
            for (int k = 0; k <= CELLS; k++) {
                double x = SIDE_MM * i / CELLS, y = SIDE_MM * k / CELLS;
                corners.add(new Vec3(x, y, height.applyAsDouble(x, y)));
            }
        List<int[]> facets = new ArrayList<>();
        for (int i = 0; i < CELLS; i++)
            for (int k = 0; k < CELLS; k++) {
                int a = i * (CELLS + 1) + k, b = a + CELLS + 1;
                facets.add(new int[] {a, b, b + 1});
                facets.add(new int[] {a, b + 1, a + 1});
            }
        Map<Slope.Side, Rim> border = new HashMap<>();
        for (int i = 0; i < CELLS; i++) {
            int far = CELLS * (CELLS + 1);
            border.put(new Slope.Side(i * (CELLS + 1), (i + 1) * (CELLS + 1)), rim);
            border.put(new Slope.Side((i + 1) * (CELLS + 1) + CELLS, i * (CELLS + 1) + CELLS), rim);
            border.put(new Slope.Side(i + 1, i), rim);
            border.put(new Slope.Side(far + i, far + i + 1), rim);
        }
        return new Slope(corners, facets, border);
    }

    private static double area(List<Vec3> corners, List<int[]> facets) {
        return facets.stream()
                .mapToDouble(f -> corners.get(f[1])
                                .minus(corners.get(f[0]))
                                .cross(corners.get(f[2]).minus(corners.get(f[0])))
                                .length()
                        / 2)
                .sum();
    }

    @Test
    void flatSlopeKeepsItsAreaWithFewTriangles() {
        Slope s = over((x, y) -> 0.3 * x, Rim.PART).thinned(c -> 0.01);
        assertThat(s.facets()).hasSizeLessThan(12);
        assertThat(area(s.corners(), s.facets())).isCloseTo(100 * Math.sqrt(1 + 0.09), within(1e-9));
    }

    @Test
    void curvedSlopeStaysNear() {
        Slope s = over((x, y) -> 0.02 * x * x, Rim.PART).thinned(c -> 0.01);
        assertThat(s.facets()).hasSizeLessThan(2 * CELLS * CELLS / 2);
        for (Vec3 c : used(s)) assertThat(c.z()).isEqualTo(0.02 * c.x() * c.x());
        // arc length of z = 0.02 x² from 0 to 10, times 10: u = 0.04 x
        double u = 0.4, arc = (u * Math.sqrt(1 + u * u) + Math.log(u + Math.sqrt(1 + u * u))) / (2 * 0.04);
        assertThat(area(s.corners(), s.facets())).isCloseTo(10 * arc, within(0.05));
    }

    private static List<Vec3> used(Slope s) {
        return s.facets().stream()
                .flatMap(f -> IntStream.of(f).mapToObj(s.corners()::get))
                .toList();
    }

    /** A plane through a box of plastic ends a little inside it on all four sides, and out of the block where it runs to its sides. */
    @Test
    void reachesIntoPlasticAndOutOfTheBlock() {
        TriMesh frame = ring(new Box3(new Vec3(-2, -2, -3), new Vec3(12, 12, 3)));
        Slope s = over((x, y) -> 0, Rim.PART).thinned(c -> 0.01);
        Inside plastic = new Inside(List.of(frame));
        Reach.Sheet sheet = Reach.of(s, List.of(0.0), plastic, new Box3(new Vec3(-50, -50, -50), new Vec3(50, 50, 50)));
        // only the corners are left, and there the way in is along the diagonal
        assertThat(area(sheet.corners(), sheet.facets()))
                .isCloseTo(Math.pow(SIDE_MM + 0.08 * Math.sqrt(2), 2), within(0.02));
        assertThat(sheet.corners()).allMatch(c -> inHole(c) || plastic.holds(c));
        Reach.Sheet out = Reach.of(
                over((x, y) -> 0, Rim.BLOCK).thinned(c -> 0.01),
                List.of(),
                plastic,
                new Box3(new Vec3(0, 0, -5), new Vec3(SIDE_MM, SIDE_MM, 5)));
        assertThat(area(out.corners(), out.facets())).isCloseTo(144, within(1e-9));
    }

    /** Two triangles that touch in one corner only: there the border meets itself, and each gap gets its own way into the plastic. */
    @Test
    void borderThatMeetsItselfReachesIntoBothGaps() {
        Vec3 middle = new Vec3(5, 5, 0);
        List<Vec3> corners =
                List.of(middle, new Vec3(0, 3, 0), new Vec3(0, 7, 0), new Vec3(10, 7, 0), new Vec3(10, 3, 0));
        List<int[]> facets = List.of(new int[] {0, 2, 1}, new int[] {0, 4, 3});
        Map<Slope.Side, Rim> border = new HashMap<>();
        for (int[] f : facets) for (int k = 0; k < 3; k++) border.put(new Slope.Side(f[k], f[(k + 1) % 3]), Rim.PART);
        Inside plastic = new Inside(List.of(
                prism(middle, new Vec3(10, 7, 0), new Vec3(0, 7, 0)),
                prism(middle, new Vec3(0, 3, 0), new Vec3(10, 3, 0))));
        Reach.Sheet sheet = Reach.of(
                new Slope(corners, facets, border),
                List.of(),
                plastic,
                new Box3(new Vec3(-50, -50, -50), new Vec3(50, 50, 50)));
        Map<Slope.Side, Integer> uses = new HashMap<>();
        for (int[] f : sheet.facets())
            for (int k = 0; k < 3; k++)
                uses.merge(
                        new Slope.Side(Math.min(f[k], f[(k + 1) % 3]), Math.max(f[k], f[(k + 1) % 3])),
                        1,
                        Integer::sum);
        assertThat(uses.values()).allMatch(n -> n <= 2);
        assertThat(sheet.corners()).anyMatch(c -> c.distance(middle) < 0.1 && c.y() > 5.04);
        assertThat(sheet.corners()).anyMatch(c -> c.distance(middle) < 0.1 && c.y() < 4.96);
    }

    /** Over a triangle, 1 mm up and down. */
    private static TriMesh prism(Vec3 a, Vec3 b, Vec3 c) {
        double[] xyz = new double[18];
        Vec3[] at = {a, b, c};
        for (int k = 0; k < 6; k++) {
            xyz[3 * k] = at[k % 3].x();
            xyz[3 * k + 1] = at[k % 3].y();
            xyz[3 * k + 2] = k < 3 ? -1 : 1;
        }
        int[] tri = {0, 2, 1, 3, 4, 5, 0, 1, 4, 0, 4, 3, 1, 2, 5, 1, 5, 4, 2, 0, 3, 2, 3, 5};
        return new TriMesh(xyz, tri);
    }

    private static boolean inHole(Vec3 c) {
        return c.x() >= 0 && c.x() <= SIDE_MM && c.y() >= 0 && c.y() <= SIDE_MM;
    }

    /** A frame of plastic round the square hole 0 to 10. */
    private static TriMesh ring(Box3 outer) {
        List<Vec3> corners = new ArrayList<>();
        double[][] in = {{0, 0}, {SIDE_MM, 0}, {SIDE_MM, SIDE_MM}, {0, SIDE_MM}};
        double[][] around = {
            {outer.min().x(), outer.min().y()},
            {outer.max().x(), outer.min().y()},
            {outer.max().x(), outer.max().y()},
            {outer.min().x(), outer.max().y()}
        };
        for (double z : new double[] {outer.min().z(), outer.max().z()})
            for (double[][] ring : new double[][][] {around, in})
                for (double[] p : ring) corners.add(new Vec3(p[0], p[1], z));
        List<int[]> quads = new ArrayList<>();
        for (int k = 0; k < 4; k++) {
            int n = (k + 1) % 4;
            quads.add(new int[] {k, n, 8 + n, 8 + k});
            quads.add(new int[] {4 + n, 4 + k, 12 + k, 12 + n});
            quads.add(new int[] {8 + k, 8 + n, 12 + n, 12 + k});
            quads.add(new int[] {n, k, 4 + k, 4 + n});
        }
        double[] xyz = corners.stream()
                .flatMapToDouble(c -> DoubleStream.of(c.x(), c.y(), c.z()))
                .toArray();
        int[] tri = quads.stream()
                .flatMapToInt(q -> IntStream.of(q[0], q[1], q[2], q[0], q[2], q[3]))
                .toArray();
        return new TriMesh(xyz, tri);
    }
}
