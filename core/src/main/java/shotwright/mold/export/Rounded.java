package shotwright.mold.export;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import shotwright.geom.Vec3;
import shotwright.mesh.TriMesh;

/**
 * A mesh as a file will hold it: an origin subtracted, coordinates rounded to what the format carries, corner points that fell together
 * joined, facets that collapsed left out. A facet with two equal corners runs along one edge there and back, so leaving it out keeps a
 * closed mesh closed.
 *
 * @param mesh the rounded mesh
 * @param dropped facets left out
 */
public record Rounded(TriMesh mesh, int dropped) {
    private static final double PER_MM = 1e6;

    /** Rounded to single precision, as STL holds it. */
    public static Rounded toSinglePrecision(TriMesh mesh, Vec3 origin) {
        return of(mesh, origin, x -> (float) x);
    }

    /** Rounded to a millionth of a millimetre, as decimal text holds it. */
    public static Rounded toNanometre(TriMesh mesh, Vec3 origin) {
        return of(mesh, origin, x -> Math.rint(x * PER_MM) / PER_MM);
    }

    private static Rounded of(TriMesh mesh, Vec3 o, DoubleUnaryOperator round) {
        Map<Vec3, Integer> known = new HashMap<>(2 * mesh.vertexCount());
        int[] to = new int[mesh.vertexCount()];
        double[] xyz = new double[3 * to.length];
        for (int v = 0; v < to.length; v++) {
            Vec3 p = new Vec3(
                    round.applyAsDouble(mesh.x(v) - o.x()) + 0.0,
                    round.applyAsDouble(mesh.y(v) - o.y()) + 0.0,
                    round.applyAsDouble(mesh.z(v) - o.z()) + 0.0);
            int next = known.size();
            to[v] = known.computeIfAbsent(p, q -> next);
            xyz[3 * to[v]] = p.x();
            xyz[3 * to[v] + 1] = p.y();
            xyz[3 * to[v] + 2] = p.z();
        }
        int[] tri = new int[3 * mesh.facetCount()];
        int n = 0;
        for (int f = 0; f < mesh.facetCount(); f++) {
            int a = to[mesh.corner(f, 0)], b = to[mesh.corner(f, 1)], c = to[mesh.corner(f, 2)];
            if (a == b || b == c || c == a) continue;
            tri[n++] = a;
            tri[n++] = b;
            tri[n++] = c;
        }
        TriMesh rounded = new TriMesh(Arrays.copyOf(xyz, 3 * known.size()), Arrays.copyOf(tri, n));
        return new Rounded(rounded, mesh.facetCount() - n / 3);
    }
}
