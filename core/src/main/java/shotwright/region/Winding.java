package shotwright.region;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.noding.NodedSegmentString;
import org.locationtech.jts.noding.Noder;
import org.locationtech.jts.noding.SegmentString;
import org.locationtech.jts.noding.snap.SnappingNoder;
import org.locationtech.jts.noding.snapround.SnapRoundingNoder;
import org.locationtech.jts.operation.polygonize.Polygonizer;

/**
 * The region that directed closed curves go round at least once, counter-clockwise counted. The curves are cut where they cross; beside
 * each piece the winding number is counted along a ray; the pieces with a number above zero on one side only are the border.
 *
 * <p>This is how the union of many triangles is found from the few edges in which they do not cancel.
 */
public final class Winding {
    private static final GeometryFactory FACTORY = new GeometryFactory();
    /** Snapping distances tried one after the other, as shares of the extent; the last ones round to a grid, which cannot fail to node. */
    private static final double[] LADDER = {1e-12, 1e-11, 1e-10, 1e-9, 1e-8};

    private static final double[] GRIDS = {1e-8, 1e-7, 1e-6};

    private Winding() {}

    /**
     * The region wound round at least once.
     *
     * @param ends x and y of the start, x and y of the end of each directed edge; all edges together must form closed curves
     * @param times how often each edge counts, below zero when it counts the other way
     */
    public static Region atLeastOnce(double[] ends, int[] times) {
        if (ends.length != 4 * times.length)
            throw new IllegalArgumentException("edges: " + ends.length + " numbers for " + times.length + " edges");
        Envelope around = new Envelope();
        for (int i = 0; i < ends.length; i += 2) around.expandToInclude(ends[i], ends[i + 1]);
        double extent = Math.hypot(around.getWidth(), around.getHeight());
        if (!(extent > 0)) return Region.EMPTY;
        double reach = Math.max(
                Math.max(Math.abs(around.getMinX()), Math.abs(around.getMaxX())),
                Math.max(Math.abs(around.getMinY()), Math.abs(around.getMaxY())));
        for (double share : LADDER) {
            Region r = tried(new SnappingNoder(Math.max(share * extent, 4 * Math.ulp(reach))), ends, times);
            if (r != null) return r;
        }
        for (double share : GRIDS) {
            Region r = tried(new SnapRoundingNoder(new PrecisionModel(1 / (share * extent))), ends, times);
            if (r != null) return r;
        }
        throw new IllegalArgumentException("edges: do not form closed curves");
    }

    private static @Nullable Region tried(Noder noder, double[] ends, int[] times) {
        List<SegmentString> strings = new ArrayList<>(times.length);
        for (int i = 0; i < times.length; i++) {
            Coordinate a = new Coordinate(ends[4 * i], ends[4 * i + 1]);
            Coordinate b = new Coordinate(ends[4 * i + 2], ends[4 * i + 3]);
            if (!a.equals2D(b)) strings.add(new NodedSegmentString(new Coordinate[] {a, b}, times[i]));
        }
        noder.computeNodes(strings);
        Pieces pieces = new Pieces(noder.getNodedSubstrings());
        return pieces.region();
    }

    /** The edges cut where they cross, equal ones put together, each pointing up (or right when level). */
    private static final class Pieces {
        private final Coordinate[] low;
        private final Coordinate[] high;
        private final int[] times;
        private final double yMin;
        private final double step;
        private final int[][] rows;

        Pieces(Collection<?> noded) {
            Map<List<Coordinate>, int[]> sum = new HashMap<>();
            for (Object o : noded) {
                SegmentString s = (SegmentString) o;
                int k = (Integer) s.getData();
                for (int i = 0; i + 1 < s.size(); i++) {
                    Coordinate a = s.getCoordinate(i), b = s.getCoordinate(i + 1);
                    if (a.equals2D(b)) continue;
                    boolean up = a.y < b.y || (a.y == b.y && a.x < b.x);
                    sum.computeIfAbsent(up ? List.of(a, b) : List.of(b, a), e -> new int[1])[0] += up ? k : -k;
                }
            }
            sum.values().removeIf(k -> k[0] == 0);
            int n = sum.size(), i = 0;
            low = new Coordinate[n];
            high = new Coordinate[n];
            times = new int[n];
            for (var e : sum.entrySet()) {
                low[i] = e.getKey().getFirst();
                high[i] = e.getKey().getLast();
                times[i++] = e.getValue()[0];
            }
            yMin = Arrays.stream(low).mapToDouble(c -> c.y).min().orElse(0);
            double yMax = Arrays.stream(high).mapToDouble(c -> c.y).max().orElse(0);
            int rowCount = Math.clamp(n, 1, 8192);
            step = Math.max((yMax - yMin) / rowCount, Double.MIN_NORMAL);
            rows = fillRows(rowCount);
        }

        private int row(double y, int rowCount) {
            return Math.clamp((long) ((y - yMin) / step), 0, rowCount - 1);
        }

        private int[][] fillRows(int rowCount) {
            int[] count = new int[rowCount];
            for (int i = 0; i < low.length; i++)
                for (int r = row(low[i].y, rowCount), end = row(high[i].y, rowCount); r <= end; r++) count[r]++;
            int[][] filled = new int[rowCount][];
            for (int r = 0; r < rowCount; r++) filled[r] = new int[count[r]];
            for (int i = 0; i < low.length; i++)
                for (int r = row(low[i].y, rowCount), end = row(high[i].y, rowCount); r <= end; r++)
                    filled[r][--count[r]] = i;
            return filled;
        }

        /**
         * The winding number on the right of a piece at its middle, above it when the piece is level: pieces crossed by the level ray to
         * the right, upward ones counted +, the piece itself left out.
         */
        private int numberBeside(int piece) {
            Coordinate m = new Coordinate((low[piece].x + high[piece].x) / 2, (low[piece].y + high[piece].y) / 2);
            int number = 0;
            for (int i : rows[row(m.y, rows.length)]) {
                if (i == piece || !(low[i].y <= m.y && m.y < high[i].y)) continue;
                if (Math.max(low[i].x, high[i].x) < m.x) continue;
                boolean rightOf = Math.min(low[i].x, high[i].x) > m.x
                        || Orientation.index(low[i], high[i], m) == Orientation.COUNTERCLOCKWISE;
                if (rightOf) number += times[i];
            }
            return number;
        }

        /** The polygons, or null when the border does not close or encloses another area than its pieces say. */
        @Nullable Region region() {
            Polygonizer rings = new Polygonizer(true);
            Map<Coordinate, int[]> balance = new HashMap<>();
            List<LineString> border = new ArrayList<>();
            double twice = 0;
            Coordinate o = low.length == 0 ? new Coordinate() : low[0];
            for (int i = 0; i < low.length; i++) {
                boolean level = low[i].y == high[i].y;
                int beside = numberBeside(i);
                int left = level ? beside : beside + times[i];
                int right = level ? beside - times[i] : beside;
                if (left > 0 == right > 0) continue;
                Coordinate a = left > 0 ? low[i] : high[i], b = left > 0 ? high[i] : low[i];
                balance.computeIfAbsent(a, c -> new int[1])[0]++;
                balance.computeIfAbsent(b, c -> new int[1])[0]--;
                twice += (a.x - o.x) * (b.y - o.y) - (a.y - o.y) * (b.x - o.x);
                border.add(FACTORY.createLineString(new Coordinate[] {a, b}));
            }
            for (int[] k : balance.values()) if (k[0] != 0) return null;
            rings.add(border);
            // The polygonizer starts its rings where chance has it; the normal form makes every run give the same
            // numbers.
            Geometry polygons = rings.getGeometry().norm();
            double off = Math.abs(polygons.getArea() - twice / 2);
            return off <= 1e-9 * Math.abs(twice) ? Region.of(polygons) : null;
        }
    }
}
