package shotwright.machining.contour;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import org.jspecify.annotations.Nullable;
import shotwright.mesh.Grid;

/**
 * Closed walks round the marked cells of a grid, marked ones on the left, by marching squares over the cells' middles (Lorensen and Cline
 * 1987 in the plane). Beside the grid nothing is marked. Where two marked cells touch at a corner only, they stay apart.
 */
public final class March {
    private final Grid grid;
    private final IntPredicate marked;

    /** Marks are asked by cell index. */
    public March(Grid grid, IntPredicate marked) {
        this.grid = grid;
        this.marked = marked;
    }

    /**
     * The walk passes between a marked cell and a neighbour that is not, which may lie beside the grid.
     *
     * @param i column of the marked cell
     * @param j row of the marked cell
     * @param outI column of the other
     * @param outJ row of the other
     */
    public record Crossing(int i, int j, int outI, int outJ) {
        /** The other cell lies beside the grid. */
        boolean atBorder(Grid grid) {
            return outI < 0 || outJ < 0 || outI >= grid.nx() || outJ >= grid.ny();
        }
    }

    private boolean marked(int i, int j) {
        return i >= 0 && j >= 0 && i < grid.nx() && j < grid.ny() && marked.test(grid.index(i, j));
    }

    /** Number of the side between a cell and its right (0) or upper (1) neighbour. */
    private int side(int i, int j, int upward) {
        return 2 * ((j + 1) * (grid.nx() + 2) + i + 1) + upward;
    }

    private Crossing crossing(int side) {
        int cell = side / 2, i = cell % (grid.nx() + 2) - 1, j = cell / (grid.nx() + 2) - 1;
        int oi = i + (side % 2 == 0 ? 1 : 0), oj = j + side % 2;
        return marked(i, j) ? new Crossing(i, j, oi, oj) : new Crossing(oi, oj, i, j);
    }

    /** All walks. */
    public List<List<Crossing>> loops() {
        Map<Integer, Integer> next = steps();
        Map<Integer, Integer> open = new HashMap<>(next);
        List<List<Crossing>> loops = new ArrayList<>();
        for (int start : next.keySet()) {
            if (!open.containsKey(start)) continue;
            List<Crossing> loop = new ArrayList<>();
            for (@Nullable Integer at = start; at != null && open.containsKey(at); ) {
                loop.add(crossing(at));
                at = open.remove(at);
            }
            loops.add(loop);
        }
        return loops;
    }

    private Map<Integer, Integer> steps() {
        Map<Integer, Integer> next = new LinkedHashMap<>();
        boolean[] corner = new boolean[4];
        int[] sides = new int[4];
        for (int j = -1; j < grid.ny(); j++) {
            corner[1] = marked(-1, j);
            corner[2] = marked(-1, j + 1);
            for (int i = -1; i < grid.nx(); i++) {
                corner[0] = corner[1];
                corner[3] = corner[2];
                corner[1] = marked(i + 1, j);
                corner[2] = marked(i + 1, j + 1);
                if (corner[0] == corner[1] && corner[1] == corner[2] && corner[2] == corner[3]) continue;
                sides[0] = side(i, j, 0);
                sides[1] = side(i + 1, j, 1);
                sides[2] = side(i, j + 1, 0);
                sides[3] = side(i, j, 1);
                for (int k = 0; k < 4; k++) {
                    if (!corner[k] || corner[(k + 1) % 4]) continue;
                    int back = k;
                    while (corner[(back + 3) % 4]) back = (back + 3) % 4;
                    next.put(sides[k], sides[(back + 3) % 4]);
                }
            }
        }
        return next;
    }
}
