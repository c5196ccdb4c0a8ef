package shotwright.intake;

import java.util.function.IntFunction;
import shotwright.geom.Vec3;

/**
 * Splits a polygon in space, convex or not, into triangles over its own corners by cutting off ears: corners that turn the polygon's way
 * and whose triangle holds no other corner. The polygon is looked at along its Newell normal. A polygon that crosses itself has no ears at
 * some point; the rest is then split as a fan, so that every side stays matched.
 */
final class EarClipping {
    private final IntFunction<Vec3> place;
    private final int[] ring;
    private final int u;
    private final int v;
    private final double side;
    private final double[] x;
    private final double[] y;

    /** Told of each triangle, corners in the polygon's direction. */
    @FunctionalInterface
    interface Sink {
        void triangle(int a, int b, int c);
    }

    private EarClipping(int[] ring, IntFunction<Vec3> place) {
        this.ring = ring;
        this.place = place;
        Vec3 n = newell();
        double ax = Math.abs(n.x()), ay = Math.abs(n.y()), az = Math.abs(n.z());
        int drop = ax >= ay && ax >= az ? 0 : ay >= az ? 1 : 2;
        u = (drop + 1) % 3;
        v = (drop + 2) % 3;
        side = Math.signum(axis(n, drop));
        x = new double[ring.length];
        y = new double[ring.length];
        for (int i = 0; i < ring.length; i++) {
            Vec3 p = place.apply(ring[i]);
            x[i] = axis(p, u);
            y[i] = axis(p, v) * (side == 0 ? 1 : side);
        }
    }

    /**
     * Splits a polygon.
     *
     * @param ring its corners in order
     * @param place where a corner lies
     * @return whether ears were found to the end; false when the polygon crosses itself or has no area
     */
    static boolean split(int[] ring, IntFunction<Vec3> place, Sink sink) {
        if (ring.length < 3) return true;
        if (ring.length == 3) {
            sink.triangle(ring[0], ring[1], ring[2]);
            return true;
        }
        return new EarClipping(ring, place).run(sink);
    }

    private boolean run(Sink sink) {
        int n = ring.length;
        int[] next = new int[n], prev = new int[n];
        for (int i = 0; i < n; i++) {
            next[i] = (i + 1) % n;
            prev[i] = (i + n - 1) % n;
        }
        int left = n, at = 0, idle = 0;
        while (left > 3 && idle <= left) {
            int a = prev[at], c = next[at];
            if (side != 0 && isEar(a, at, c, next)) {
                sink.triangle(ring[a], ring[at], ring[c]);
                next[a] = c;
                prev[c] = a;
                left--;
                idle = 0;
                at = next[c];
            } else {
                idle++;
                at = c;
            }
        }
        boolean good = left == 3;
        for (int b = next[at]; next[b] != at; b = next[b]) sink.triangle(ring[at], ring[b], ring[next[b]]);
        return good && side != 0;
    }

    private boolean isEar(int a, int b, int c, int[] next) {
        if (!(turn(a, b, c) > 0)) return false;
        for (int i = next[c]; i != a; i = next[i]) {
            if (ring[i] == ring[a] || ring[i] == ring[b] || ring[i] == ring[c]) continue;
            if (turn(a, b, i) >= 0 && turn(b, c, i) >= 0 && turn(c, a, i) >= 0) return false;
        }
        return true;
    }

    private double turn(int a, int b, int c) {
        return (x[b] - x[a]) * (y[c] - y[a]) - (y[b] - y[a]) * (x[c] - x[a]);
    }

    private Vec3 newell() {
        Vec3 o = place.apply(ring[0]), n = Vec3.ZERO;
        for (int i = 1; i + 1 < ring.length; i++) {
            Vec3 p = place.apply(ring[i]).minus(o), q = place.apply(ring[i + 1]).minus(o);
            n = n.plus(p.cross(q));
        }
        return n;
    }

    private static double axis(Vec3 p, int i) {
        return i == 0 ? p.x() : i == 1 ? p.y() : p.z();
    }
}
