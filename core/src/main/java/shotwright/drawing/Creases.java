package shotwright.drawing;

import java.util.Arrays;
import shotwright.geom.Vec3;
import shotwright.mesh.Edges;
import shotwright.mesh.TriMesh;

/** Normals at the corners of a mesh, smooth across edges that turn little, and the list of edges that turn more than that. */
final class Creases {
    /** Edges that turn by more are drawn and not smoothed. */
    static final double SHARP_DEG = 25;

    private final TriMesh mesh;
    private final float[] normals;
    private final int[] sharp;

    Creases(TriMesh mesh) {
        this.mesh = mesh;
        int facets = mesh.facetCount();
        double[] n = new double[3 * facets];
        float[] unit = new float[3 * facets];
        for (int f = 0; f < facets; f++) {
            Vec3 a = mesh.doubleAreaNormal(f);
            double l = a.length(), k = l > 0 ? 1 / l : 0;
            put(n, f, a);
            unit[3 * f] = (float) (a.x() * k);
            unit[3 * f + 1] = (float) (a.y() * k);
            unit[3 * f + 2] = (float) (a.z() * k);
        }
        normals = smooth(n, unit);
        sharp = sharpEdges(unit);
    }

    private static void put(double[] n, int f, Vec3 a) {
        n[3 * f] = a.x();
        n[3 * f + 1] = a.y();
        n[3 * f + 2] = a.z();
    }

    /** At each corner the area-weighted sum over the facets round the vertex that turn little from this one. */
    private float[] smooth(double[] area, float[] unit) {
        int facets = mesh.facetCount();
        double limit = Math.cos(Math.toRadians(SHARP_DEG));
        int[] start = new int[mesh.vertexCount() + 1];
        for (int s = 0; s < 3 * facets; s++) start[mesh.corner(s / 3, s % 3) + 1]++;
        for (int v = 0; v < mesh.vertexCount(); v++) start[v + 1] += start[v];
        int[] next = Arrays.copyOf(start, start.length), around = new int[3 * facets];
        for (int s = 0; s < 3 * facets; s++) around[next[mesh.corner(s / 3, s % 3)]++] = s / 3;
        float[] out = new float[9 * facets];
        for (int s = 0; s < 3 * facets; s++) {
            int f = 3 * (s / 3), v = mesh.corner(s / 3, s % 3);
            double x = 0, y = 0, z = 0;
            for (int i = start[v]; i < start[v + 1]; i++) {
                int g = 3 * around[i];
                double turn = unit[f] * unit[g] + unit[f + 1] * unit[g + 1] + unit[f + 2] * unit[g + 2];
                if (turn < limit && g != f) continue;
                x += area[g];
                y += area[g + 1];
                z += area[g + 2];
            }
            double l = Math.sqrt(x * x + y * y + z * z), k = l > 0 ? 1 / l : 0;
            out[3 * s] = (float) (x * k);
            out[3 * s + 1] = (float) (y * k);
            out[3 * s + 2] = (float) (z * k);
        }
        return out;
    }

    private int[] sharpEdges(float[] unit) {
        Edges edges = Edges.of(mesh);
        double limit = Math.cos(Math.toRadians(SHARP_DEG));
        int[] found = new int[2 * edges.count()];
        int n = 0;
        for (int e = 0; e < edges.count(); e++) {
            boolean draw = !edges.isManifold(e);
            if (!draw) {
                int f = 3 * edges.facet(e, 0), g = 3 * edges.facet(e, 1);
                draw = unit[f] * unit[g] + unit[f + 1] * unit[g + 1] + unit[f + 2] * unit[g + 2] < limit;
            }
            if (!draw) continue;
            found[n++] = edges.low(e);
            found[n++] = edges.high(e);
        }
        return Arrays.copyOf(found, n);
    }

    /** Component along a direction of the normal at a corner. */
    double along(int facet, int corner, Vec3 d) {
        int i = 9 * facet + 3 * corner;
        return normals[i] * d.x() + normals[i + 1] * d.y() + normals[i + 2] * d.z();
    }

    /** Sharp edges as pairs of vertices. */
    int[] sharp() {
        return sharp;
    }
}
