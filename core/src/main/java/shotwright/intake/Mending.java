package shotwright.intake;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.mesh.Edges;
import shotwright.mesh.TriMesh;

/** Turns facets so that neighbours agree. See {@link Mend}; the closing of holes is {@link HoleFilling}. */
final class Mending {
    private Mending() {}

    /**
     * A mended mesh.
     *
     * @param mesh the mesh
     * @param facets facets turned or added; 0 when nothing was done
     */
    record Mended(TriMesh mesh, int facets) {}

    /**
     * Turns facets until neighbours across every edge of two facets agree; in each connected patch the side that more facets agree on wins.
     *
     * @return null when a patch cannot agree with itself (it has one side only)
     */
    static @Nullable Mended winding(TriMesh mesh) {
        Edges edges = Edges.of(mesh);
        int n = mesh.facetCount();
        byte[] state = new byte[n]; // 0 not seen, 1 as it is, 2 to be turned
        int turned = 0;
        ArrayDeque<Integer> queue = new ArrayDeque<>();
        for (int f = 0; f < n; f++) {
            if (state[f] != 0) continue;
            List<Integer> patch = new ArrayList<>();
            state[f] = 1;
            queue.add(f);
            while (!queue.isEmpty()) {
                int g = queue.remove();
                patch.add(g);
                if (!spread(edges, g, state, queue)) return null;
            }
            int toTurn = 0;
            for (int g : patch) if (state[g] == 2) toTurn++;
            if (2 * toTurn > patch.size()) {
                for (int g : patch) state[g] = (byte) (3 - state[g]);
                toTurn = patch.size() - toTurn;
            }
            turned += toTurn;
        }
        return new Mended(turned == 0 ? mesh : Facets.turn(mesh, f -> state[f] == 2), turned);
    }

    private static boolean spread(Edges edges, int f, byte[] state, ArrayDeque<Integer> queue) {
        for (int k = 0; k < 3; k++) {
            int e = edges.edge(f, k);
            if (e == Edges.NONE || edges.sideCount(e) != 2) continue;
            int g = edges.facet(e, 0) == f ? edges.facet(e, 1) : edges.facet(e, 0);
            byte wanted = edges.isManifold(e) ? state[f] : (byte) (3 - state[f]);
            if (state[g] == 0) {
                state[g] = wanted;
                queue.add(g);
            } else if (state[g] != wanted) {
                return false;
            }
        }
        return true;
    }

    /** Turns the whole mesh when it encloses less than nothing, else every body that is inside out. */
    static Mended flip(TriMesh mesh, ReadGuard guard) {
        Shells shells = Shells.of(Edges.of(mesh));
        double total = 0;
        for (int s = 0; s < shells.count(); s++) total += shells.volume(s);
        if (total < 0) return new Mended(mesh.flip(), mesh.facetCount());
        TriMesh out = mesh;
        int turned = 0;
        boolean[] wrong = new boolean[shells.count()];
        for (Shells.Body b : shells.bodies(guard)) {
            if (!(b.volumeMm3() < 0)) continue;
            wrong[b.shell()] = true;
            turned += shells.facets(b.shell());
        }
        if (turned > 0) out = Facets.turn(mesh, f -> wrong[shells.shellOf(f)]);
        return new Mended(out, turned);
    }
}
