package shotwright.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import shotwright.geom.Vec2;
import shotwright.mesh.TriMesh;
import shotwright.part.PulledPart;
import shotwright.region.Region;

/**
 * Heights at which the halves may meet, from the corners of the facets that lie on the rims of the shadow: one for the outside when a plane
 * does, one for each through hole. Only for judging the metal surfaces; the layout decides where the mold parts.
 *
 * @param outerMm height of the plane round the part; NaN when the rim must step
 * @param holes the through holes
 * @param holeMm the shut-off height of each
 */
record RimLevels(double outerMm, List<Region> holes, double[] holeMm) {
    private static final double SAME_SHARE = 2e-6;

    static RimLevels of(PulledPart pulled) {
        TriMesh mesh = pulled.mesh();
        double same = SAME_SHARE * mesh.box().diagonal();
        Map<Long, double[]> columns = new HashMap<>();
        for (int v = 0; v < mesh.vertexCount(); v++) {
            double z = mesh.z(v);
            columns.merge(key(mesh.x(v), mesh.y(v), same), new double[] {z, z}, (p, q) ->
                    new double[] {Math.min(p[0], q[0]), Math.max(p[1], q[1])});
        }
        double low = Double.NEGATIVE_INFINITY, high = Double.POSITIVE_INFINITY;
        for (List<Vec2> ring : pulled.shadow().exteriors()) {
            for (double[] band : bands(ring, columns, same)) {
                low = Math.max(low, band[0]);
                high = Math.min(high, band[1]);
            }
        }
        double slack = 1e-4 * mesh.box().diagonal();
        double outer = Double.isFinite(low) && low <= high + slack ? low : Double.NaN;
        List<Region> holes = new ArrayList<>();
        List<Double> levels = new ArrayList<>();
        for (List<Vec2> ring : pulled.shadow().holes()) {
            double[] lows = bands(ring, columns, same).stream()
                    .mapToDouble(b -> b[0])
                    .sorted()
                    .toArray();
            if (lows.length == 0) continue;
            holes.add(Region.of(ring));
            levels.add(lows[lows.length / 2]);
        }
        return new RimLevels(
                outer, holes, levels.stream().mapToDouble(Double::doubleValue).toArray());
    }

    private static List<double[]> bands(List<Vec2> ring, Map<Long, double[]> columns, double same) {
        List<double[]> found = new ArrayList<>();
        for (Vec2 p : ring) {
            double[] band = columns.get(key(p.x(), p.y(), same));
            if (band != null) found.add(band);
        }
        return found;
    }

    private static long key(double x, double y, double same) {
        return Math.round(x / same) * 0x9E3779B97F4A7C15L + Math.round(y / same);
    }

    /** The height for a place beside the part; NaN when it must come from the nearest rim. */
    double at(double x, double y) {
        for (int i = 0; i < holes.size(); i++) if (holes.get(i).contains(x, y)) return holeMm[i];
        return outerMm;
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof RimLevels r
                && Double.compare(outerMm, r.outerMm) == 0
                && holes.equals(r.holes)
                && Arrays.equals(holeMm, r.holeMm);
    }

    @Override
    public int hashCode() {
        return 31 * Double.hashCode(outerMm) + Arrays.hashCode(holeMm);
    }
}
