package shotwright.mold.exact;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;
import shotwright.mesh.Edges;
import shotwright.mesh.TriMesh;

/** The pieces of the parting surface that plates at whole heights do not make, ready to part metal with. */
final class Slopes {
    private static final double ON_SIDE_MM = 1e-6;

    private final TriMesh parting;
    private final Edges edges;
    private final boolean[] level;
    private final Box3 block;

    private Slopes(TriMesh parting, List<Double> levels, Box3 block) {
        this.parting = parting;
        this.edges = Edges.of(parting);
        this.level = Levels.on(parting, levels);
        this.block = block;
    }

    /**
     * The sloped pieces.
     *
     * @param parting where the halves meet
     * @param levels heights at which plates part the block
     */
    static List<Slope> of(TriMesh parting, List<Double> levels, Box3 block) {
        Slopes s = new Slopes(Levels.onto(parting, levels), levels, block);
        return s.pieces().stream().map(s::slope).toList();
    }

    private Collection<List<Integer>> pieces() {
        int[] piece = new int[parting.vertexCount()];
        for (int v = 0; v < piece.length; v++) piece[v] = v;
        for (int f = 0; f < parting.facetCount(); f++)
            for (int k = 1; !level[f] && k < 3; k++)
                piece[root(piece, parting.corner(f, k))] = root(piece, parting.corner(f, 0));
        Map<Integer, List<Integer>> out = new TreeMap<>();
        for (int f = 0; f < parting.facetCount(); f++)
            if (!level[f])
                out.computeIfAbsent(root(piece, parting.corner(f, 0)), k -> new ArrayList<>())
                        .add(f);
        return out.values();
    }

    private static int root(int[] piece, int v) {
        int r = v;
        while (piece[r] != r) r = piece[r] = piece[piece[r]];
        return r;
    }

    private Slope slope(List<Integer> facets) {
        Map<Integer, Integer> number = new HashMap<>();
        List<Vec3> corners = new ArrayList<>();
        List<int[]> own = new ArrayList<>();
        for (int f : facets) {
            int[] t = new int[3];
            for (int k = 0; k < 3; k++) {
                int v = parting.corner(f, k);
                t[k] = number.computeIfAbsent(v, w -> {
                    corners.add(parting.vertex(w));
                    return corners.size() - 1;
                });
            }
            own.add(t);
        }
        Map<Slope.Side, Rim> border = new HashMap<>();
        for (int i = 0; i < own.size(); i++)
            for (int k = 0; k < 3; k++) {
                int next = edges.neighbour(facets.get(i), k);
                if (next != Edges.NONE && !level[next]) continue;
                Slope.Side side = new Slope.Side(own.get(i)[k], own.get(i)[(k + 1) % 3]);
                Rim rim = next != Edges.NONE
                        ? Rim.LEVEL
                        : onBlock(corners.get(side.from()), corners.get(side.to())) ? Rim.BLOCK : Rim.PART;
                border.put(side, rim);
            }
        return new Slope(corners, own, border);
    }

    private boolean onBlock(Vec3 p, Vec3 q) {
        return Math.abs(p.x() - q.x()) < ON_SIDE_MM
                        && onSide(p.x(), block.min().x(), block.max().x())
                || Math.abs(p.y() - q.y()) < ON_SIDE_MM
                        && onSide(p.y(), block.min().y(), block.max().y());
    }

    private static boolean onSide(double x, double low, double high) {
        return Math.abs(x - low) < ON_SIDE_MM || Math.abs(x - high) < ON_SIDE_MM;
    }
}
