package shotwright.intake;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import shotwright.geom.Vec3;
import shotwright.mesh.Edges;
import shotwright.mesh.TriMesh;

/**
 * Parts the facets at edges that more than two of them share, by their angles about the edge: every facet goes with the one across the
 * material beside it. Two solids that touch in a line come apart, a solid that touches itself keeps the line twice. The shape does not
 * change; only vertices are doubled. Where facets lie on each other or do not alternate between coming and going there is no one way, and
 * nothing is parted.
 */
final class FanSplit {
    /** Facets closer than this about an edge lie on each other. */
    private static final double SAME_ANGLE_RAD = 1e-6;

    private final TriMesh mesh;
    private final Edges edges;
    private final int[] above;

    private FanSplit(TriMesh mesh, Edges edges) {
        this.mesh = mesh;
        this.edges = edges;
        above = IntStream.range(0, 3 * mesh.facetCount()).toArray();
    }

    /** The mesh with every edge on two facets only, or null when that cannot be done without guessing. */
    static @Nullable TriMesh of(TriMesh mesh, Edges edges) {
        if (edges.nonManifold().length == 0 || !edges.isClosed()) return null;
        FanSplit s = new FanSplit(mesh, edges);
        for (int e = 0; e < edges.count(); e++) {
            if (edges.sideCount(e) == 2) s.pair(e, 0, 1);
            else if (!s.fan(e)) return null;
        }
        TriMesh out = s.rebuilt();
        return Edges.of(out).nonManifold().length == 0 && Edges.of(out).isClosed() ? out : null;
    }

    /** One facet on an edge: which, its angle about the edge, and whether it runs from the lower to the higher vertex. */
    private record Spoke(int i, double angleRad, boolean forward) {}

    private boolean fan(int e) {
        Vec3 low = mesh.vertex(edges.low(e)), high = mesh.vertex(edges.high(e));
        if (low.equals(high)) return false;
        Vec3 axis = high.minus(low).unit(), u = axis.across(), v = axis.cross(u);
        int n = edges.sideCount(e);
        Spoke[] spokes = new Spoke[n];
        for (int i = 0; i < n; i++) {
            int f = edges.facet(e, i), k = edges.side(e, i);
            Vec3 w = mesh.cornerPoint(f, (k + 2) % 3).minus(low);
            double x = u.dot(w), y = v.dot(w);
            if (x == 0 && y == 0) return false;
            spokes[i] = new Spoke(i, Math.atan2(y, x), mesh.corner(f, k) == edges.low(e));
        }
        Arrays.sort(spokes, Comparator.comparingDouble(Spoke::angleRad));
        for (int i = 0; i < n; i++) {
            Spoke s = spokes[i], next = spokes[(i + 1) % n];
            double gap = next.angleRad() - s.angleRad() + (i + 1 == n ? 2 * Math.PI : 0);
            if (gap < SAME_ANGLE_RAD || s.forward() == next.forward()) return false;
            // a facet running forward has its outside at growing angles, so material lies behind it
            if (!s.forward()) pair(e, s.i(), next.i());
        }
        return true;
    }

    /** The two facets stay joined along the edge. */
    private void pair(int e, int i, int j) {
        for (int vertex : List.of(edges.low(e), edges.high(e)))
            join(corner(edges.facet(e, i), vertex), corner(edges.facet(e, j), vertex));
    }

    private int corner(int facet, int vertex) {
        for (int k = 0; k < 3; k++) if (mesh.corner(facet, k) == vertex) return 3 * facet + k;
        throw new IllegalStateException("facet " + facet + " has no vertex " + vertex);
    }

    private int root(int corner) {
        int c = corner;
        while (above[c] != c) {
            above[c] = above[above[c]];
            c = above[c];
        }
        return c;
    }

    private void join(int a, int b) {
        int p = root(a), q = root(b);
        above[Math.max(p, q)] = Math.min(p, q);
    }

    private TriMesh rebuilt() {
        boolean[] doubled = new boolean[mesh.vertexCount()];
        for (int e : edges.nonManifold()) {
            doubled[edges.low(e)] = true;
            doubled[edges.high(e)] = true;
        }
        Doubles xyz = new Doubles();
        for (double x : mesh.copyXyz()) xyz.add(x);
        int[] tri = mesh.copyTri();
        boolean[] taken = new boolean[mesh.vertexCount()];
        int[] vertexOfRoot = new int[tri.length];
        Arrays.fill(vertexOfRoot, -1);
        for (int c = 0; c < tri.length; c++) {
            int v = tri[c], r = root(c);
            if (!doubled[v]) continue;
            if (vertexOfRoot[r] < 0) {
                vertexOfRoot[r] = taken[v] ? xyz.count() / 3 : v;
                if (taken[v]) for (int k = 0; k < 3; k++) xyz.add(xyz.get(3 * v + k));
                taken[v] = true;
            }
            tri[c] = vertexOfRoot[r];
        }
        return new TriMesh(xyz.toArray(), tri);
    }
}
