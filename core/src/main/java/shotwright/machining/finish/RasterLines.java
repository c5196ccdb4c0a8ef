package shotwright.machining.finish;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.contact.ExactPath;
import shotwright.region.Region;

/**
 * Parallel lines over a zone, to and fro, each as far from the last as the steepest place across it allows: the step along the surface is
 * kept, the step in plan is that times the cosine of the slope across.
 */
public final class RasterLines {
    private static final double LEAST_COS = 0.05;
    private static final double LEAST_LINE_MM = 0.02;
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private RasterLines() {}

    /**
     * The paths, line after line.
     *
     * @param zone where the axis may stand
     * @param directionRad direction of the lines, counter-clockwise from x
     * @param stepMm step along the surface the tips lie on, see {@link shotwright.machining.feed.Cusp#tipStepMm}
     */
    public static List<List<Vec3>> paths(Region zone, double directionRad, double stepMm, ExactPath exact) {
        if (!(stepMm > 0)) throw new IllegalArgumentException("step: " + stepMm + " mm is not above zero");
        List<List<Vec3>> paths = new ArrayList<>();
        if (zone.isEmpty()) return paths;
        Region lying = zone.place(-directionRad, Vec2.ZERO);
        Vec2 along = new Vec2(Math.cos(directionRad), Math.sin(directionRad));
        double y = lying.min().y() + Math.min(1e-4, stepMm / 100),
                last = lying.max().y();
        boolean back = false;
        while (true) {
            double steepest = 0;
            List<double[]> spans = spans(lying, y);
            for (double[] span : back ? spans.reversed() : spans) {
                List<Vec2> line =
                        List.of(turned(back ? span[1] : span[0], y, along), turned(back ? span[0] : span[1], y, along));
                List<Vec3> path = exact.thinned(line);
                paths.add(path);
                steepest = Math.max(steepest, slopeAcross(path, along.left(), stepMm, exact));
            }
            if (y >= last - 1e-6) return paths;
            double plan = stepMm * Math.max(LEAST_COS, 1 / Math.hypot(1, steepest));
            y = Math.min(last - Math.min(1e-6, plan / 100), y + plan);
            back = !back;
        }
    }

    private static Vec2 turned(double x, double y, Vec2 along) {
        return along.times(x).plus(along.left().times(y));
    }

    /** The steepest way from a path to where the next one may lie. */
    private static double slopeAcross(List<Vec3> path, Vec2 across, double offMm, ExactPath exact) {
        double steepest = 0;
        for (Vec3 p : path) {
            Vec2 q = p.xy().plus(across.times(offMm));
            double z = exact.seat(q.x(), q.y()).z();
            if (Double.isFinite(z) && Double.isFinite(p.z()))
                steepest = Math.max(steepest, Math.abs(z - p.z()) / offMm);
        }
        return steepest;
    }

    private static List<double[]> spans(Region zone, double y) {
        Geometry line = FACTORY.createLineString(new Coordinate[] {
            new Coordinate(zone.min().x() - 1, y), new Coordinate(zone.max().x() + 1, y)
        });
        Geometry cut = line.intersection(zone.geometry());
        List<double[]> spans = new ArrayList<>();
        for (int i = 0; i < cut.getNumGeometries(); i++) {
            var box = cut.getGeometryN(i).getEnvelopeInternal();
            if (box.getWidth() >= LEAST_LINE_MM) spans.add(new double[] {box.getMinX(), box.getMaxX()});
        }
        spans.sort(Comparator.comparingDouble(s -> s[0]));
        return spans;
    }
}
