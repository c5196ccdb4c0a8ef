package shotwright.drawing;

import java.awt.geom.Arc2D;
import java.awt.geom.Path2D;
import java.util.List;
import java.util.Optional;
import shotwright.geom.Vec2;

/**
 * A closed outline of straight lines and circular arcs.
 *
 * @param corners where pieces meet, in order
 */
public record Contour(List<Corner> corners) {
    /**
     * Where a piece begins.
     *
     * @param at its place
     * @param bulge of the piece that begins here: tangent of a quarter of the arc's angle, above zero when it turns counter-clockwise, 0 for a
     *     straight line
     */
    public record Corner(Vec2 at, double bulge) {}

    /**
     * A full circle.
     *
     * @param centre middle
     * @param radius radius
     */
    public record Circle(Vec2 centre, double radius) {}

    public Contour {
        corners = List.copyOf(corners);
        if (corners.size() < 2) throw new IllegalArgumentException("contour: it has " + corners.size() + " corners");
    }

    /** Straight from point to point and back to the first. */
    public static Contour straight(List<Vec2> ring) {
        return new Contour(ring.stream().map(p -> new Corner(p, 0)).toList());
    }

    /** A ring of many short chords with its arcs found; what is not an arc is thinned out by no more than the tolerance. */
    public static Contour fitted(List<Vec2> ring, double tolerance) {
        return new ContourFit(ring, tolerance).contour();
    }

    /** Area inside: corners by Gauss, the segments of the arcs r² (θ − sin θ) / 2 added or taken; below zero when it runs clockwise. */
    public double area() {
        double sum = 0;
        for (int i = 0; i < corners.size(); i++) {
            Vec2 p = corners.get(i).at(),
                    q = corners.get((i + 1) % corners.size()).at();
            double b = corners.get(i).bulge(), theta = 4 * Math.atan(b), r = radius(p.distance(q), b);
            sum += p.cross(q) / 2 + (b == 0 ? 0 : r * r * (theta - Math.sin(theta)) / 2);
        }
        return sum;
    }

    private static double radius(double chord, double bulge) {
        return bulge == 0 ? 0 : chord * (1 + bulge * bulge) / (4 * Math.abs(bulge));
    }

    /** The circle it is, when all its pieces are arcs of one. */
    public Optional<Circle> circle() {
        Vec2 middle = Vec2.ZERO;
        double radius = 0;
        for (int i = 0; i < corners.size(); i++) {
            if (corners.get(i).bulge() == 0) return Optional.empty();
            Vec2 p = corners.get(i).at(),
                    q = corners.get((i + 1) % corners.size()).at();
            Vec2 m = centre(p, q, corners.get(i).bulge());
            double r = m.distance(p);
            if (i > 0 && (m.distance(middle) > 1e-3 || Math.abs(r - radius) > 1e-3)) return Optional.empty();
            if (i == 0) {
                middle = m;
                radius = r;
            }
        }
        return Optional.of(new Circle(middle, radius));
    }

    /** Centre of an arc: off the chord's middle to the left by chord (1 − b²) / (4 b). */
    private static Vec2 centre(Vec2 p, Vec2 q, double bulge) {
        return p.plus(q).times(0.5).plus(q.minus(p).left().times((1 - bulge * bulge) / (4 * bulge)));
    }

    /** As a shape to draw. */
    public Path2D shape() {
        Path2D out = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        Vec2 start = corners.getFirst().at();
        out.moveTo(start.x(), start.y());
        for (int i = 0; i < corners.size(); i++) {
            Vec2 p = corners.get(i).at(),
                    q = corners.get((i + 1) % corners.size()).at();
            double b = corners.get(i).bulge();
            if (b == 0) {
                out.lineTo(q.x(), q.y());
                continue;
            }
            Vec2 m = centre(p, q, b);
            double r = m.distance(p), from = Math.toDegrees(Math.atan2(m.y() - p.y(), p.x() - m.x()));
            // the shape's angles run clockwise where y runs up
            double turn = -Math.toDegrees(4 * Math.atan(b));
            out.append(new Arc2D.Double(m.x() - r, m.y() - r, 2 * r, 2 * r, from, turn, Arc2D.OPEN), true);
        }
        out.closePath();
        return out;
    }
}
