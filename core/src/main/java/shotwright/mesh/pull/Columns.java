package shotwright.mesh.pull;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.mesh.Edges;
import shotwright.mesh.Shadow;
import shotwright.mesh.TriMesh;

/**
 * The vertices of a part gathered into columns along the pull. In each column the parting must lie below the lowest vertex of a visible up
 * facet (U) and above the highest vertex of a visible down facet (L); between the two it is free.
 */
public final class Columns {
    private static final double SAME_COLUMN = 1e-5;
    private static final double ON_THE_RIM = 3e-5;

    private final TriMesh mesh;
    private final int[] columnOf;
    private final double[] x;
    private final double[] y;
    private final double[] lower;
    private final double[] upper;
    private final boolean[] outer;

    private Columns(TriMesh mesh, int[] columnOf, int count) {
        this.mesh = mesh;
        this.columnOf = columnOf;
        x = new double[count];
        y = new double[count];
        lower = new double[count];
        upper = new double[count];
        outer = new boolean[count];
        Arrays.fill(lower, Double.NEGATIVE_INFINITY);
        Arrays.fill(upper, Double.POSITIVE_INFINITY);
        for (int v = 0; v < columnOf.length; v++) {
            x[columnOf[v]] = mesh.x(v);
            y[columnOf[v]] = mesh.y(v);
        }
    }

    /**
     * Gathers the columns, sets their bands from what is visible, and finds those on the outer rim of the shadow.
     *
     * @param leanDeg how far a facet leans off the pull and still stands
     */
    public static Columns of(TriMesh mesh, Edges edges, Sight[] sight, double leanDeg, Shadow shadow) {
        double diagonal = mesh.box().diagonal();
        int[] columnOf = new int[mesh.vertexCount()];
        Columns c = new Columns(mesh, columnOf, group(mesh, SAME_COLUMN * diagonal, columnOf));
        for (int f = 0; f < sight.length; f++) {
            if (sight[f] != Sight.UP && sight[f] != Sight.DOWN) continue;
            for (int k = 0; k < 3; k++) {
                int v = mesh.corner(f, k);
                c.bind(v, mesh.z(v), sight[f] == Sight.UP);
            }
        }
        new WallBounds(mesh, edges, sight, leanDeg, SAME_COLUMN * diagonal)
                .find(b -> c.bind(b.vertex(), b.height(), b.upper()));
        c.findOuter(shadow, ON_THE_RIM * diagonal);
        return c;
    }

    private void bind(int vertex, double z, boolean above) {
        int j = columnOf[vertex];
        if (above) upper[j] = Math.min(upper[j], z);
        else lower[j] = Math.max(lower[j], z);
    }

    /** Numbers the columns: vertices nearer than the distance in the plane fall together, by a grid and its eight neighbours. */
    private static int group(TriMesh mesh, double distance, int[] columnOf) {
        Map<Long, List<Integer>> grid = new HashMap<>();
        int n = 0;
        for (int v = 0; v < columnOf.length; v++) {
            long i = (long) Math.floor(mesh.x(v) / distance), j = (long) Math.floor(mesh.y(v) / distance);
            int found = -1;
            for (long di = -1; di <= 1 && found < 0; di++) {
                for (long dj = -1; dj <= 1 && found < 0; dj++)
                    found = near(mesh, v, grid.get(cell(i + di, j + dj)), distance);
            }
            if (found >= 0) {
                columnOf[v] = columnOf[found];
            } else {
                columnOf[v] = n++;
                grid.computeIfAbsent(cell(i, j), k -> new ArrayList<>(1)).add(v);
            }
        }
        return n;
    }

    private static long cell(long i, long j) {
        return i * 0x9E3779B97F4A7C15L + j;
    }

    private static int near(
            TriMesh mesh, int v, @org.jspecify.annotations.Nullable List<Integer> candidates, double distance) {
        if (candidates == null) return -1;
        for (int c : candidates) {
            if (Math.hypot(mesh.x(c) - mesh.x(v), mesh.y(c) - mesh.y(v)) <= distance) return c;
        }
        return -1;
    }

    private void findOuter(Shadow shadow, double distance) {
        GeometryFactory factory = new GeometryFactory();
        List<LineString> rings = new ArrayList<>();
        for (List<Vec2> ring : shadow.region().exteriors()) {
            Coordinate[] c = new Coordinate[ring.size() + 1];
            for (int i = 0; i < c.length; i++) {
                Vec2 p = ring.get(i % ring.size());
                c[i] = new Coordinate(p.x(), p.y());
            }
            rings.add(factory.createLineString(c));
        }
        Geometry rim = factory.buildGeometry(rings);
        if (rim.isEmpty()) return;
        IndexedFacetDistance index = new IndexedFacetDistance(rim);
        for (int j = 0; j < outer.length; j++) {
            if (Double.isInfinite(lower[j]) && Double.isInfinite(upper[j])) continue;
            outer[j] = index.isWithinDistance(factory.createPoint(new Coordinate(x[j], y[j])), distance);
        }
    }

    public int count() {
        return x.length;
    }

    public TriMesh mesh() {
        return mesh;
    }

    public int columnOf(int vertex) {
        return columnOf[vertex];
    }

    public double x(int column) {
        return x[column];
    }

    public double y(int column) {
        return y[column];
    }

    /** The parting must not lie lower here; −∞ when nothing visible looks down. */
    public double lower(int column) {
        return lower[column];
    }

    /** The parting must not lie higher here; +∞ when nothing visible looks up. */
    public double upper(int column) {
        return upper[column];
    }

    /** On the outer rim of the shadow. */
    public boolean isOuter(int column) {
        return outer[column];
    }

    /** Heights a plane may take. */
    public record FreeBand(double low, double high) {}

    /** The band of heights in which the outer rim can be parted by a plane; empty (low above high) when it must step. */
    public FreeBand outerBand() {
        double low = Double.NEGATIVE_INFINITY, high = Double.POSITIVE_INFINITY;
        for (int j = 0; j < outer.length; j++) {
            if (!outer[j]) continue;
            low = Math.max(low, lower[j]);
            high = Math.min(high, upper[j]);
        }
        return new FreeBand(low, high);
    }

    /** Columns where a visible down facet lies above a visible up facet by more than a distance: no straight pull can form both. */
    public List<Vec3> contradictions(double distance) {
        List<Vec3> places = new ArrayList<>();
        for (int j = 0; j < x.length; j++) {
            if (lower[j] > upper[j] + distance) places.add(new Vec3(x[j], y[j], (lower[j] + upper[j]) / 2));
        }
        return places;
    }
}
