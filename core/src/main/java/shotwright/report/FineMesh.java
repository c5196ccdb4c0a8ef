package shotwright.report;

import java.util.Arrays;
import shotwright.mesh.Edges;
import shotwright.mesh.TriMesh;

/**
 * Cuts the facets of a mesh until no edge is longer than wished, so that what is painted at corners does not run across a long facet. Edges
 * are halved, and an edge is halved for both its facets, so the surface stays the same and stays closed.
 */
final class FineMesh {
    private static final int MOST_ROUNDS = 12;

    private FineMesh() {}

    /** The mesh with edges of at most this length, mm. */
    static TriMesh of(TriMesh mesh, double longestMm) {
        if (!(longestMm > 0))
            throw new IllegalArgumentException("longest edge: " + longestMm + " mm is not above zero");
        TriMesh fine = mesh;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            TriMesh next = halved(fine, longestMm);
            if (next == fine) break;
            fine = next;
        }
        return fine;
    }

    private static TriMesh halved(TriMesh mesh, double longest) {
        Edges edges = Edges.of(mesh);
        int[] middle = new int[edges.count()];
        int vertices = mesh.vertexCount(), more = 0;
        for (int e = 0; e < middle.length; e++) middle[e] = edges.length(e) > longest ? vertices + more++ : Edges.NONE;
        if (more == 0) return mesh;
        double[] xyz = Arrays.copyOf(mesh.copyXyz(), 3 * (vertices + more));
        for (int e = 0; e < middle.length; e++) {
            if (middle[e] == Edges.NONE) continue;
            var p = edges.midpoint(e);
            xyz[3 * middle[e]] = p.x();
            xyz[3 * middle[e] + 1] = p.y();
            xyz[3 * middle[e] + 2] = p.z();
        }
        Corners corners = new Corners(mesh.facetCount() + 2 * more);
        for (int f = 0; f < mesh.facetCount(); f++) facet(mesh, edges, middle, f, corners);
        return new TriMesh(xyz, corners.all());
    }

    private static void facet(TriMesh mesh, Edges edges, int[] middle, int f, Corners to) {
        int[] c = new int[3], m = new int[3];
        int halved = 0;
        for (int k = 0; k < 3; k++) {
            int e = edges.edge(f, k);
            c[k] = mesh.corner(f, k);
            m[k] = e == Edges.NONE ? Edges.NONE : middle[e];
            if (m[k] != Edges.NONE) halved++;
        }
        switch (halved) {
            case 0 -> to.add(c[0], c[1], c[2]);
            case 1 -> {
                int k = m[0] != Edges.NONE ? 0 : m[1] != Edges.NONE ? 1 : 2;
                to.add(c[k], m[k], c[(k + 2) % 3]);
                to.add(m[k], c[(k + 1) % 3], c[(k + 2) % 3]);
            }
            case 2 -> {
                int whole = m[0] == Edges.NONE ? 0 : m[1] == Edges.NONE ? 1 : 2;
                int a = c[whole], b = c[(whole + 1) % 3], top = c[(whole + 2) % 3];
                int right = m[(whole + 1) % 3], left = m[(whole + 2) % 3];
                to.add(left, right, top);
                to.add(a, b, right);
                to.add(a, right, left);
            }
            default -> {
                for (int k = 0; k < 3; k++) to.add(c[k], m[k], m[(k + 2) % 3]);
                to.add(m[0], m[1], m[2]);
            }
        }
    }

    /** Grows with the facets. */
    private static final class Corners {
        private int[] tri;
        private int n;

        Corners(int facets) {
            tri = new int[3 * facets];
        }

        void add(int a, int b, int c) {
            if (n + 3 > tri.length) tri = Arrays.copyOf(tri, 2 * tri.length);
            tri[n++] = a;
            tri[n++] = b;
            tri[n++] = c;
        }

        int[] all() {
            return Arrays.copyOf(tri, n);
        }
    }
}
