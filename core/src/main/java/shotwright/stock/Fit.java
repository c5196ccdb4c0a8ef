package shotwright.stock;

/**
 * ISO 286 limits of small holes and pins, µm over nominal. Source: ISO 286-2 extract (H7, F7, G7, K7, M7, N7, h6), g6, m6, P7 and all above 18 mm from memory of
 * the same standard; sizes 1 … 50 mm.
 */
public enum Fit {
    H7(new int[][] {{0, 10}, {0, 12}, {0, 15}, {0, 18}, {0, 21}, {0, 25}}),
    G7(new int[][] {{2, 12}, {4, 16}, {5, 20}, {6, 24}, {7, 28}, {9, 34}}),
    F7(new int[][] {{6, 16}, {10, 22}, {13, 28}, {16, 34}, {20, 41}, {25, 50}}),
    K7(new int[][] {{-10, 0}, {-9, 3}, {-10, 5}, {-12, 6}, {-15, 6}, {-18, 7}}),
    M7(new int[][] {{-12, -2}, {-12, 0}, {-15, 0}, {-18, 0}, {-21, 0}, {-25, 0}}),
    N7(new int[][] {{-14, -4}, {-16, -4}, {-19, -4}, {-23, -5}, {-28, -7}, {-33, -8}}),
    P7(new int[][] {{-16, -6}, {-20, -8}, {-24, -9}, {-29, -11}, {-35, -14}, {-42, -17}}),
    G6_PIN(new int[][] {{-8, -2}, {-12, -4}, {-14, -5}, {-17, -6}, {-20, -7}, {-25, -9}}),
    H6_PIN(new int[][] {{-6, 0}, {-8, 0}, {-9, 0}, {-11, 0}, {-13, 0}, {-16, 0}}),
    H7_PIN(new int[][] {{-10, 0}, {-12, 0}, {-15, 0}, {-18, 0}, {-21, 0}, {-25, 0}}),
    H9_PIN(new int[][] {{-25, 0}, {-30, 0}, {-36, 0}, {-43, 0}, {-52, 0}, {-62, 0}}),
    M6_PIN(new int[][] {{2, 8}, {4, 12}, {6, 15}, {7, 18}, {8, 21}, {9, 25}}),
    P6_PIN(new int[][] {{6, 12}, {12, 20}, {15, 24}, {18, 29}, {22, 35}, {26, 42}});

    private static final double[] UP_TO_MM = {3, 6, 10, 18, 30, 50};
    private final int[][] micrometres;

    Fit(int[][] micrometres) {
        this.micrometres = micrometres;
    }

    /** Lower limit over nominal, µm. */
    public int lowUm(double nominalMm) {
        return micrometres[row(nominalMm)][0];
    }

    /** Upper limit over nominal, µm. */
    public int highUm(double nominalMm) {
        return micrometres[row(nominalMm)][1];
    }

    /** The middle of the limits as a size, mm. */
    public double middleMm(double nominalMm) {
        return nominalMm + (lowUm(nominalMm) + highUm(nominalMm)) / 2000.0;
    }

    /** Least clearance of a pin in this hole, µm; below zero it is interference. */
    public int leastClearanceUm(Fit pin, double nominalMm) {
        return lowUm(nominalMm) - pin.highUm(nominalMm);
    }

    /** Greatest clearance of a pin in this hole, µm. */
    public int mostClearanceUm(Fit pin, double nominalMm) {
        return highUm(nominalMm) - pin.lowUm(nominalMm);
    }

    private static int row(double nominalMm) {
        if (nominalMm >= 1) {
            for (int i = 0; i < UP_TO_MM.length; i++) {
                if (nominalMm <= UP_TO_MM[i]) return i;
            }
        }
        throw new IllegalArgumentException("nominal: " + nominalMm + " mm is outside 1 … 50 mm");
    }
}
