package shotwright.demo;

import java.util.ArrayList;
import java.util.List;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;

/** Rows of points for rings: circles, polygons, rounded corners, and the move along the normal that gives a wall its draft. */
final class Rows {
    private Rows() {}

    static double tanDeg(double angleDeg) {
        return StrictMath.tan(StrictMath.toRadians(angleDeg));
    }

    static Vec2 polar(double radius, double angleDeg) {
        double a = StrictMath.toRadians(angleDeg);
        return new Vec2(radius * StrictMath.cos(a), radius * StrictMath.sin(a));
    }

    /** Counter-clockwise points on a circle round the origin, the first on the x axis turned by the start angle. */
    static List<Vec2> circle(double radius, int count, double startDeg) {
        List<Vec2> p = new ArrayList<>();
        for (int i = 0; i < count; i++) p.add(polar(radius, startDeg + 360.0 * i / count));
        return p;
    }

    /** A closed row with its corners rounded; corner i gets radii[i], 0 leaves it as it is. Counter-clockwise or clockwise. */
    static List<Vec2> rounded(List<Vec2> corners, double[] radii, int steps) {
        List<Vec2> out = new ArrayList<>();
        int n = corners.size();
        for (int i = 0; i < n; i++) {
            Vec2 c = corners.get(i);
            if (radii[i] == 0) {
                out.add(c);
                continue;
            }
            Vec2 u = corners.get((i + n - 1) % n).minus(c).unit();
            Vec2 v = corners.get((i + 1) % n).minus(c).unit();
            double half = StrictMath.acos(Math.clamp(u.dot(v), -1, 1)) / 2;
            Vec2 middle = c.plus(u.plus(v).unit().times(radii[i] / StrictMath.sin(half)));
            double back = radii[i] / StrictMath.tan(half);
            Vec2 from = c.plus(u.times(back)).minus(middle),
                    to = c.plus(v.times(back)).minus(middle);
            double start = StrictMath.atan2(from.y(), from.x());
            double sweep = StrictMath.atan2(from.cross(to), from.dot(to));
            for (int k = 0; k <= steps; k++) {
                double a = start + sweep * k / steps;
                out.add(middle.plus(new Vec2(StrictMath.cos(a), StrictMath.sin(a)).times(radii[i])));
            }
        }
        return out;
    }

    /** Every side of a counter-clockwise closed row moved inward by the same distance. */
    static List<Vec2> inward(List<Vec2> row, double by) {
        List<Vec2> out = new ArrayList<>();
        int n = row.size();
        for (int i = 0; i < n; i++) {
            Vec2 p = row.get(i);
            Vec2 a = p.minus(row.get((i + n - 1) % n)).unit().left();
            Vec2 b = row.get((i + 1) % n).minus(p).unit().left();
            out.add(p.plus(a.plus(b).times(by / (1 + a.dot(b)))));
        }
        return out;
    }

    static List<Vec3> atZ(List<Vec2> row, double z) {
        return row.stream().map(p -> p.atZ(z)).toList();
    }
}
