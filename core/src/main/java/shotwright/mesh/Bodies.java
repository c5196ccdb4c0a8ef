package shotwright.mesh;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The connected bodies of a mesh, numbered in order of their first facets. Two facets belong to one body when they share an edge on which
 * they alone meet; where more than two facets share an edge, or only a corner is shared, the bodies touch and stay apart, as long as each is
 * closed there by itself. Bodies lying inside others (voids) are bodies of their own, with a volume below zero.
 */
public final class Bodies {
    private final TriMesh mesh;
    private final int[] bodyOfFacet;
    private final int count;

    private Bodies(TriMesh mesh, int[] bodyOfFacet, int count) {
        this.mesh = mesh;
        this.bodyOfFacet = bodyOfFacet;
        this.count = count;
    }

    public static Bodies of(Edges edges) {
        TriMesh mesh = edges.mesh();
        int n = mesh.facetCount();
        int[] above = IntStream.range(0, n).toArray();
        for (int e = 0; e < edges.count(); e++)
            if (edges.sideCount(e) == 2) join(above, edges.facet(e, 0), edges.facet(e, 1));
        for (int e : edges.nonManifold()) joinUnclosed(above, edges, e);
        int[] body = new int[n];
        int count = 0;
        for (int f = 0; f < n; f++) {
            int r = root(above, f);
            body[f] = r == f ? count++ : body[r];
        }
        return new Bodies(mesh, body, count);
    }

    /** Joins pieces whose sides on an edge do not match among themselves, until they do: such a piece alone bounds nothing. */
    private static void joinUnclosed(int[] above, Edges edges, int e) {
        int unclosed = -1;
        for (int i = 0; i < edges.sideCount(e); i++) {
            int f = edges.facet(e, i);
            if (balance(above, edges, e, f) == 0) continue;
            if (unclosed >= 0) join(above, unclosed, f);
            unclosed = balance(above, edges, e, f) == 0 ? -1 : f;
        }
    }

    /** Sides of a facet's piece that run up an edge, less those that run down. */
    private static int balance(int[] above, Edges edges, int e, int facet) {
        int piece = root(above, facet), balance = 0;
        for (int i = 0; i < edges.sideCount(e); i++)
            if (root(above, edges.facet(e, i)) == piece) balance += edges.runsUp(e, i) ? 1 : -1;
        return balance;
    }

    private static int root(int[] above, int f) {
        while (above[f] != f) {
            above[f] = above[above[f]];
            f = above[f];
        }
        return f;
    }

    /** The smaller facet number stays on top, so that every body is numbered by its first facet. */
    private static void join(int[] above, int f, int g) {
        int a = root(above, f), b = root(above, g);
        if (a != b) above[Math.max(a, b)] = Math.min(a, b);
    }

    public int count() {
        return count;
    }

    /** The number of the body a facet belongs to. */
    public int body(int facet) {
        return bodyOfFacet[facet];
    }

    /** The facets of every body, in order. */
    public List<int[]> facets() {
        int[] size = new int[count];
        for (int b : bodyOfFacet) size[b]++;
        int[][] facets = new int[count][];
        for (int b = 0; b < count; b++) facets[b] = new int[size[b]];
        Arrays.fill(size, 0);
        for (int f = 0; f < bodyOfFacet.length; f++) facets[bodyOfFacet[f]][size[bodyOfFacet[f]]++] = f;
        return List.of(facets);
    }

    /** One mesh per body, vertices in their old order, unused ones left out. */
    public List<TriMesh> meshes() {
        int[] fresh = unused(mesh);
        return facets().stream().map(list -> part(mesh, list, fresh)).toList();
    }

    /** A mesh of some facets only, in the order given, unused vertices left out. */
    public static TriMesh part(TriMesh mesh, int[] facets) {
        return part(mesh, facets, unused(mesh));
    }

    private static int[] unused(TriMesh mesh) {
        int[] fresh = new int[mesh.vertexCount()];
        Arrays.fill(fresh, -1);
        return fresh;
    }

    /** Uses {@code fresh}, all −1, to number vertices and leaves it as found. */
    private static TriMesh part(TriMesh mesh, int[] facets, int[] fresh) {
        int[] tri = new int[3 * facets.length];
        for (int i = 0; i < tri.length; i++) tri[i] = mesh.tri()[3 * facets[i / 3] + i % 3];
        int[] used = IntStream.of(tri).sorted().distinct().toArray();
        double[] xyz = new double[3 * used.length];
        for (int i = 0; i < used.length; i++) {
            fresh[used[i]] = i;
            System.arraycopy(mesh.xyz(), 3 * used[i], xyz, 3 * i, 3);
        }
        for (int i = 0; i < tri.length; i++) tri[i] = fresh[tri[i]];
        for (int v : used) fresh[v] = -1;
        return new TriMesh(xyz, tri);
    }
}
