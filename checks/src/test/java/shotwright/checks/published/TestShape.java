package shotwright.checks.published;

import java.util.ArrayList;
import java.util.List;
import shotwright.mesh.TriMesh;

/** Closed solids whose volume and shadow are known in closed form, built here apart from the program. */
final class TestShape {
    private final List<Double> xyz = new ArrayList<>();
    private final List<Integer> tri = new ArrayList<>();

    private TestShape() {}

    /**
     * A washer of 64 corners and 3 mm height about the z axis, with a radius below and one above on its outside and in its hole.
     */
    static TriMesh washer(double outLow, double outHigh, double inLow, double inHigh) {
        TestShape s = new TestShape();
        int n = 64;
        double[] radius = {outLow, outHigh, inLow, inHigh}, z = {0, 3, 0, 3};
        for (int k = 0; k < 4; k++) {
            for (int i = 0; i < n; i++) {
                double a = 2 * Math.PI * i / n;
                s.point(radius[k] * Math.cos(a), radius[k] * Math.sin(a), z[k]);
            }
        }
        for (int i = 0; i < n; i++) {
            int j = (i + 1) % n;
            s.quad(i, j, n + j, n + i);
            s.quad(2 * n + j, 2 * n + i, 3 * n + i, 3 * n + j);
            s.quad(n + i, n + j, 3 * n + j, 3 * n + i);
            s.quad(j, i, 2 * n + i, 2 * n + j);
        }
        return s.mesh();
    }

    /**
     * A bar 10 mm deep along y.
     *
     * @param profile corners x, z in turn, anticlockwise
     * @param faces its triangles by corner number, anticlockwise
     */
    static TriMesh bar(double[] profile, int... faces) {
        TestShape s = new TestShape();
        int n = profile.length / 2;
        for (int y = 0; y <= 10; y += 10) {
            for (int i = 0; i < n; i++) s.point(profile[2 * i], y, profile[2 * i + 1]);
        }
        for (int f = 0; f < faces.length; f += 3) {
            s.facet(faces[f], faces[f + 1], faces[f + 2]);
            s.facet(n + faces[f], n + faces[f + 2], n + faces[f + 1]);
        }
        for (int i = 0; i < n; i++) s.quad(i, n + i, n + (i + 1) % n, (i + 1) % n);
        return s.mesh();
    }

    private void point(double x, double y, double z) {
        xyz.addAll(List.of(x, y, z));
    }

    private void facet(int a, int b, int c) {
        tri.addAll(List.of(a, b, c));
    }

    private void quad(int a, int b, int c, int d) {
        facet(a, b, c);
        facet(a, c, d);
    }

    private TriMesh mesh() {
        return new TriMesh(
                xyz.stream().mapToDouble(Double::doubleValue).toArray(),
                tri.stream().mapToInt(Integer::intValue).toArray());
    }
}
