package shotwright.report;

import shotwright.mesh.TriMesh;

/** A plate 40 × 30 mm, 4 mm thick from x = −20 to 0 and 2 mm from there to 20, in few long facets. */
final class StepPlate {
    private static final double[][] PROFILE = {{-20, 0}, {0, 0}, {20, 0}, {20, 2}, {0, 2}, {0, 4}, {-20, 4}};
    private static final int[][] CAP = {{0, 1, 4}, {0, 4, 5}, {0, 5, 6}, {1, 2, 3}, {1, 3, 4}};

    private StepPlate() {}

    static TriMesh mesh() {
        int n = PROFILE.length, at = 0;
        double[] xyz = new double[6 * n];
        for (int i = 0; i < 2 * n; i++) {
            xyz[3 * i] = PROFILE[i % n][0];
            xyz[3 * i + 1] = i < n ? -15 : 15;
            xyz[3 * i + 2] = PROFILE[i % n][1];
        }
        int[] tri = new int[3 * (2 * n + 2 * CAP.length)];
        for (int[] c : CAP) {
            for (int k = 0; k < 3; k++) {
                tri[at + k] = c[k];
                tri[at + 3 + k] = n + c[2 - k];
            }
            at += 6;
        }
        for (int i = 0; i < n; i++) {
            int j = (i + 1) % n;
            for (int v : new int[] {j, i, n + i, j, n + i, n + j}) tri[at++] = v;
        }
        return new TriMesh(xyz, tri);
    }
}
