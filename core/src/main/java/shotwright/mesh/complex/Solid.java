package shotwright.mesh.complex;

import java.util.Arrays;
import java.util.function.IntPredicate;
import java.util.function.IntUnaryOperator;
import shotwright.mesh.TriMesh;

/** Reads solids out of a complex: all facets with chosen cells on exactly one side. */
final class Solid {
    private Solid() {}

    /** Divergence theorem, about the first vertex so that a far origin costs no digits, summed with compensation (Neumaier). */
    static double volume(Complex c, IntPredicate cells) {
        if (c.vertexCount() == 0) return 0;
        double ox = c.x(0), oy = c.y(0), oz = c.z(0), sum = 0, lost = 0;
        for (int f = 0; f < c.facetCount(); f++) {
            int side = side(c, f, cells);
            if (side == 0) continue;
            int i = c.corner(f, 0), j = c.corner(f, 1), k = c.corner(f, 2);
            double px = c.x(i) - ox, py = c.y(i) - oy, pz = c.z(i) - oz;
            double qx = c.x(j) - ox, qy = c.y(j) - oy, qz = c.z(j) - oz;
            double rx = c.x(k) - ox, ry = c.y(k) - oy, rz = c.z(k) - oz;
            double v = side * (px * (qy * rz - qz * ry) + py * (qz * rx - qx * rz) + pz * (qx * ry - qy * rx)) / 6;
            double t = sum + v;
            lost += Math.abs(sum) >= Math.abs(v) ? (sum - t) + v : (v - t) + sum;
            sum = t;
        }
        return sum + lost;
    }

    static TriMesh mesh(Complex c, IntPredicate cells) {
        return meshOf(c, f -> side(c, f, cells));
    }

    /** The facets that divide two cells, normals out of the first. */
    static TriMesh between(Complex c, int from, int to) {
        return meshOf(
                c, f -> c.behind(f) == from && c.front(f) == to ? 1 : c.behind(f) == to && c.front(f) == from ? -1 : 0);
    }

    private static TriMesh meshOf(Complex c, IntUnaryOperator sides) {
        int[] number = new int[c.vertexCount()];
        Arrays.fill(number, -1);
        double[] xyz = new double[3 * c.vertexCount()];
        int[] tri = new int[3 * c.facetCount()];
        int vertices = 0, facets = 0;
        for (int f = 0; f < c.facetCount(); f++) {
            int side = sides.applyAsInt(f);
            if (side == 0) continue;
            for (int k = 0; k < 3; k++) {
                int v = c.corner(f, side > 0 ? k : 2 - k);
                if (number[v] < 0) {
                    xyz[3 * vertices] = c.x(v);
                    xyz[3 * vertices + 1] = c.y(v);
                    xyz[3 * vertices + 2] = c.z(v);
                    number[v] = vertices++;
                }
                tri[3 * facets + k] = number[v];
            }
            facets++;
        }
        return new TriMesh(Arrays.copyOf(xyz, 3 * vertices), Arrays.copyOf(tri, 3 * facets));
    }

    static int openEdges(Complex c, IntPredicate cells) {
        EdgeTally net = new EdgeTally(c.facetCount());
        for (int f = 0; f < c.facetCount(); f++) {
            int side = side(c, f, cells);
            for (int k = 0; side != 0 && k < 3; k++) {
                int a = c.corner(f, k), b = c.corner(f, (k + 1) % 3);
                if (side > 0) net.addDirected(a, b);
                else net.addDirected(b, a);
            }
        }
        int[] open = {0};
        net.forEach((a, b, n) -> open[0] += Math.abs(n));
        return open[0];
    }

    /** +1 when the normal points out of the chosen cells, −1 when it points into them, 0 when the facet does not bound them. */
    private static int side(Complex c, int facet, IntPredicate cells) {
        boolean in = cells.test(c.behind(facet));
        return in == cells.test(c.front(facet)) ? 0 : in ? 1 : -1;
    }
}
