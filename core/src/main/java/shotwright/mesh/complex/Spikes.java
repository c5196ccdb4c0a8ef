package shotwright.mesh.complex;

import java.util.ArrayList;
import java.util.List;

/**
 * Clips spikes off the loops of an outline: a corner b of a–b–c that folds back within a tolerance is filled with the sliver a b c and left
 * out, so that every edge stays matched and the rest is a plain polygon.
 */
final class Spikes {
    private final Outline outline;
    private final double tolerance;
    private final IntList slivers;
    private int clipped;

    Spikes(Outline outline, double tolerance, IntList slivers) {
        this.outline = outline;
        this.tolerance = tolerance;
        this.slivers = slivers;
    }

    int clipped() {
        return clipped;
    }

    List<int[]> clip() {
        List<int[]> rest = new ArrayList<>();
        for (int[] loop : outline.loops) {
            int[] r = clip(loop);
            if (r.length > 2) rest.add(r);
        }
        return rest;
    }

    private int[] clip(int[] loop) {
        int n = loop.length, left = n, i = 0, since = 0;
        int[] next = new int[n], before = new int[n];
        for (int k = 0; k < n; k++) {
            next[k] = (k + 1) % n;
            before[k] = (k + n - 1) % n;
        }
        while (left > 2 && since < left) {
            int a = loop[before[i]], b = loop[i], c = loop[next[i]];
            if (spike(a, b, c)) {
                slivers.add(a, b, c);
                clipped++;
                next[before[i]] = next[i];
                before[next[i]] = before[i];
                left--;
                i = before[i];
                since = 0;
            } else {
                i = next[i];
                since++;
            }
        }
        int[] rest = new int[left < 3 ? 0 : left];
        for (int k = 0; k < rest.length; k++, i = next[i]) rest[k] = loop[i];
        return rest;
    }

    /** Folding back: the angle at b is sharp and the end of its shorter leg lies within the tolerance of its longer leg. */
    private boolean spike(int a, int b, int c) {
        double[] px = outline.px, py = outline.py;
        double ax = px[a] - px[b], ay = py[a] - py[b], cx = px[c] - px[b], cy = py[c] - py[b];
        if (ax * cx + ay * cy < 0) return false;
        double longer = Math.max(Math.hypot(ax, ay), Math.hypot(cx, cy));
        return Math.abs(ax * cy - ay * cx) <= tolerance * longer;
    }
}
