package shotwright.machining.contour;

import java.util.Arrays;
import shotwright.geom.Vec3;
import shotwright.mesh.TriMesh;
import shotwright.region.Region;
import shotwright.region.Winding;

/**
 * The solid of a closed mesh at one height, as a region. Every edge that crosses the level is cut in the same direction from whichever facet
 * it is met, so the pieces close to loops to the last bit; corners on the level count as above it.
 */
public final class MeshSlice {
    private MeshSlice() {}

    /** The solid at a height, mm. Choose heights a little off level floors, which belong to the solid below them only. */
    public static Region at(TriMesh mesh, double zMm) {
        double[] ends = new double[64];
        int n = 0;
        for (int f = 0; f < mesh.facetCount(); f++) {
            Vec3 in = null, out = null;
            for (int k = 0; k < 3; k++) {
                int a = mesh.corner(f, k), b = mesh.corner(f, (k + 1) % 3);
                boolean above = mesh.z(a) >= zMm;
                if (above == (mesh.z(b) >= zMm)) continue;
                if (above) in = crossing(mesh, b, a, zMm);
                else out = crossing(mesh, a, b, zMm);
            }
            if (in == null || out == null) continue;
            if (n + 4 > ends.length) ends = Arrays.copyOf(ends, 2 * ends.length);
            // seen from outside the facet runs down at 'in' and up at 'out': the solid lies left of the way from in to
            // out
            ends[n] = in.x();
            ends[n + 1] = in.y();
            ends[n + 2] = out.x();
            ends[n + 3] = out.y();
            n += 4;
        }
        if (n == 0) return Region.EMPTY;
        int[] once = new int[n / 4];
        Arrays.fill(once, 1);
        return Winding.atLeastOnce(Arrays.copyOf(ends, n), once);
    }

    private static Vec3 crossing(TriMesh mesh, int below, int above, double zMm) {
        double share = (zMm - mesh.z(below)) / (mesh.z(above) - mesh.z(below));
        return mesh.vertex(below).toward(mesh.vertex(above), share);
    }
}
