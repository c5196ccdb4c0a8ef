package shotwright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.geom.Vec2;

/**
 * Finds the arcs in a ring of chords. Neighbouring points that lie on one circle, close enough together to have come from one, become an arc;
 * the rest is thinned out after Douglas and Peucker (1973).
 */
final class ContourFit {
    /** Points of one arc lie this near to its circle: rounding of part files, far below what is cut. */
    private static final double ON_CIRCLE = 1e-4;

    /** Points nearer to each other than this are one. */
    private static final double SAME = 1e-3;

    /** A chord of an arc turns no further than this; the sides of a hexagon or octagon are no arcs. */
    private static final double MOST_TURN_RAD = Math.toRadians(24);

    private static final int LEAST_CHORDS = 4;
    private static final double LARGEST_RADIUS = 5000;

    private final List<Vec2> points = new ArrayList<>();
    private final double tolerance;

    ContourFit(List<Vec2> ring, double tolerance) {
        this.tolerance = tolerance;
        for (Vec2 p : ring) if (points.isEmpty() || p.distance(points.getLast()) > SAME) points.add(p);
        while (points.size() > 1 && points.getFirst().distance(points.getLast()) <= SAME) points.removeLast();
    }

    Contour contour() {
        int n = points.size();
        if (n < 3) return Contour.straight(points);
        if (arcEnd(0, n) == n) return whole();
        List<Contour.Corner> out = new ArrayList<>();
        int start = start(), i = start, end = start + n;
        List<Vec2> straight = new ArrayList<>(List.of(at(i)));
        while (i < end) {
            int to = arcEnd(i, end);
            if (to > i) {
                thinned(straight, out);
                straight = new ArrayList<>(List.of(at(to)));
                out.add(new Contour.Corner(at(i), bulge(i, to)));
                i = to;
            } else {
                straight.add(at(++i));
            }
        }
        thinned(straight, out);
        return new Contour(out);
    }

    /** All points on one circle: two half circles. */
    private Contour whole() {
        int half = points.size() / 2;
        return new Contour(List.of(
                new Contour.Corner(at(0), bulge(0, half)), new Contour.Corner(at(half), bulge(half, points.size()))));
    }

    private Vec2 at(int i) {
        return points.get(Math.floorMod(i, points.size()));
    }

    /** The end of an arc, so that none is cut in two; without any, the sharpest corner. */
    private int start() {
        int sharpest = 0;
        for (int i = 0; i < points.size(); i++) {
            int to = arcEnd(i, i + points.size());
            if (to > i) return to;
            if (Math.abs(turn(i)) > Math.abs(turn(sharpest))) sharpest = i;
        }
        return sharpest;
    }

    private double turn(int i) {
        Vec2 in = at(i).minus(at(i - 1)), out = at(i + 1).minus(at(i));
        return Math.atan2(in.cross(out), in.dot(out));
    }

    /** How far an arc from a point reaches, no further than the limit; the point itself when none begins there. */
    private int arcEnd(int from, int limit) {
        int reach = from;
        double sign = 0;
        for (int to = from + 2; to <= limit; to++) {
            double turn = turn(to - 1);
            if (Math.abs(turn) > MOST_TURN_RAD || turn * sign < 0 || Math.abs(turn) < 1e-9) break;
            sign = turn;
            if (to - from < LEAST_CHORDS) continue;
            Contour.Circle c = circle(at(from), at((from + to) / 2), to - from == points.size() ? at(to - 1) : at(to));
            if (c == null || !holds(c, from, to)) break;
            reach = to;
        }
        return reach;
    }

    private boolean holds(Contour.Circle c, int from, int to) {
        for (int k = from; k <= to; k++) {
            if (Math.abs(at(k).distance(c.centre()) - c.radius()) > ON_CIRCLE) return false;
            if (k < to && 2 * Math.asin(Math.min(1, at(k).distance(at(k + 1)) / 2 / c.radius())) > MOST_TURN_RAD)
                return false;
        }
        return true;
    }

    private static Contour.@Nullable Circle circle(Vec2 p, Vec2 q, Vec2 r) {
        Vec2 a = q.minus(p), b = r.minus(p);
        double twice = 2 * a.cross(b);
        if (Math.abs(twice) < 1e-12) return null;
        double u = a.dot(a), v = b.dot(b);
        Vec2 m = new Vec2((u * b.y() - v * a.y()) / twice, (v * a.x() - u * b.x()) / twice);
        return m.length() > LARGEST_RADIUS ? null : new Contour.Circle(p.plus(m), m.length());
    }

    /** The bulge of the arc over the points between: the sum of what the chords turn at the centre. */
    private double bulge(int from, int to) {
        int last = to - from == points.size() ? to - 1 : to;
        Contour.Circle c = circle(at(from), at((from + to) / 2), at(last));
        if (c == null) return 0;
        double angle = 0;
        for (int k = from; k < to; k++) {
            Vec2 u = at(k).minus(c.centre()), v = at(k + 1).minus(c.centre());
            angle += Math.atan2(u.cross(v), u.dot(v));
        }
        return Math.tan(angle / 4);
    }

    /** Adds a row of points, the last left out, as straight lines. */
    private void thinned(List<Vec2> row, List<Contour.Corner> out) {
        if (row.size() < 2) return;
        out.add(new Contour.Corner(row.getFirst(), 0));
        between(row, 0, row.size() - 1, out);
    }

    private void between(List<Vec2> row, int from, int to, List<Contour.Corner> out) {
        double most = tolerance;
        int farthest = -1;
        for (int k = from + 1; k < to; k++) {
            double d = off(row.get(k), row.get(from), row.get(to));
            if (d > most) {
                most = d;
                farthest = k;
            }
        }
        if (farthest < 0) return;
        between(row, from, farthest, out);
        out.add(new Contour.Corner(row.get(farthest), 0));
        between(row, farthest, to, out);
    }

    private static double off(Vec2 p, Vec2 a, Vec2 b) {
        Vec2 d = b.minus(a);
        double l = d.dot(d), share = l == 0 ? 0 : Math.clamp(p.minus(a).dot(d) / l, 0, 1);
        return p.distance(a.plus(d.times(share)));
    }
}
