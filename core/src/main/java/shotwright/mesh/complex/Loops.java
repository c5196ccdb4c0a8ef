package shotwright.mesh.complex;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import shotwright.geom.Vec3;

/**
 * Orders the directed border edges of a cap into closed loops that do not cross each other. Where several loops meet in a point the tightest
 * turn to the left is taken, and a walk that comes back to a point of its own gives off the loop it has closed.
 */
final class Loops {
    private final Outline outline;
    private final int[] to;
    private final int[] firstOut;
    private final int[] out;
    private final boolean[] used;

    Loops(Outline outline, int[] from, int[] to) {
        this.outline = outline;
        this.to = to;
        this.used = new boolean[from.length];
        int n = outline.vertex.length;
        firstOut = new int[n + 1];
        for (int f : from) firstOut[f + 1]++;
        for (int i = 0; i < n; i++) firstOut[i + 1] += firstOut[i];
        out = new int[from.length];
        int[] next = Arrays.copyOf(firstOut, n);
        for (int e = 0; e < from.length; e++) out[next[from[e]]++] = e;
    }

    List<int[]> trace() {
        List<int[]> loops = new ArrayList<>();
        int n = outline.vertex.length;
        int[] path = new int[n + 1];
        int[] place = new int[n];
        Arrays.fill(place, -1);
        for (int start = 0; start < n; start++) {
            int length = 0;
            path[length++] = start;
            place[start] = 0;
            while (true) {
                int at = path[length - 1];
                int e = choose(at, length > 1 ? path[length - 2] : -1);
                if (e < 0) {
                    if (length > 1) throw new SplitFailure("the border of the cut is not closed", spot(at));
                    break;
                }
                used[e] = true;
                int v = to[e];
                if (place[v] >= 0) {
                    loops.add(Arrays.copyOfRange(path, place[v], length));
                    while (length > place[v] + 1) place[path[--length]] = -1;
                } else {
                    place[v] = length;
                    path[length++] = v;
                }
            }
            place[start] = -1;
        }
        return loops;
    }

    private Vec3 spot(int p) {
        return new Vec3(outline.px[p], outline.py[p], outline.height[p]);
    }

    /** The unused edge out of a point that turns most tightly to the left, coming from another point; any when there is no coming from. */
    private int choose(int at, int before) {
        int best = -1;
        double bestTurn = Double.POSITIVE_INFINITY;
        for (int i = firstOut[at]; i < firstOut[at + 1]; i++) {
            int e = out[i];
            if (used[e]) continue;
            if (before < 0 || firstOut[at + 1] - firstOut[at] == 1) return e;
            double turn = clockwise(at, before, to[e]);
            if (turn < bestTurn) {
                bestTurn = turn;
                best = e;
            }
        }
        return best;
    }

    /** Angle from the way back to the way on, measured clockwise, in (0, 2π]. */
    private double clockwise(int at, int back, int on) {
        double[] px = outline.px, py = outline.py;
        double a = Math.atan2(py[back] - py[at], px[back] - px[at]);
        double b = Math.atan2(py[on] - py[at], px[on] - px[at]);
        double turn = a - b;
        while (turn <= 0) turn += 2 * Math.PI;
        return turn;
    }
}
