package shotwright.mesh.complex;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
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
        Set<List<Long>> taken = new HashSet<>();
        for (int[] loop : loops) {
            for (int i = 0; i < loop.length; i++) {
                int p = loop[i];
                if (placed[p]) continue;
                placed[p] = true;
                for (int tries = 0; tries < 64 && !taken.add(o.bucket(p, by)); tries++) {
                    o.moveToward(p, loop[(i + 1) % loop.length], loop[(i + 2) % loop.length], by);
                }
            }
        }
        return o;
    }

    private List<Long> bucket(int p, double by) {
        return List.of(Math.round(px[p] / (by / 2)), Math.round(py[p] / (by / 2)));
    }

    private void moveToward(int p, int next, int afterNext, double by) {
        double dx = px[next] - px[p], dy = py[next] - py[p];
        if (Math.hypot(dx, dy) < by) {
            dx = px[afterNext] - px[p];
            dy = py[afterNext] - py[p];
        }
        double d = Math.hypot(dx, dy);
        px[p] += d > 0 ? by * dx / d : by;
        py[p] += d > 0 ? by * dy / d : 0;
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
