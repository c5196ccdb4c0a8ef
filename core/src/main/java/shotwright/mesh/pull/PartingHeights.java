package shotwright.mesh.pull;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import shotwright.geom.Vec3;
import shotwright.mesh.Edges;

/**
 * The height of the parting surface at every vertex of a part. A run of rim that can be parted at one height is; the outer one at the plane asked
 * for, an inner one (a shut-off) as near to it as its own band allows. A run that must step follows its bands with limited slope:
 * L' = max(L_j − k d), U' = min(U_j + k d), height = clamp(plane, L', U'), d along the rim; where L' and U' cross, k is doubled until they do not.
 */
public final class PartingHeights {
    /** Rise over run of a step where the part leaves the choice: 60°. */
    public static final double SLOPE = Math.tan(Math.toRadians(60));

    private static final double STEEPEST = 64 * SLOPE;
    private static final double NOISE = 1e-7;

    private final double planeZ;
    private final double[] atVertex;
    private final List<Riser> risers;
    private final boolean outerFlat;

    /**
     * A place where the part itself forces the parting to step more steeply than the slope.
     *
     * @param place where
     * @param rise by how much the bands cross there
     */
    public record Riser(Vec3 place, double rise) {}

    private PartingHeights(double planeZ, double[] atVertex, List<Riser> risers, boolean outerFlat) {
        this.planeZ = planeZ;
        this.atVertex = atVertex;
        this.risers = risers;
        this.outerFlat = outerFlat;
    }

    /** The heights for a plane asked for; where the rim does not allow it, the surface steps. */
    public static PartingHeights of(Columns columns, Sight[] sight, Edges edges, double leanDeg, double planeZ) {
        RimGraph graph = RimGraph.of(columns, sight, edges, leanDeg);
        return new Setting(columns, graph, planeZ).heights();
    }

    /**
     * The plane that serves the outer rim best: any in its free band (its bottom is taken); when there is none, the height with the least
     * length × distance to the bands.
     */
    public static double bestPlane(Columns columns, Sight[] sight, Edges edges, double leanDeg) {
        Columns.FreeBand band = columns.outerBand();
        if (band.low() <= band.high()) return Double.isInfinite(band.low()) ? band.high() : band.low();
        double[] run = RimGraph.of(columns, sight, edges, leanDeg).runs();
        for (int j = 0; j < run.length; j++) if (!columns.isOuter(j)) run[j] = 0;
        return nearestHeight(columns, run);
    }

    /** argmin over z of Σ run_j · distance(z, [L_j, U_j]): the slope jumps by run at every end, and the minimum is where it turns. */
    private static double nearestHeight(Columns columns, double[] run) {
        List<double[]> ends = new ArrayList<>();
        double slope = 0;
        for (int j = 0; j < run.length; j++) {
            if (run[j] == 0) continue;
            double low = columns.lower(j), high = columns.upper(j);
            if (!Double.isInfinite(low)) {
                slope -= run[j];
                ends.add(new double[] {low, run[j]});
            }
            if (!Double.isInfinite(high)) ends.add(new double[] {high, run[j]});
        }
        ends.sort((p, q) -> Double.compare(p[0], q[0]));
        for (double[] e : ends) {
            slope += e[1];
            if (slope >= 0) return e[0];
        }
        return ends.isEmpty() ? 0 : ends.getLast()[0];
    }

    public double planeZ() {
        return planeZ;
    }

    public double at(int vertex) {
        return atVertex[vertex];
    }

    /** Where the part forces a steep step. */
    public List<Riser> risers() {
        return risers;
    }

    /** True when the outer rim is parted by the plane asked for. */
    public boolean outerFlat() {
        return outerFlat;
    }

    /** The computation for one plane. */
    private static final class Setting {
        private final Columns columns;
        private final RimGraph graph;
        private final double planeZ;
        private final int[] piece;
        private final double[] rest;
        private final boolean[] steps;
        private final boolean[] outer;
        private final double noise;

        Setting(Columns columns, RimGraph graph, double planeZ) {
            this.columns = columns;
            this.graph = graph;
            this.planeZ = planeZ;
            piece = graph.pieces();
            int pieces = Arrays.stream(piece).max().orElse(-1) + 1;
            rest = new double[pieces];
            steps = new boolean[pieces];
            outer = new boolean[pieces];
            noise = NOISE * columns.mesh().box().diagonal();
        }

        PartingHeights heights() {
            settlePieces();
            Columns.FreeBand band = columns.outerBand();
            boolean flat = band.low() - noise <= planeZ && planeZ <= band.high() + noise;
            double[] low = new double[columns.count()], high = new double[columns.count()];
            for (int j = 0; j < low.length; j++) {
                boolean onPlane = flat && columns.isOuter(j);
                low[j] = onPlane ? planeZ : columns.lower(j);
                high[j] = onPlane ? planeZ : columns.upper(j);
            }
            double[] lowReach = graph.spreadLower(low, SLOPE), highReach = graph.spreadUpper(high, SLOPE);
            double[] gap = new double[low.length];
            for (int j = 0; j < gap.length; j++) gap[j] = lowReach[j] - highReach[j];
            steepen(low, high, lowReach, highReach);
            double[] height = new double[low.length];
            List<Riser> risers = new ArrayList<>();
            for (int j = 0; j < height.length; j++) {
                int p = piece[j];
                double h;
                if (p >= 0 && !steps[p]) h = rest[p];
                else if (p < 0) h = between(planeZ, low[j], high[j]);
                else {
                    h = between(between(rest[p], lowReach[j], highReach[j]), low[j], high[j]);
                    if (gap[j] > 0) risers.add(new Riser(new Vec3(columns.x(j), columns.y(j), h), gap[j]));
                }
                height[j] = h;
            }
            double[] atVertex = new double[columns.mesh().vertexCount()];
            for (int v = 0; v < atVertex.length; v++) atVertex[v] = height[columns.columnOf(v)];
            risers.sort((a, b) -> Double.compare(b.rise(), a.rise()));
            return new PartingHeights(planeZ, atVertex, List.copyOf(risers), flat);
        }

        /** Where the bands cross, the step is made as steep as the part forces it, to a factor of two. */
        private void steepen(double[] low, double[] high, double[] lowReach, double[] highReach) {
            for (double slope = 2 * SLOPE; slope <= STEEPEST; slope *= 2) {
                boolean crossed = false;
                for (int j = 0; j < low.length && !crossed; j++) crossed = lowReach[j] > highReach[j];
                if (!crossed) return;
                double[] l = graph.spreadLower(low, slope), u = graph.spreadUpper(high, slope);
                for (int j = 0; j < low.length; j++) {
                    if (lowReach[j] <= highReach[j]) continue;
                    lowReach[j] = l[j];
                    highReach[j] = u[j];
                }
            }
        }

        /** Finds for every piece of rim whether one height serves it, and which. */
        private void settlePieces() {
            double[] low = new double[rest.length], high = new double[rest.length];
            Arrays.fill(low, Double.NEGATIVE_INFINITY);
            Arrays.fill(high, Double.POSITIVE_INFINITY);
            for (int j = 0; j < piece.length; j++) {
                int p = piece[j];
                if (p < 0) continue;
                low[p] = Math.max(low[p], columns.lower(j));
                high[p] = Math.min(high[p], columns.upper(j));
                outer[p] |= columns.isOuter(j);
            }
            double[] run = graph.runs();
            for (int p = 0; p < rest.length; p++) {
                steps[p] = low[p] > high[p] + noise;
                if (!steps[p]) rest[p] = between(planeZ, low[p], high[p]);
                else rest[p] = outer[p] ? planeZ : nearestHeight(columns, runOf(p, run));
            }
        }

        private double[] runOf(int p, double[] run) {
            double[] only = new double[run.length];
            for (int j = 0; j < run.length; j++) if (piece[j] == p) only[j] = run[j];
            return only;
        }

        private static double between(double z, double low, double high) {
            return low > high ? (low + high) / 2 : Math.clamp(z, low, high);
        }
    }
}
