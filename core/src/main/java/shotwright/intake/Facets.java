package shotwright.intake;

import java.util.Arrays;
import java.util.function.IntPredicate;
import shotwright.mesh.TriMesh;

/** Meshes from parts of meshes. */
final class Facets {
    private Facets() {}

    /** The chosen facets alone, with only the vertices they use, both in the old order. */
    static TriMesh keep(TriMesh mesh, IntPredicate wanted) {
        int[] fresh = new int[mesh.vertexCount()];
        Ints tri = new Ints();
        for (int f = 0; f < mesh.facetCount(); f++) {
            if (!wanted.test(f)) continue;
            for (int k = 0; k < 3; k++) {
                int v = mesh.corner(f, k);
                fresh[v] = 1;
                tri.add(v);
            }
        }
        return compact(mesh.copyXyz(), tri.toArray(), fresh);
    }

    /** A mesh without the vertices no facet uses. */
    static TriMesh compact(double[] xyz, int[] tri) {
        int[] used = new int[xyz.length / 3];
        for (int v : tri) used[v] = 1;
        return compact(xyz, tri, used);
    }

    private static TriMesh compact(double[] xyz, int[] tri, int[] used) {
        int n = 0;
        for (int v = 0; v < used.length; v++) {
            boolean keep = used[v] != 0;
            used[v] = n;
            if (!keep) continue;
            System.arraycopy(xyz, 3 * v, xyz, 3 * n, 3);
            n++;
        }
        for (int i = 0; i < tri.length; i++) tri[i] = used[tri[i]];
        return new TriMesh(Arrays.copyOf(xyz, 3 * n), tri);
    }

    /** The mesh with some facets turned over. */
    static TriMesh turn(TriMesh mesh, IntPredicate turned) {
        int[] tri = mesh.copyTri();
        for (int f = 0; f < mesh.facetCount(); f++) {
            if (!turned.test(f)) continue;
            int s = tri[3 * f + 1];
            tri[3 * f + 1] = tri[3 * f + 2];
            tri[3 * f + 2] = s;
        }
        return new TriMesh(mesh.copyXyz(), tri);
    }
}
