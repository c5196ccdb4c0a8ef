package shotwright.report;

import shotwright.mesh.Edges;

/**
 * Evens the borders of areas of facets for a picture. Where one face runs smoothly into the next, long thin facets fall to one side or the other
 * by a hair, and the border becomes a comb; a facet that shares most of its border smoothly with one other area joins that area.
 */
final class EvenBorders {
    private static final int ROUNDS = 4;
    private static final double MOST = 0.6;
    private static final double SMOOTH_RAD = Math.toRadians(20);

    private EvenBorders() {}

    /**
     * @param edges the edges of the mesh
     * @param area number of the area of each facet
     * @param fixed facets that stay what they are, whatever is around them
     * @return the areas with their borders evened
     */
    static int[] of(Edges edges, int[] area, boolean[] fixed) {
        int[] even = area.clone();
        boolean changed = true;
        for (int round = 0; round < ROUNDS && changed; round++) {
            changed = false;
            for (int f = 0; f < even.length; f++) {
                int to = fixed[f] ? even[f] : joins(edges, even, f);
                changed |= to != even[f];
                even[f] = to;
            }
        }
        return even;
    }

    private static int joins(Edges edges, int[] area, int f) {
        double around = 0;
        double[] shared = new double[3];
        for (int k = 0; k < 3; k++) {
            int e = edges.edge(f, k), n = edges.neighbour(f, k);
            if (e == Edges.NONE) continue;
            around += edges.length(e);
            if (n == Edges.NONE || area[n] == area[f] || Math.abs(edges.turn(e)) > SMOOTH_RAD) continue;
            for (int j = 0; j < 3; j++) {
                int m = edges.neighbour(f, j);
                if (m != Edges.NONE && area[m] == area[n]) shared[j] += edges.length(e);
            }
        }
        for (int k = 0; k < 3; k++) if (shared[k] > MOST * around) return area[edges.neighbour(f, k)];
        return area[f];
    }
}
