package shotwright.mesh;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import shotwright.geom.Box3;
import shotwright.geom.Transform;
import shotwright.geom.Vec3;

/**
 * Triangles over shared vertices, immutable. Facet {@code f} has corners {@code tri[3f], tri[3f+1], tri[3f+2]}, counter-clockwise seen from
 * outside; vertex {@code v} lies at {@code xyz[3v] …}. Coordinates are millimetres. Says nothing about being closed.
 */
public final class TriMesh {
    private final double[] xyz;
    private final int[] tri;
    /** Worked out when first asked for; two threads may both do so, with the same outcome. */
    private @Nullable Box3 box;

    /** Takes the arrays over; the caller must not touch them afterwards. */
    public TriMesh(double[] xyz, int[] tri) {
        if (xyz.length % 3 != 0)
            throw new IllegalArgumentException("xyz: length " + xyz.length + " is not a multiple of 3");
        if (tri.length % 3 != 0)
            throw new IllegalArgumentException("tri: length " + tri.length + " is not a multiple of 3");
        int n = xyz.length / 3;
        for (int v : tri) {
            if (v < 0 || v >= n)
                throw new IllegalArgumentException("tri: corner " + v + " is not one of " + n + " vertices");
        }
        this.xyz = xyz;
        this.tri = tri;
    }

    public int vertexCount() {
        return xyz.length / 3;
    }

    public int facetCount() {
        return tri.length / 3;
    }

    public double x(int vertex) {
        return xyz[3 * vertex];
    }

    public double y(int vertex) {
        return xyz[3 * vertex + 1];
    }

    public double z(int vertex) {
        return xyz[3 * vertex + 2];
    }

    public Vec3 vertex(int vertex) {
        return new Vec3(x(vertex), y(vertex), z(vertex));
    }

    /** The vertex at a facet's corner 0, 1 or 2. */
    public int corner(int facet, int k) {
        return tri[3 * facet + k];
    }

    public Vec3 cornerPoint(int facet, int k) {
        return vertex(corner(facet, k));
    }

    /** A copy of all coordinates. */
    public double[] copyXyz() {
        return xyz.clone();
    }

    /** A copy of all corners. */
    public int[] copyTri() {
        return tri.clone();
    }

    /** The coordinates themselves, for the kernels of this package; never written to. */
    double[] xyz() {
        return xyz;
    }

    /** The corners themselves, for the kernels of this package; never written to. */
    int[] tri() {
        return tri;
    }

    /** Normal of a facet times twice its area; zero for a collapsed facet. */
    public Vec3 doubleAreaNormal(int facet) {
        int a = 3 * tri[3 * facet], b = 3 * tri[3 * facet + 1], c = 3 * tri[3 * facet + 2];
        double ux = xyz[b] - xyz[a], uy = xyz[b + 1] - xyz[a + 1], uz = xyz[b + 2] - xyz[a + 2];
        double vx = xyz[c] - xyz[a], vy = xyz[c + 1] - xyz[a + 1], vz = xyz[c + 2] - xyz[a + 2];
        return new Vec3(uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx);
    }

    public double area(int facet) {
        return doubleAreaNormal(facet).length() / 2;
    }

    public Vec3 centroid(int facet) {
        Vec3 s = cornerPoint(facet, 0).plus(cornerPoint(facet, 1)).plus(cornerPoint(facet, 2));
        return s.times(1.0 / 3);
    }

    /** The box around all vertices; an empty mesh is refused. */
    public Box3 box() {
        Box3 known = box;
        if (known == null) box = known = boxOfCorners();
        return known;
    }

    private Box3 boxOfCorners() {
        if (xyz.length == 0) throw new IllegalArgumentException("mesh: has no vertices");
        double[] lo = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        double[] hi = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (int i = 0; i < xyz.length; i++) {
            lo[i % 3] = Math.min(lo[i % 3], xyz[i]);
            hi[i % 3] = Math.max(hi[i % 3], xyz[i]);
        }
        return new Box3(new Vec3(lo[0], lo[1], lo[2]), new Vec3(hi[0], hi[1], hi[2]));
    }

    /** The mesh placed; facets are turned over when the placement mirrors, so that outside stays outside. */
    public TriMesh transform(Transform t) {
        double[] p = new double[xyz.length];
        for (int v = 0; v < xyz.length; v += 3) {
            Vec3 q = t.apply(new Vec3(xyz[v], xyz[v + 1], xyz[v + 2]));
            p[v] = q.x();
            p[v + 1] = q.y();
            p[v + 2] = q.z();
        }
        return new TriMesh(p, t.determinant() < 0 ? flippedTri() : tri);
    }

    /** The same mesh inside out. */
    public TriMesh flip() {
        return new TriMesh(xyz, flippedTri());
    }

    private int[] flippedTri() {
        int[] f = tri.clone();
        for (int i = 0; i < f.length; i += 3) {
            int s = f[i + 1];
            f[i + 1] = f[i + 2];
            f[i + 2] = s;
        }
        return f;
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof TriMesh m && Arrays.equals(xyz, m.xyz) && Arrays.equals(tri, m.tri);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(xyz) + Arrays.hashCode(tri);
    }

    @Override
    public String toString() {
        return "mesh of " + facetCount() + " facets on " + vertexCount() + " vertices";
    }
}
