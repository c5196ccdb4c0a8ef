package shotwright.drawing;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Hatching cut exactly to an area: the area is turned so that the lines lie flat, and each line is kept between its crossings. */
final class Hatch {
    private static final int MOST_LINES = 5000;

    private Hatch() {}

    /** Lines across an area (even-odd), angle counter-clockwise on paper with y down. */
    static Path2D lines(Shape area, double angleDeg, double pitch) {
        if (!(pitch > 0)) throw new IllegalArgumentException("pitch: " + pitch + " is not above zero");
        AffineTransform flat = AffineTransform.getRotateInstance(Math.toRadians(angleDeg));
        AffineTransform back = AffineTransform.getRotateInstance(-Math.toRadians(angleDeg));
        List<double[]> sides = sides(flat.createTransformedShape(area));
        Rectangle2D box = flat.createTransformedShape(area).getBounds2D();
        double step = Math.max(pitch, box.getHeight() / MOST_LINES);
        Path2D out = new Path2D.Double();
        for (double k = Math.ceil(box.getMinY() / step); k * step < box.getMaxY(); k++) {
            double y = k * step;
            double[] x = crossings(sides, y);
            for (int i = 0; i + 1 < x.length; i += 2) {
                out.moveTo(x[i], y);
                out.lineTo(x[i + 1], y);
            }
        }
        out.transform(back);
        return out;
    }

    private static double[] crossings(List<double[]> sides, double y) {
        return sides.stream()
                .filter(s -> s[1] <= y != s[3] <= y)
                .mapToDouble(s -> s[0] + (s[2] - s[0]) * (y - s[1]) / (s[3] - s[1]))
                .sorted()
                .toArray();
    }

    /** The straight sides of a flattened shape as x₁ y₁ x₂ y₂. */
    private static List<double[]> sides(Shape shape) {
        List<double[]> out = new ArrayList<>();
        double[] c = new double[6], start = new double[2], now = new double[2];
        for (PathIterator i = shape.getPathIterator(null, 0.02); !i.isDone(); i.next()) {
            int kind = i.currentSegment(c);
            double[] to = kind == PathIterator.SEG_CLOSE ? start.clone() : Arrays.copyOf(c, 2);
            if (kind == PathIterator.SEG_MOVETO) {
                if (now[0] != start[0] || now[1] != start[1])
                    out.add(new double[] {now[0], now[1], start[0], start[1]});
                start = to.clone();
            } else {
                out.add(new double[] {now[0], now[1], to[0], to[1]});
            }
            now = to;
        }
        return out;
    }
}
