package shotwright.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import shotwright.geom.Vec3;

/**
 * Which facets meet at which edge. Side {@code k} of a facet runs from its corner {@code k} to its corner {@code k + 1}; an edge is a pair
 * of vertices with all the sides on it. In a closed mesh every edge carries as many sides one way as the other way.
 *
 * <p>Facets with two equal corners have no area and no sides here; they are counted as collapsed.
 */
public final class Edges {
    /** Where a facet has no single neighbour, or a side no edge. */
    public static final int NONE = -1;

    private final TriMesh mesh;
    private final int[] low;
    private final int[] high;
    private final int[] edgeOfSide;
    private final int[] start;
    private final int[] sides;
    private final int[] balance;
    private final int collapsedCount;

    private Edges(TriMesh mesh, int[] low, int[] high, int[] edgeOfSide, int collapsedCount) {
        this.mesh = mesh;
        this.low = low;
        this.high = high;
        this.edgeOfSide = edgeOfSide;
        this.collapsedCount = collapsedCount;
        start = new int[low.length + 1];
        balance = new int[low.length];
        for (int e : edgeOfSide) if (e != NONE) start[e + 1]++;
        for (int e = 0; e < low.length; e++) start[e + 1] += start[e];
        sides = new int[start[low.length]];
        int[] next = Arrays.copyOf(start, low.length);
        for (int s = 0; s < edgeOfSide.length; s++) {
            int e = edgeOfSide[s];
            if (e == NONE) continue;
            sides[next[e]++] = s;
            balance[e] += from(s) == low[e] ? 1 : -1;
        }
    }

    /** The edge table of a mesh. */
    public static Edges of(TriMesh mesh) {
        int[] tri = mesh.tri();
        EdgeTable table = new EdgeTable(mesh.facetCount() * 3 / 2 + 8);
        int[] low = new int[tri.length], high = new int[tri.length], edgeOfSide = new int[tri.length];
        int collapsed = 0;
        for (int f = 0; f < tri.length; f += 3) {
            int a = tri[f], b = tri[f + 1], c = tri[f + 2];
            if (a == b || b == c || c == a) {
                Arrays.fill(edgeOfSide, f, f + 3, NONE);
                collapsed++;
                continue;
            }
            for (int k = 0; k < 3; k++) {
                int p = tri[f + k], q = tri[f + (k + 1) % 3], fresh = table.size();
                int e = table.putIfAbsent(p, q, fresh);
                if (e == fresh) {
                    low[e] = Math.min(p, q);
                    high[e] = Math.max(p, q);
                }
                edgeOfSide[f + k] = e;
            }
        }
        int n = table.size();
        return new Edges(mesh, Arrays.copyOf(low, n), Arrays.copyOf(high, n), edgeOfSide, collapsed);
    }

    public TriMesh mesh() {
        return mesh;
    }

    public int count() {
        return low.length;
    }

    /** The end of an edge with the smaller vertex number. */
    public int low(int edge) {
        return low[edge];
    }

    /** The end of an edge with the larger vertex number. */
    public int high(int edge) {
        return high[edge];
    }

    public double length(int edge) {
        return mesh.vertex(low[edge]).distance(mesh.vertex(high[edge]));
    }

    public Vec3 midpoint(int edge) {
        return mesh.vertex(low[edge]).toward(mesh.vertex(high[edge]), 0.5);
    }

    /** The edge under a facet's side, or {@link #NONE} for a collapsed facet. */
    public int edge(int facet, int side) {
        return edgeOfSide[3 * facet + side];
    }

    /** How many facet sides lie on an edge: two in a manifold closed mesh. */
    public int sideCount(int edge) {
        return start[edge + 1] - start[edge];
    }

    /** The {@code i}-th facet on an edge, in order of facet numbers. */
    public int facet(int edge, int i) {
        return sides[start[edge] + i] / 3;
    }

    /** Which side of {@link #facet(int, int)} it is: 0, 1 or 2. */
    public int side(int edge, int i) {
        return sides[start[edge] + i] % 3;
    }

    /** True when that side runs from the low to the high end of the edge. */
    public boolean runsUp(int edge, int i) {
        return from(sides[start[edge] + i]) == low[edge];
    }

    /** Two facets meet here, wound alike. */
    public boolean isManifold(int edge) {
        return sideCount(edge) == 2 && balance[edge] == 0;
    }

    /** The one facet across a side, or {@link #NONE} when there is none, more than one, or one wound the other way. */
    public int neighbour(int facet, int side) {
        int e = edgeOfSide[3 * facet + side];
        if (e == NONE || !isManifold(e)) return NONE;
        int s = sides[start[e]];
        return (s == 3 * facet + side ? sides[start[e] + 1] : s) / 3;
    }

    /** Every side is matched by one running the other way: the mesh bounds a volume. */
    public boolean isClosed() {
        for (int b : balance) if (b != 0) return false;
        return true;
    }

    /** Facet sides without a partner running the other way: 0 for a closed mesh. A hole of 43 edges counts 43. */
    public int unmatchedCount() {
        int n = 0;
        for (int b : balance) n += Math.abs(b);
        return n;
    }

    /** Edges with unmatched sides, in order of edge numbers: the rims of holes and the borders of patches wound the wrong way. */
    public int[] unmatched() {
        return select(e -> balance[e] != 0);
    }

    /** Edges on which just one facet ends: holes in the surface. */
    public int[] open() {
        return select(e -> sideCount(e) == 1);
    }

    /** Edges on which more than two facets meet. */
    public int[] nonManifold() {
        return select(e -> sideCount(e) > 2);
    }

    /** Edges on which two facets meet that are wound against each other. */
    public int[] misWound() {
        return select(e -> sideCount(e) == 2 && balance[e] != 0);
    }

    /** Facets with two equal corners. */
    public int collapsedCount() {
        return collapsedCount;
    }

    private int[] select(java.util.function.IntPredicate which) {
        return java.util.stream.IntStream.range(0, low.length).filter(which).toArray();
    }

    /**
     * The turn of the surface across an edge in radians: 0 where it goes on flat, above zero on an outside (convex) corner, below zero in
     * an inside (concave) corner, near ±π where it folds back on itself. NaN where the edge is not manifold or a facet has no area.
     */
    public double turn(int edge) {
        if (!isManifold(edge)) return Double.NaN;
        int s = sides[start[edge]];
        Vec3 n = mesh.doubleAreaNormal(s / 3), m = mesh.doubleAreaNormal(sides[start[edge] + 1] / 3);
        double ln = n.length(), lm = m.length();
        if (ln == 0 || lm == 0) return Double.NaN;
        Vec3 along = mesh.vertex(to(s)).minus(mesh.vertex(from(s))).unit();
        return Math.atan2(along.dot(n.cross(m)), n.dot(m));
    }

    /**
     * The rims of the holes: closed walks over unmatched sides, each given as the vertices a filling facet would meet counter-clockwise
     * seen from outside. A walk that cannot be closed (facets wound against each other) is given as far as it goes.
     */
    public List<int[]> boundaryLoops() {
        int[] rims = unmatched();
        List<long[]> free = new ArrayList<>();
        for (int e : rims) {
            int p = balance[e] > 0 ? high[e] : low[e], q = balance[e] > 0 ? low[e] : high[e];
            for (int i = Math.abs(balance[e]); i > 0; i--) free.add(new long[] {p, q});
        }
        free.sort((u, v) -> u[0] != v[0] ? Long.compare(u[0], v[0]) : Long.compare(u[1], v[1]));
        boolean[] used = new boolean[free.size()];
        List<int[]> loops = new ArrayList<>();
        for (int i = 0; i < used.length; i++) if (!used[i]) loops.add(walk(free, used, i));
        return loops;
    }

    private static int[] walk(List<long[]> free, boolean[] used, int first) {
        List<Integer> way = new ArrayList<>();
        int i = first;
        while (i >= 0) {
            used[i] = true;
            way.add((int) free.get(i)[0]);
            long end = free.get(i)[1];
            if (end == free.get(first)[0]) break;
            i = leaving(free, used, end);
            if (i < 0) way.add((int) end);
        }
        return way.stream().mapToInt(Integer::intValue).toArray();
    }

    private static int leaving(List<long[]> free, boolean[] used, long vertex) {
        int lo = 0, hi = free.size();
        while (lo < hi) {
            int mid = (lo + hi) >>> 1;
            if (free.get(mid)[0] < vertex) lo = mid + 1;
            else hi = mid;
        }
        for (; lo < free.size() && free.get(lo)[0] == vertex; lo++) if (!used[lo]) return lo;
        return NONE;
    }

    private int from(int side) {
        return mesh.tri()[side];
    }

    private int to(int side) {
        return mesh.tri()[side % 3 == 2 ? side - 2 : side + 1];
    }
}
