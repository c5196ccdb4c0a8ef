package shotwright.machining.letter;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.densify.Densifier;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Triangle;
import org.tinfour.common.Vertex;
import org.tinfour.standard.IncrementalTin;
import org.tinfour.utils.TriangleCollector;
import shotwright.geom.Vec2;
import shotwright.region.Region;

/**
 * The middle lines of a region: where two parts of its border are equally near. Points are put on the border, the centres of the circles
 * through three neighbouring ones are joined where the two points between them are seen from the middle under a wide angle; narrow angles
 * belong to points of one side.
 */
public final class MedialAxis {
    /** Angle between the directions to the two points from which a line counts. */
    private static final double LEAST_RAD = Math.toRadians(50);

    private static final double ROUNDING_MM = 1e-6;

    private final Region shape;
    private final Map<Coordinate, List<Coordinate>> beside = new LinkedHashMap<>();

    private MedialAxis(Region shape) {
        this.shape = shape;
    }

    private record Side(Coordinate a, Coordinate b) {}

    /**
     * The lines, each from a branching or an end to the next.
     *
     * @param spacingMm distance of the points on the border; a fifth of the tip's width keeps within a micrometre or two
     */
    public static List<List<Vec2>> lines(Region shape, double spacingMm) {
        if (!(spacingMm > 0)) throw new IllegalArgumentException("spacing: " + spacingMm + " mm is not above zero");
        if (shape.isEmpty()) return List.of();
        MedialAxis axis = new MedialAxis(shape);
        IncrementalTin triangles = new IncrementalTin(spacingMm);
        Set<Coordinate> points = new LinkedHashSet<>(
                List.of(Densifier.densify(shape.geometry(), spacingMm).getCoordinates()));
        int number = 0;
        for (Coordinate c : points) triangles.add(new Vertex(c.x, c.y, 0, number++));
        Map<Side, Coordinate> centres = new HashMap<>();
        TriangleCollector.visitTriangles(triangles, t -> axis.join(centres, t));
        return axis.chains();
    }

    private void join(Map<Side, Coordinate> centres, Vertex[] triangle) {
        Coordinate[] c = new Coordinate[3];
        for (int k = 0; k < 3; k++) c[k] = new Coordinate(triangle[k].getX(), triangle[k].getY());
        Coordinate exactly = Triangle.circumcentreDD(c[0], c[1], c[2]);
        Coordinate centre = new Coordinate(rounded(exactly.x), rounded(exactly.y));
        boolean inside = shape.contains(centre.x, centre.y);
        for (int k = 0; k < 3; k++) {
            Coordinate a = c[k], b = c[(k + 1) % 3];
            Coordinate other = centres.put(a.compareTo(b) < 0 ? new Side(a, b) : new Side(b, a), centre);
            if (other == null || !inside || !shape.contains(other.x, other.y)) continue;
            if (other.equals(centre) || !wide(centre, other, a, b)) continue;
            beside.computeIfAbsent(other, p -> new ArrayList<>()).add(centre);
            beside.computeIfAbsent(centre, p -> new ArrayList<>()).add(other);
        }
    }

    /** Centres of circles through four points come out as one. */
    private static double rounded(double v) {
        return Math.rint(v / ROUNDING_MM) * ROUNDING_MM;
    }

    private static boolean wide(Coordinate p, Coordinate q, Coordinate a, Coordinate b) {
        Vec2 m = new Vec2((p.x + q.x) / 2, (p.y + q.y) / 2);
        Vec2 u = new Vec2(a.x, a.y).minus(m), v = new Vec2(b.x, b.y).minus(m);
        return Math.abs(Math.atan2(u.cross(v), u.dot(v))) > LEAST_RAD;
    }

    private List<List<Vec2>> chains() {
        List<List<Vec2>> chains = new ArrayList<>();
        Set<Side> done = new HashSet<>();
        beside.replaceAll((c, to) -> List.copyOf(new LinkedHashSet<>(to)));
        for (boolean rings : new boolean[] {false, true})
            for (Coordinate start : beside.keySet()) {
                if (!rings && at(start).size() == 2) continue;
                for (Coordinate next : at(start))
                    if (done.add(new Side(start, next))) chains.add(walk(start, next, done));
            }
        return chains;
    }

    private List<Coordinate> at(Coordinate c) {
        return beside.getOrDefault(c, List.of());
    }

    private List<Vec2> walk(Coordinate start, Coordinate next, Set<Side> done) {
        List<Vec2> line = new ArrayList<>(List.of(new Vec2(start.x, start.y)));
        Coordinate from = start, to = next;
        while (true) {
            done.add(new Side(to, from));
            line.add(new Vec2(to.x, to.y));
            List<Coordinate> ways = at(to);
            if (ways.size() != 2 || to.equals(start)) return line;
            Coordinate on = ways.get(0).equals(from) ? ways.get(1) : ways.get(0);
            if (!done.add(new Side(to, on))) return line;
            from = to;
            to = on;
        }
    }
}
