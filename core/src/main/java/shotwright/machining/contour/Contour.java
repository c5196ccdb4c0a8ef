package shotwright.machining.contour;

import java.util.List;
import shotwright.geom.Vec2;

/**
 * A line along which a tip may go at one level, the free side on its left: cutting along it the cutter climbs.
 *
 * @param points places in order; a closed line does not repeat the first
 * @param closed the last place joins the first
 */
public record Contour(List<Vec2> points, boolean closed) {
    public Contour {
        points = List.copyOf(points);
    }

    /** Length, the closing piece included, mm. */
    public double lengthMm() {
        double sum = 0;
        for (int i = 1; i < points.size(); i++) sum += points.get(i - 1).distance(points.get(i));
        return closed && points.size() > 1 ? sum + points.getLast().distance(points.getFirst()) : sum;
    }

    /** Area enclosed counter-clockwise, below zero when it runs clockwise; 0 for an open line. */
    public double areaMm2() {
        double twice = 0;
        for (int i = 0; closed && i < points.size(); i++)
            twice += points.get(i).cross(points.get((i + 1) % points.size()));
        return twice / 2;
    }
}
