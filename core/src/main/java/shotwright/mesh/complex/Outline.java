package shotwright.mesh.complex;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import shotwright.geom.Vec3;

/**
 * The border of a cap seen in its plane: the vertices on it, numbered afresh from 0, their places in the plane and above it, and the closed
 * loops along them. The cap lies to the left of every loop.
 */
final class Outline {
    /** Vertex of the complex behind each border point. */
    final int[] vertex;

    final double[] px;
    final double[] py;
    final double[] height;
    final List<int[]> loops;
    /** Unit direction the cap is looked at against. */
    final Vec3 up;

    private Outline(int[] vertex, double[] px, double[] py, double[] height, List<int[]> loops, Vec3 up) {
        this.vertex = vertex;
        this.px = px;
        this.py = py;
        this.height = height;
        this.loops = loops;
        this.up = up;
    }

    /**
     * Orders directed edges into loops.
     *
     * @param from start vertices
     * @param to end vertices
     * @param up unit direction the cap is looked at against
     */
    static Outline of(Complex c, int[] from, int[] to, Vec3 up) {
        int[] vertex = distinct(from, to);
        int n = vertex.length;
        double[] px = new double[n], py = new double[n], height = new double[n];
        Vec3 u = up.across(), v = up.cross(u);
        for (int i = 0; i < n; i++) {
            Vec3 p = c.vertex(vertex[i]);
            px[i] = u.dot(p);
            py[i] = v.dot(p);
            height[i] = up.dot(p);
        }
        Outline blank = new Outline(vertex, px, py, height, List.of(), up);
        return blank.with(new Loops(blank, local(vertex, from), local(vertex, to)).trace());
    }

    Outline with(List<int[]> newLoops) {
        return new Outline(vertex, px, py, height, newLoops, up);
    }

    /** The same points, those on top of each other moved a little along their loop, so that no two fall together in the plane. */
    Outline nudged(double by) {
        Outline o = new Outline(vertex, px.clone(), py.clone(), height, loops, up);
        boolean[] placed = new boolean[o.px.length];
        Crowd crowd = new Crowd(by);
        for (int[] loop : loops) {
            for (int i = 0; i < loop.length; i++) {
                int p = loop[i];
                if (placed[p]) continue;
                placed[p] = true;
                int next = loop[(i + 1) % loop.length], before = loop[(i + loop.length - 1) % loop.length];
                // away from a neighbour it coincides with, or the loop would fold back on itself
                int toward = o.distance(p, next) < by ? before : next;
                for (int tries = 0; tries < 64 && !crowd.admits(o.px[p], o.py[p]); tries++) o.move(p, toward, by);
            }
        }
        return o;
    }

    private double distance(int p, int q) {
        return Math.hypot(px[q] - px[p], py[q] - py[p]);
    }

    private void move(int p, int toward, double by) {
        double d = distance(p, toward), dx = px[toward] - px[p], dy = py[toward] - py[p];
        px[p] += d > 0 ? by * dx / d : by;
        py[p] += d > 0 ? by * dy / d : 0;
    }

    /** Points of the plane, none nearer to another than half a step. */
    private static final class Crowd {
        private final double step;
        private final Map<List<Long>, List<double[]>> cells = new HashMap<>();

        Crowd(double step) {
            this.step = step;
        }

        /** Takes a point in unless one is there already. */
        boolean admits(double x, double y) {
            long i = (long) Math.floor(x / step), j = (long) Math.floor(y / step);
            for (long k = 0; k < 9; k++) {
                for (double[] q : cells.getOrDefault(List.of(i + k % 3 - 1, j + k / 3 - 1), List.of())) {
                    if (Math.hypot(q[0] - x, q[1] - y) < step / 2) return false;
                }
            }
            cells.computeIfAbsent(List.of(i, j), c -> new ArrayList<>(1)).add(new double[] {x, y});
            return true;
        }
    }

    /** Area to the left of a loop: above zero when it runs counter-clockwise. */
    double area(int[] loop) {
        double ox = px[loop[0]], oy = py[loop[0]], sum = 0;
        for (int i = 0; i < loop.length; i++) {
            int a = loop[i], b = loop[(i + 1) % loop.length];
            sum += (px[a] - ox) * (py[b] - oy) - (px[b] - ox) * (py[a] - oy);
        }
        return sum / 2;
    }

    double area(int a, int b, int c) {
        return ((px[b] - px[a]) * (py[c] - py[a]) - (px[c] - px[a]) * (py[b] - py[a])) / 2;
    }

    double length(int[] loop) {
        double sum = 0;
        for (int i = 0; i < loop.length; i++) {
            int a = loop[i], b = loop[(i + 1) % loop.length];
            sum += Math.hypot(px[a] - px[b], py[a] - py[b]);
        }
        return sum;
    }

    private static int[] distinct(int[] from, int[] to) {
        int[] all = Arrays.copyOf(from, from.length + to.length);
        System.arraycopy(to, 0, all, from.length, to.length);
        return Arrays.stream(all).sorted().distinct().toArray();
    }

    private static int[] local(int[] vertex, int[] of) {
        int[] r = new int[of.length];
        for (int i = 0; i < r.length; i++) r[i] = Arrays.binarySearch(vertex, of[i]);
        return r;
    }
}
