package shotwright.drawing;

import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import shotwright.geom.Vec2;

/** Finds where a note may stand: of places round its point the one where words and leader cover least of what is drawn. Paper millimetres. */
final class NotePlaces {
    private static final double HIGH = 4.2;
    /** Words keep this far from what is drawn. */
    private static final double AIR = 1;

    private static final double TIGHT = 0.5;
    private static final double ACROSS = 4;

    private static final double[] FAR = {7, 11, 16, 23, 32};
    private static final int DIRECTIONS = 16;
    private static final int SPOTS = 12;

    private final Rectangle2D sheet;
    private final List<? extends Shape> things;
    private final List<Rectangle2D> taken = new ArrayList<>();
    private final List<Line2D> leaders = new ArrayList<>();

    NotePlaces(Rectangle2D sheet, List<? extends Shape> things) {
        this.sheet = sheet;
        this.things = things;
    }

    /** A place, and whether words there lie across an edge or something worse. */
    private record Choice(Vec2 shelf, boolean crowded) {}

    /** Whether no place is left where words so wide cross nothing. */
    boolean isCrowded(Vec2 point, double wide) {
        return best(point, wide).crowded;
    }

    /** Where the shelf of a note begins; its words run away from the point. The place is taken from then on. */
    Vec2 shelf(Vec2 point, double wide) {
        Vec2 best = best(point, wide).shelf;
        taken.add(words(point, best, wide));
        leaders.add(line(point, best));
        return best;
    }

    private Choice best(Vec2 point, double wide) {
        Vec2 best = point.plus(new Vec2(FAR[0], -FAR[0]));
        double least = Double.MAX_VALUE;
        for (double far : FAR) {
            for (int i = 0; i < DIRECTIONS; i++) {
                double turn = 2 * Math.PI * (i + 0.5) / DIRECTIONS;
                Vec2 shelf = point.plus(new Vec2(far * Math.cos(turn), far * Math.sin(turn)));
                double cost = cost(point, shelf, wide) + 0.02 * far;
                if (cost >= least) continue;
                least = cost;
                best = shelf;
            }
        }
        return new Choice(best, least >= ACROSS);
    }

    private double cost(Vec2 point, Vec2 shelf, double wide) {
        Rectangle2D words = words(point, shelf, wide);
        Line2D leader = line(point, shelf);
        double cost = sheet.contains(words) ? 0 : 100;
        for (Rectangle2D t : taken) cost += t.intersects(words) ? 50 : leader.intersects(t) ? 20 : 0;
        for (Line2D l : leaders) cost += l.intersects(words) ? 20 : l.intersectsLine(leader) ? 5 : 0;
        Rectangle2D round = new Rectangle2D.Double(
                words.getX() - AIR, words.getY() - AIR, words.getWidth() + 2 * AIR, words.getHeight() + 2 * AIR);
        for (Shape s : things) {
            if (s.intersects(words)) cost += s.contains(words) ? 1 : ACROSS;
            if (s.intersects(words) ? s.contains(words) && !s.contains(round) : s.intersects(round)) cost += TIGHT;
            if (!s.contains(point.x(), point.y())) cost += crossing(s, leader);
        }
        return cost;
    }

    private static double crossing(Shape s, Line2D leader) {
        int inside = 0;
        for (int i = 1; i <= SPOTS; i++) {
            double share = (double) i / SPOTS;
            Point2D p = new Point2D.Double(
                    leader.getX1() + (leader.getX2() - leader.getX1()) * share,
                    leader.getY1() + (leader.getY2() - leader.getY1()) * share);
            if (s.contains(p)) inside++;
        }
        return inside == 0 ? 0 : 1 + 0.1 * inside;
    }

    private static Line2D line(Vec2 from, Vec2 to) {
        return new Line2D.Double(from.x(), from.y(), to.x(), to.y());
    }

    private static Rectangle2D words(Vec2 point, Vec2 shelf, double wide) {
        double x = shelf.x() >= point.x() ? shelf.x() : shelf.x() - wide;
        return new Rectangle2D.Double(x, shelf.y() - HIGH, wide, HIGH + 0.8);
    }
}
