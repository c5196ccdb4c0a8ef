package shotwright.mesh.pull;

import java.util.Arrays;
import java.util.PriorityQueue;
import shotwright.geom.Vec3;
import shotwright.mesh.Edges;
import shotwright.mesh.TriMesh;

/**
 * The ways along which a parting line can run, as a graph of columns: edges of facets that stand along the pull, and edges in which an up facet
 * meets a down facet. Lengths are those in plan.
 */
final class RimGraph {
    /** Sine of 5°: a free facet that leans more off the pull is free for being thin. */
    static final double STANDS = 0.087;

    private final int[] first;
    private final int[] to;
    private final double[] length;

    private RimGraph(int[] first, int[] to, double[] length) {
        this.first = first;
        this.to = to;
        this.length = length;
    }

    static RimGraph of(Columns columns, Sight[] sight, Edges edges, double leanDeg) {
        TriMesh mesh = columns.mesh();
        double lean = Math.max(Math.sin(Math.toRadians(leanDeg)), STANDS);
        int[] start = new int[2 * edges.count()], end = new int[2 * edges.count()];
        int n = 0;
        for (int e = 0; e < edges.count(); e++) {
            int a = columns.columnOf(edges.low(e)), b = columns.columnOf(edges.high(e));
            if (a == b || !runsAlong(mesh, sight, edges, e, lean)) continue;
            start[n] = end[n + 1] = a;
            end[n] = start[n + 1] = b;
            n += 2;
        }
        int[] first = new int[columns.count() + 1];
        for (int i = 0; i < n; i++) first[start[i] + 1]++;
        for (int i = 0; i < columns.count(); i++) first[i + 1] += first[i];
        int[] to = new int[n], next = first.clone();
        double[] length = new double[n];
        for (int i = 0; i < n; i++) {
            int at = next[start[i]]++;
            to[at] = end[i];
            length[at] = Math.hypot(columns.x(start[i]) - columns.x(end[i]), columns.y(start[i]) - columns.y(end[i]));
        }
        return new RimGraph(first, to, length);
    }

    private static boolean runsAlong(TriMesh mesh, Sight[] sight, Edges edges, int e, double lean) {
        boolean up = false, down = false;
        for (int i = 0; i < edges.sideCount(e); i++) {
            int f = edges.facet(e, i);
            up |= sight[f] == Sight.UP;
            down |= sight[f] == Sight.DOWN;
            if (sight[f] != Sight.FREE) continue;
            Vec3 n = mesh.doubleAreaNormal(f);
            if (Math.abs(n.z()) <= lean * n.length()) return true;
        }
        return up && down;
    }

    int count() {
        return first.length - 1;
    }

    /** Numbers the connected pieces; columns without any edge get −1. */
    int[] pieces() {
        int[] piece = new int[count()];
        Arrays.fill(piece, -1);
        int[] stack = new int[count()];
        int n = 0;
        for (int s = 0; s < piece.length; s++) {
            if (piece[s] >= 0 || first[s] == first[s + 1]) continue;
            int top = 0;
            stack[top++] = s;
            piece[s] = n;
            while (top > 0) {
                int j = stack[--top];
                for (int e = first[j]; e < first[j + 1]; e++) {
                    if (piece[to[e]] < 0) {
                        piece[to[e]] = n;
                        stack[top++] = to[e];
                    }
                }
            }
            n++;
        }
        return piece;
    }

    /** Half the length of the edges at each column: the run of rim it stands for. */
    double[] runs() {
        double[] run = new double[count()];
        for (int j = 0; j < run.length; j++) for (int e = first[j]; e < first[j + 1]; e++) run[j] += length[e] / 2;
        return run;
    }

    /** The lowest height ≤ all bounds that rises no faster than the slope along the graph: min over j of (bound_j + slope · distance). */
    double[] spreadUpper(double[] bound, double slope) {
        double[] h = bound.clone();
        PriorityQueue<Stop> queue = new PriorityQueue<>();
        for (int j = 0; j < h.length; j++) if (!Double.isInfinite(h[j])) queue.add(new Stop(j, h[j]));
        while (!queue.isEmpty()) {
            Stop s = queue.poll();
            if (s.height > h[s.column]) continue;
            for (int e = first[s.column]; e < first[s.column + 1]; e++) {
                double reached = s.height + slope * length[e];
                if (reached < h[to[e]]) {
                    h[to[e]] = reached;
                    queue.add(new Stop(to[e], reached));
                }
            }
        }
        return h;
    }

    /** The same downward: max over j of (bound_j − slope · distance). */
    double[] spreadLower(double[] bound, double slope) {
        double[] turned = new double[bound.length];
        for (int j = 0; j < turned.length; j++) turned[j] = -bound[j];
        double[] h = spreadUpper(turned, slope);
        for (int j = 0; j < h.length; j++) h[j] = -h[j];
        return h;
    }

    private record Stop(int column, double height) implements Comparable<Stop> {
        @Override
        public int compareTo(Stop o) {
            return Double.compare(height, o.height);
        }
    }
}
