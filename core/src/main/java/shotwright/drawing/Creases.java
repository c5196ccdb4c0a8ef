package shotwright.drawing;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import shotwright.geom.Vec3;
import shotwright.mesh.Edges;
import shotwright.mesh.TriMesh;

/**
 * Normals at the corners of a mesh, smooth across edges that turn little, and the list of edges that turn more than that. They belong to the
 * mesh and not to a picture: worked out when first asked for and kept, so that pictures of one mesh share them.
 */
public final class Creases {
    /** Edges that turn by more are drawn and not smoothed. */
    static final double SHARP_DEG = 25;

    private static final double SHARP = Math.cos(Math.toRadians(SHARP_DEG));

    private final Edges edges;
    private final TriMesh mesh;
    private float @Nullable [] unit;
    private float @Nullable [] normals;
    private int @Nullable [] sharp;

    private Creases(Edges edges) {
        this.edges = edges;
        mesh = edges.mesh();
    }

    /** Of the mesh of an edge table. */
    public static Creases of(Edges edges) {
        return new Creases(edges);
    }

    public static Creases of(TriMesh mesh) {
        return new Creases(Edges.of(mesh));
    }

    public TriMesh mesh() {
        return mesh;
    }

    private synchronized float[] unit() {
        if (unit != null) return unit;
        float[] n = new float[3 * mesh.facetCount()];
        for (int f = 0; f < mesh.facetCount(); f++) {
            Vec3 a = mesh.doubleAreaNormal(f);
            double l = a.length(), k = l > 0 ? 1 / l : 0;
            n[3 * f] = (float) (a.x() * k);
            n[3 * f + 1] = (float) (a.y() * k);
            n[3 * f + 2] = (float) (a.z() * k);
        }
        unit = n;
        return n;
    }

    /** At each corner the area-weighted sum over the facets round the vertex that turn little from this one; x, y, z a corner. */
    synchronized float[] normals() {
        if (normals == null) normals = smooth(unit());
        return normals;
    }

    private float[] smooth(float[] unit) {
        int facets = mesh.facetCount();
        int[] start = new int[mesh.vertexCount() + 1];
        for (int s = 0; s < 3 * facets; s++) start[mesh.corner(s / 3, s % 3) + 1]++;
        for (int v = 0; v < mesh.vertexCount(); v++) start[v + 1] += start[v];
        int[] next = Arrays.copyOf(start, start.length), around = new int[3 * facets];
        for (int s = 0; s < 3 * facets; s++) around[next[mesh.corner(s / 3, s % 3)]++] = s / 3;
        float[] area = new float[facets], out = new float[9 * facets];
        for (int f = 0; f < facets; f++) area[f] = (float) mesh.area(f);
        for (int s = 0; s < 3 * facets; s++) {
            int f = 3 * (s / 3), v = mesh.corner(s / 3, s % 3);
            double x = 0, y = 0, z = 0;
            for (int i = start[v]; i < start[v + 1]; i++) {
                int g = 3 * around[i];
                double turn = unit[f] * unit[g] + unit[f + 1] * unit[g + 1] + unit[f + 2] * unit[g + 2];
                if (turn < SHARP && g != f) continue;
                double share = area[around[i]];
                x += share * unit[g];
                y += share * unit[g + 1];
                z += share * unit[g + 2];
            }
            double l = Math.sqrt(x * x + y * y + z * z), k = l > 0 ? 1 / l : 0;
            out[3 * s] = (float) (x * k);
            out[3 * s + 1] = (float) (y * k);
            out[3 * s + 2] = (float) (z * k);
        }
        return out;
    }

    /** Sharp edges as pairs of vertices. */
    synchronized int[] sharp() {
        if (sharp == null) {
            float[] n = unit();
            sharp = ends((f, g) -> isSharp(n, f, g), true);
        }
        return sharp;
    }

    /** Edges that are not sharp where the surface turns away from the eye, as pairs of vertices: the outlines of what is round. */
    int[] outlines(Vec3 toEye) {
        float[] n = unit();
        return ends((f, g) -> along(n, f, toEye) > 0 != along(n, g, toEye) > 0 && !isSharp(n, f, g), false);
    }

    private static boolean isSharp(float[] n, int f, int g) {
        return n[f] * n[g] + n[f + 1] * n[g + 1] + n[f + 2] * n[g + 2] < SHARP;
    }

    private static double along(float[] n, int i, Vec3 d) {
        return n[i] * d.x() + n[i + 1] * d.y() + n[i + 2] * d.z();
    }

    /** Whether an edge counts between two facets, given where their normals begin. */
    private interface Between {
        boolean counts(int f, int g);
    }

    private int[] ends(Between between, boolean open) {
        int[] found = new int[64];
        int n = 0;
        for (int e = 0; e < edges.count(); e++) {
            boolean counts = edges.isManifold(e) ? between.counts(3 * edges.facet(e, 0), 3 * edges.facet(e, 1)) : open;
            if (!counts) continue;
            if (n == found.length) found = Arrays.copyOf(found, 2 * n);
            found[n++] = edges.low(e);
            found[n++] = edges.high(e);
        }
        return Arrays.copyOf(found, n);
    }
}
