package shotwright.report;

import java.util.Arrays;
import shotwright.mesh.Edges;
import shotwright.mesh.TriMesh;

/**
 * Cuts the facets of a mesh until no edge is longer than wished, so that what is painted at corners does not run across a long facet. Edges
 * are halved, and an edge is halved for both its facets, so the surface stays the same and stays closed.
 */
final class FineMesh {
    private static final int MOST_ROUNDS = 24;

    private FineMesh() {}

    /**
     * Cuts the longest edges first, so that a mesh that may not become much finer is still cut evenly.
     *
     * @param longestMm no edge is left longer than this, mm, as far as the number of facets allows
     * @param mostFacets a round that would make more than this is left out, and cutting ends
     */
    static Edges of(Edges mesh, double longestMm, int mostFacets) {
        if (!(longestMm > 0))
            throw new IllegalArgumentException("longest edge: " + longestMm + " mm is not above zero");
        double limit = longest(mesh) / 2;
        Edges fine = mesh;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double now = Math.max(limit, longestMm);
            int[] middle = new int[fine.count()];
            int more = middles(fine, now, middle);
            if (fine.mesh().facetCount() + 2L * more > mostFacets) break;
            if (more > 0) fine = Edges.of(halved(fine, middle, more));
            else if (now == longestMm) break;
            limit = now / 2;
        }
        return fine;
    }

    private static double longest(Edges edges) {
        double longest = 0;
        for (int e = 0; e < edges.count(); e++) longest = Math.max(longest, edges.length(e));
        return longest;
    }

    /** Numbers the vertices in the middle of the edges longer than a limit; gives how many. */
    private static int middles(Edges edges, double limit, int[] middle) {
        int vertices = edges.mesh().vertexCount(), more = 0;
        for (int e = 0; e < middle.length; e++) middle[e] = edges.length(e) > limit ? vertices + more++ : Edges.NONE;
        return more;
    }

    private static TriMesh halved(Edges edges, int[] middle, int more) {
        TriMesh mesh = edges.mesh();
        double[] xyz = Arrays.copyOf(mesh.copyXyz(), 3 * (mesh.vertexCount() + more));
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
