package shotwright.machining.clear;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import shotwright.geom.Vec2;
import shotwright.machining.contour.Contour;
import shotwright.machining.contour.Offset;
import shotwright.progress.Progress;
import shotwright.region.Region;

/**
 * Clearing by a front that never advances more than one step: where the centre has been grows by the step, cut by where it may be, until
 * nothing is gained. On a straight front a cutter of radius R then meets metal over acos(1 − step/R), and not much more anywhere else.
 */
public final class Wavefront {
    private static final int QUARTER_CHORDS = 8;
    /** Places of the front left out, mm. */
    private static final double THIN_MM = 0.003;
    /** A front this near to the wall is left to the last round along the wall, mm. */
    private static final double AT_WALL_MM = 0.02;

    private static final double LEAST_LINE_MM = 0.05;
    private static final double LEAST_GAIN_MM2 = 0.02;
    private static final int MOST_STEPS = 20_000;
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private Wavefront() {}

    /**
     * All fronts, the last one the round along the walls.
     *
     * @param allowed one piece where the centre may be
     * @param cleared where it has been; must share some area with it
     * @param stepMm how far the front advances at once
     */
    public static List<Front> fronts(Region allowed, Region cleared, double stepMm, Progress progress) {
        if (!(stepMm > 0)) throw new IllegalArgumentException("step: " + stepMm + " mm is not above zero");
        List<Front> fronts = new ArrayList<>();
        Region been = cleared.intersection(allowed);
        IndexedFacetDistance wall = new IndexedFacetDistance(allowed.geometry().getBoundary());
        double whole = allowed.area();
        for (int step = 0; step < MOST_STEPS; step++) {
            progress.at("clearing", Math.min(1, been.area() / Math.max(whole, 1e-9)));
            Region next = been.offset(stepMm, Region.Join.ROUND, QUARTER_CHORDS)
                    .simplify(THIN_MM)
                    .intersection(allowed);
            if (next.area() - been.area() < LEAST_GAIN_MM2) break;
            List<Contour> lines = new ArrayList<>();
            for (Contour ring : Offset.borders(next)) lines.addAll(awayFrom(wall, ring));
            if (!lines.isEmpty()) fronts.add(new Front(been, lines));
            been = next;
        }
        fronts.add(new Front(been, Offset.borders(allowed)));
        return fronts;
    }

    /** The runs of a ring that are not the wall. */
    private static List<Contour> awayFrom(IndexedFacetDistance wall, Contour ring) {
        List<Vec2> points = ring.points();
        int n = points.size(), start = -1;
        boolean[] away = new boolean[n];
        for (int i = 0; i < n; i++) {
            Vec2 m = points.get(i).plus(points.get((i + 1) % n)).times(0.5);
            away[i] = distance(wall, m) > AT_WALL_MM;
            if (!away[i]) start = i + 1;
        }
        if (start < 0) return List.of(ring);
        List<Contour> runs = new ArrayList<>();
        List<Vec2> run = new ArrayList<>();
        for (int k = 0; k <= n; k++) {
            int i = (start + k) % n;
            if (k < n && away[i]) {
                if (run.isEmpty()) run.add(points.get(i));
                run.add(points.get((i + 1) % n));
            } else if (!run.isEmpty()) {
                Contour line = new Contour(run, false);
                if (line.lengthMm() >= LEAST_LINE_MM) runs.add(line);
                run = new ArrayList<>();
            }
        }
        return runs;
    }

    private static double distance(IndexedFacetDistance wall, Vec2 p) {
        return wall.distance(FACTORY.createPoint(new Coordinate(p.x(), p.y())));
    }

    /** Where the region is so narrow that the front becomes a slot: what an opening by the step takes away. */
    public static Region narrow(Region allowed, double stepMm) {
        Region wide = allowed.offset(-stepMm).offset(stepMm * 1.02);
        return allowed.difference(wide);
    }
}
