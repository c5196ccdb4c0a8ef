package shotwright.machining.finish;

import java.util.Arrays;
import java.util.BitSet;
import shotwright.mesh.Grid;

/**
 * Distance along a surface over a grid, from some of its cells: shortest ways over 8, 16 or 32 directions, measured in space (Dijkstra
 * 1959). Ways are at most 8.2 %, 2.75 % or 1.3 % too long on a plane; the last of these is the greatest at 1/cos of half the angle between
 * neighbouring directions.
 */
public final class SurfaceDistance {
    private static final int[][] NEAR = {{1, 0}, {1, 1}};
    private static final int[][] SIXTEEN = {{1, 0}, {1, 1}, {2, 1}, {1, 2}};
    private static final int[][] THIRTY_TWO = {{1, 0}, {1, 1}, {2, 1}, {1, 2}, {3, 1}, {1, 3}, {3, 2}, {2, 3}};

    private final Grid grid;
    private final float[] heights;
    private final BitSet zone;
    private final float[] distance;
    private final int[][] directions;
    private int[] heap = new int[1024];
    private float[] keys = new float[1024];
    private int size;

    private SurfaceDistance(Grid grid, float[] heights, BitSet zone, int directions) {
        this.grid = grid;
        this.heights = heights;
        this.zone = zone;
        this.directions = switch (directions) {
            case 8 -> NEAR;
            case 16 -> SIXTEEN;
            case 32 -> THIRTY_TWO;
            default -> throw new IllegalArgumentException("directions: " + directions + " is not 8, 16 or 32");
        };
        distance = new float[grid.count()];
        Arrays.fill(distance, Float.POSITIVE_INFINITY);
    }

    /**
     * Distances in a zone, mm; infinite outside it and where no way leads.
     *
     * @param heights the surface
     * @param zone cells that may be walked
     * @param seeds cells at distance 0
     */
    public static float[] from(Grid grid, float[] heights, BitSet zone, BitSet seeds, int directions) {
        SurfaceDistance d = new SurfaceDistance(grid, heights, zone, directions);
        for (int c = seeds.nextSetBit(0); c >= 0; c = seeds.nextSetBit(c + 1)) d.offer(c, 0);
        while (d.size > 0) {
            float key = d.keys[0];
            int cell = d.poll();
            if (key <= d.distance[cell]) d.spread(cell);
        }
        return d.distance;
    }

    private void spread(int cell) {
        int x = cell % grid.nx(), y = cell / grid.nx();
        for (int[] way : directions) {
            step(cell, x, y, way[0], way[1]);
            step(cell, x, y, -way[0], -way[1]);
            step(cell, x, y, -way[1], way[0]);
            step(cell, x, y, way[1], -way[0]);
        }
    }

    private void step(int cell, int x, int y, int dx, int dy) {
        int i = x + dx, j = y + dy;
        if (i < 0 || j < 0 || i >= grid.nx() || j >= grid.ny()) return;
        int to = grid.index(i, j);
        if (!zone.get(to)) return;
        double flat = grid.cell() * Math.hypot(dx, dy), rise = heights[to] - heights[cell];
        offer(to, (float) (distance[cell] + Math.sqrt(flat * flat + rise * rise)));
    }

    private void offer(int cell, float key) {
        if (key >= distance[cell]) return;
        distance[cell] = key;
        if (size == heap.length) {
            heap = Arrays.copyOf(heap, 2 * size);
            keys = Arrays.copyOf(keys, 2 * size);
        }
        int at = size++;
        while (at > 0 && keys[(at - 1) / 2] > key) {
            heap[at] = heap[(at - 1) / 2];
            keys[at] = keys[(at - 1) / 2];
            at = (at - 1) / 2;
        }
        heap[at] = cell;
        keys[at] = key;
    }

    private int poll() {
        int first = heap[0];
        int last = heap[--size];
        float key = keys[size];
        int at = 0;
        while (2 * at + 1 < size) {
            int child = 2 * at + 1;
            if (child + 1 < size && keys[child + 1] < keys[child]) child++;
            if (keys[child] >= key) break;
            heap[at] = heap[child];
            keys[at] = keys[child];
            at = child;
        }
        heap[at] = last;
        keys[at] = key;
        return first;
    }
}
