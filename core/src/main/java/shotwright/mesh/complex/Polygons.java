package shotwright.mesh.complex;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.RayCrossingCounter;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/** Sorts the loops of an outline into polygons with holes. */
final class Polygons {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private Polygons() {}

    /** A counter-clockwise loop and the clockwise loops directly inside it. */
    record Patch(int[] shell, List<int[]> holes) {}

    /**
     * Gives every clockwise loop to the smallest counter-clockwise one around it. Loops thinner than the tolerance are filled with slivers
     * at once.
     *
     * @return the patches, or null when a hole lies in no shell
     */
    static @Nullable List<Patch> nest(Outline o, double tolerance, IntList slivers) {
        List<int[]> shells = new ArrayList<>(), holes = new ArrayList<>();
        for (int[] loop : o.loops) {
            double area = o.area(loop);
            if (Math.abs(area) <= tolerance * o.length(loop) / 2) {
                for (int i = 1; i + 1 < loop.length; i++) slivers.add(loop[0], loop[i], loop[i + 1]);
            } else if (area > 0) {
                shells.add(loop);
            } else {
                holes.add(loop);
            }
        }
        shells.sort(Comparator.comparingDouble(o::area));
        List<Patch> patches = new ArrayList<>();
        List<Coordinate[]> rings = new ArrayList<>();
        for (int[] s : shells) {
            patches.add(new Patch(s, new ArrayList<>()));
            rings.add(ring(o, s));
        }
        for (int[] h : holes) {
            int home = 0;
            while (home < rings.size() && !inside(o, h, rings.get(home))) home++;
            if (home == rings.size()) return null;
            patches.get(home).holes().add(h);
        }
        return patches;
    }

    /** Decided by the first point that is not on the ring itself; when all are, by the middle of the first edge. */
    private static boolean inside(Outline o, int[] hole, Coordinate[] ring) {
        for (int p : hole) {
            int where = RayCrossingCounter.locatePointInRing(new Coordinate(o.px[p], o.py[p]), ring);
            if (where != Location.BOUNDARY) return where == Location.INTERIOR;
        }
        Coordinate middle = new Coordinate((o.px[hole[0]] + o.px[hole[1]]) / 2, (o.py[hole[0]] + o.py[hole[1]]) / 2);
        return RayCrossingCounter.locatePointInRing(middle, ring) != Location.EXTERIOR;
    }

    static Polygon polygon(Outline o, Patch p) {
        return FACTORY.createPolygon(
                FACTORY.createLinearRing(ring(o, p.shell())),
                p.holes().stream()
                        .map(h -> FACTORY.createLinearRing(ring(o, h)))
                        .toArray(org.locationtech.jts.geom.LinearRing[]::new));
    }

    private static Coordinate[] ring(Outline o, int[] loop) {
        Coordinate[] r = new Coordinate[loop.length + 1];
        for (int i = 0; i < loop.length; i++) r[i] = new Coordinate(o.px[loop[i]], o.py[loop[i]]);
        r[loop.length] = r[0].copy();
        return r;
    }

    /** The border point nearest to the first place where a loop is not a valid polygon; the first point when all are. */
    static int crossing(Outline o) {
        for (int[] loop : o.loops) {
            if (loop.length < 4) continue;
            TopologyValidationError error = new IsValidOp(polygon(o, new Patch(loop, List.of()))).getValidationError();
            if (error == null) continue;
            Coordinate at = error.getCoordinate();
            return Arrays.stream(loop)
                    .boxed()
                    .min(Comparator.comparingDouble(p -> Math.hypot(o.px[p] - at.x, o.py[p] - at.y)))
                    .orElse(loop[0]);
        }
        return o.loops.getFirst()[0];
    }
}
