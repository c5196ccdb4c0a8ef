package shotwright.mesh;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import shotwright.geom.Vec2;
import shotwright.progress.Progress;
import shotwright.region.Region;
import shotwright.region.Winding;

/**
 * What a closed mesh covers when seen along z: the union of the shadows of all facets that look up.
 *
 * <p>Inside the union the sides of neighbouring facets cancel; what is left are the silhouettes, and the shadow is what they wind round at
 * least once. So the cost goes with the silhouettes, not with the facets.
 *
 * @param region the exact projected region in x and y
 * @param freeSum Σ ½ A·|n·z| over all facets, mm²: equals the area where nothing is hidden, exceeds it where the mesh has more than one
 *     layer along z
 */
public record Shadow(Region region, double freeSum) {
    /**
     * The exact shadow along z.
     *
     * @throws Progress.Cancelled when asked to stop
     */
    public static Shadow of(TriMesh mesh, Progress progress) {
        progress.at("looking for silhouettes", 0);
        int[] flat = flatVertices(mesh);
        int[] tri = mesh.tri();
        EdgeTable table = new EdgeTable(mesh.facetCount());
        int[] from = new int[1024], to = new int[1024], times = new int[1024];
        double sum = 0;
        for (int f = 0; f < mesh.facetCount(); f++) {
            sum += Math.abs(mesh.doubleAreaNormal(f).z()) / 4;
            if (!looksUp(mesh, f)) continue;
            for (int k = 0; k < 3; k++) {
                int a = flat[tri[3 * f + k]], b = flat[tri[3 * f + (k + 1) % 3]], fresh = table.size();
                int e = table.putIfAbsent(a, b, fresh);
                if (e == fresh) {
                    if (e == from.length) {
                        from = Arrays.copyOf(from, 2 * e);
                        to = Arrays.copyOf(to, 2 * e);
                        times = Arrays.copyOf(times, 2 * e);
                    }
                    from[e] = a;
                    to[e] = b;
                }
                times[e] += from[e] == a ? 1 : -1;
            }
        }
        progress.at("joining the silhouettes", 0.3);
        Region region = silhouettes(mesh, table.size(), from, to, times);
        progress.at("joining the silhouettes", 1);
        return new Shadow(region, sum);
    }

    private static Region silhouettes(TriMesh mesh, int edges, int[] from, int[] to, int[] times) {
        int n = 0;
        for (int e = 0; e < edges; e++) if (times[e] != 0) n++;
        double[] ends = new double[4 * n];
        int[] count = new int[n];
        int i = 0;
        for (int e = 0; e < edges; e++) {
            if (times[e] == 0) continue;
            ends[4 * i] = mesh.x(from[e]);
            ends[4 * i + 1] = mesh.y(from[e]);
            ends[4 * i + 2] = mesh.x(to[e]);
            ends[4 * i + 3] = mesh.y(to[e]);
            count[i++] = times[e];
        }
        return Winding.atLeastOnce(ends, count);
    }

    /** For each vertex the first one with the same x and y, so that edges above each other are one edge of the shadow. */
    private static int[] flatVertices(TriMesh mesh) {
        int[] flat = new int[mesh.vertexCount()];
        Map<Vec2, Integer> first = new HashMap<>(2 * flat.length);
        for (int v = 0; v < flat.length; v++) {
            Integer seen = first.putIfAbsent(new Vec2(mesh.x(v) + 0.0, mesh.y(v) + 0.0), v);
            flat[v] = seen == null ? v : seen;
        }
        return flat;
    }

    /** Exact sign of the projected area, whatever rounding says. */
    private static boolean looksUp(TriMesh mesh, int f) {
        int a = mesh.corner(f, 0), b = mesh.corner(f, 1), c = mesh.corner(f, 2);
        double u = (mesh.x(a) - mesh.x(c)) * (mesh.y(b) - mesh.y(c));
        double v = (mesh.y(a) - mesh.y(c)) * (mesh.x(b) - mesh.x(c));
        double twice = u - v;
        // error bound of the plain formula: Shewchuk 1997, Discrete & Computational Geometry 18, section 4
        if (Math.abs(twice) > 3.3306690738754716e-16 * (Math.abs(u) + Math.abs(v))) return twice > 0;
        return Orientation.index(
                        new Coordinate(mesh.x(a), mesh.y(a)),
                        new Coordinate(mesh.x(b), mesh.y(b)),
                        new Coordinate(mesh.x(c), mesh.y(c)))
                == Orientation.COUNTERCLOCKWISE;
    }

    public double area() {
        return region.area();
    }

    /** How much of the shadow lies under a further layer: (Σ½A|n·z| − area) / area; 0 for a mesh with nothing hidden. */
    public double hiddenShare() {
        return region.isEmpty() ? 0 : (freeSum - area()) / area();
    }
}
