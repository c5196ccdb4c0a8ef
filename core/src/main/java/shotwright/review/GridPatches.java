package shotwright.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import shotwright.mesh.Grid;

/** Connected patches of marked cells of a grid, corner neighbours included, largest first. */
final class GridPatches {
    /**
     * @param cells indices of its cells
     * @param isSolid true when some two by two cells lie in it: not just the stair of a slanted border
     */
    record Patch(int[] cells, boolean isSolid) {
        double areaMm2(Grid grid) {
            return cells.length * grid.cell() * grid.cell();
        }

        /** Lengths of all cell sides on its border; {@code inside} tells whether a cell belongs to it. */
        double perimeterMm(Grid grid) {
            BitSet in = new BitSet();
            for (int c : cells) in.set(c);
            int sides = 0;
            for (int c : cells) {
                int i = c % grid.nx();
                if (i == 0 || !in.get(c - 1)) sides++;
                if (i == grid.nx() - 1 || !in.get(c + 1)) sides++;
                if (c < grid.nx() || !in.get(c - grid.nx())) sides++;
                if (!in.get(c + grid.nx())) sides++;
            }
            return sides * grid.cell();
        }

        /** Lowest and highest column, lowest and highest row. */
        int[] extent(Grid grid) {
            int[] e = {Integer.MAX_VALUE, -1, Integer.MAX_VALUE, -1};
            for (int c : cells) {
                int i = c % grid.nx(), j = c / grid.nx();
                e[0] = Math.min(e[0], i);
                e[1] = Math.max(e[1], i);
                e[2] = Math.min(e[2], j);
                e[3] = Math.max(e[3], j);
            }
            return e;
        }
    }

    private GridPatches() {}

    static List<Patch> of(Grid grid, BitSet marked) {
        BitSet open = (BitSet) marked.clone();
        List<Patch> all = new ArrayList<>();
        int[] stack = new int[1024];
        for (int s = open.nextSetBit(0); s >= 0; s = open.nextSetBit(s)) {
            int top = 0, n = 0;
            int[] found = new int[64];
            open.clear(s);
            stack[top++] = s;
            while (top > 0) {
                int c = stack[--top];
                if (n == found.length) found = Arrays.copyOf(found, 2 * n);
                found[n++] = c;
                if (top + 8 > stack.length) stack = Arrays.copyOf(stack, 2 * stack.length);
                top = spread(grid, open, c, stack, top);
            }
            int[] cells = Arrays.copyOf(found, n);
            all.add(new Patch(cells, hasSquare(grid, marked, cells)));
        }
        all.sort((p, q) -> p.cells.length != q.cells.length
                ? Integer.compare(q.cells.length, p.cells.length)
                : Integer.compare(p.cells[0], q.cells[0]));
        return all;
    }

    private static int spread(Grid grid, BitSet open, int c, int[] stack, int top) {
        int i = c % grid.nx(), j = c / grid.nx();
        for (int y = Math.max(0, j - 1); y <= Math.min(grid.ny() - 1, j + 1); y++)
            for (int x = Math.max(0, i - 1); x <= Math.min(grid.nx() - 1, i + 1); x++) {
                int d = y * grid.nx() + x;
                if (!open.get(d)) continue;
                open.clear(d);
                stack[top++] = d;
            }
        return top;
    }

    private static boolean hasSquare(Grid grid, BitSet marked, int[] cells) {
        for (int c : cells) {
            boolean last = c % grid.nx() == grid.nx() - 1 || c + grid.nx() >= grid.count();
            if (!last && marked.get(c + 1) && marked.get(c + grid.nx()) && marked.get(c + grid.nx() + 1)) return true;
        }
        return false;
    }
}
