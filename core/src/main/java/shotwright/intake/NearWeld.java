package shotwright.intake;

import java.util.HashMap;
import java.util.Map;
import shotwright.mesh.Edges;
import shotwright.mesh.TriMesh;

/**
 * Joins corner points that differ only by the rounding of single-precision numbers. Some exporters round the same corner in two ways, one
 * step of the last digit apart; joined by exact coordinates such a surface falls into sheets. Only points on open edges are looked at, only
 * within a few rounding steps, and the result is taken only when it leaves fewer open edges than before.
 */
final class NearWeld {
    /** Half the spacing of single-precision numbers, relative. */
    private static final double ROUNDING = 0x1p-24;

    private static final double STEPS = 8;

    private final TriMesh mesh;
    private final double reach;
    private final int[] to;
    private final Map<Long, Ints> cells = new HashMap<>();

    /**
     * What came of it.
     *
     * @param mesh the mesh, joined or as it was
     * @param joined how many points were joined to others
     * @param reachMm how far apart they were at most
     */
    record Joined(TriMesh mesh, int joined, double reachMm) {}

    private NearWeld(TriMesh mesh) {
        this.mesh = mesh;
        double far = 0;
        for (double c : mesh.copyXyz()) far = Math.max(far, Math.abs(c));
        reach = far * ROUNDING * STEPS;
        to = new int[mesh.vertexCount()];
        for (int v = 0; v < to.length; v++) to[v] = v;
    }

    static Joined of(TriMesh mesh) {
        if (mesh.facetCount() == 0) return new Joined(mesh, 0, 0);
        Edges edges = Edges.of(mesh);
        int[] open = edges.open();
        if (open.length == 0) return new Joined(mesh, 0, 0);
        NearWeld w = new NearWeld(mesh);
        int joined = 0;
        boolean[] seen = new boolean[mesh.vertexCount()];
        for (int e : open) {
            if (!seen[edges.low(e)]) joined += w.place(edges.low(e));
            seen[edges.low(e)] = true;
            if (!seen[edges.high(e)]) joined += w.place(edges.high(e));
            seen[edges.high(e)] = true;
        }
        if (joined == 0) return new Joined(mesh, 0, 0);
        TriMesh after = w.rebuilt();
        return Edges.of(after).unmatchedCount() < edges.unmatchedCount()
                ? new Joined(after, joined, w.reach)
                : new Joined(mesh, 0, 0);
    }

    /** Joins a point to one placed before within reach; 1 when it did. */
    private int place(int v) {
        long cx = cell(mesh.x(v)), cy = cell(mesh.y(v)), cz = cell(mesh.z(v));
        for (long i = cx - 1; i <= cx + 1; i++) {
            for (long j = cy - 1; j <= cy + 1; j++) {
                for (long k = cz - 1; k <= cz + 1; k++) {
                    Ints there = cells.get(key(i, j, k));
                    for (int m = 0; there != null && m < there.count(); m++) {
                        int u = there.get(m);
                        if (near(u, v)) {
                            to[v] = u;
                            return 1;
                        }
                    }
                }
            }
        }
        cells.computeIfAbsent(key(cx, cy, cz), c -> new Ints()).add(v);
        return 0;
    }

    private long cell(double x) {
        return (long) Math.floor(x / reach);
    }

    private static long key(long i, long j, long k) {
        return (i * 0x9E3779B97F4A7C15L ^ j * 0xBF58476D1CE4E5B9L) * 31 + k;
    }

    private boolean near(int u, int v) {
        return Math.abs(mesh.x(u) - mesh.x(v)) <= reach
                && Math.abs(mesh.y(u) - mesh.y(v)) <= reach
                && Math.abs(mesh.z(u) - mesh.z(v)) <= reach;
    }

    private TriMesh rebuilt() {
        Ints tri = new Ints();
        for (int f = 0; f < mesh.facetCount(); f++) {
            int a = to[mesh.corner(f, 0)], b = to[mesh.corner(f, 1)], c = to[mesh.corner(f, 2)];
            if (a == b || b == c || c == a) continue;
            tri.add(a);
            tri.add(b);
            tri.add(c);
        }
        return Facets.compact(mesh.copyXyz(), tri.toArray());
    }
}
