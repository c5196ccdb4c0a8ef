package shotwright.fill;

import java.util.ArrayList;
import java.util.List;
import shotwright.mesh.TriMesh;

/** Plain closed shapes for tests. */
final class Shapes {
    private Shapes() {}

    /** A prism of a simple polygon (counter-clockwise, convex or star-shaped about its first point's fan) from z0 to z1. */
    static TriMesh prism(double[][] ring, double z0, double z1) {
        int n = ring.length;
        double[] xyz = new double[6 * n];
        for (int i = 0; i < n; i++) {
            put(xyz, i, ring[i], z0);
            put(xyz, n + i, ring[i], z1);
        }
        List<Integer> tri = new ArrayList<>();
        for (int i = 1; i < n - 1; i++) {
            tri.addAll(List.of(0, i + 1, i, n, n + i, n + i + 1));
        }
        for (int i = 0; i < n; i++) {
            int j = (i + 1) % n;
            tri.addAll(List.of(i, j, n + j, i, n + j, n + i));
        }
        return new TriMesh(xyz, tri.stream().mapToInt(Integer::intValue).toArray());
    }

    private static void put(double[] xyz, int v, double[] p, double z) {
        xyz[3 * v] = p[0];
        xyz[3 * v + 1] = p[1];
        xyz[3 * v + 2] = z;
    }

    static TriMesh box(double lx, double ly, double lz) {
        return prism(new double[][] {{0, 0}, {lx, 0}, {lx, ly}, {0, ly}}, 0, lz);
    }

    static TriMesh disc(double radius, double height, int sides) {
        double[][] ring = new double[sides][];
        for (int i = 0; i < sides; i++) {
            double a = 2 * Math.PI * i / sides;
            ring[i] = new double[] {radius * Math.cos(a), radius * Math.sin(a)};
        }
        return prism(ring, 0, height);
    }
}
