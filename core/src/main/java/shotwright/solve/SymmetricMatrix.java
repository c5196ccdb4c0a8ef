package shotwright.solve;

import java.util.Arrays;

/**
 * A sparse symmetric matrix of a network of conductances: row i holds Σ of its links on the diagonal (plus what is tied to zero) and minus
 * each link beside it. Rows keep their entries in order of columns.
 */
public final class SymmetricMatrix {
    final int[] start;
    final int[] column;
    final double[] value;
    final double[] diagonal;

    private SymmetricMatrix(int[] start, int[] column, double[] value, double[] diagonal) {
        this.start = start;
        this.column = column;
        this.value = value;
        this.diagonal = diagonal;
    }

    public int size() {
        return diagonal.length;
    }

    /** Collects links; the same pair may be linked more than once, conductances add. */
    public static final class Builder {
        private final int size;
        private final double[] diagonal;
        private int[] from = new int[1024];
        private int[] to = new int[1024];
        private double[] conductance = new double[1024];
        private int links;

        public Builder(int size) {
            this.size = size;
            diagonal = new double[size];
        }

        /** A conductance between two unknowns. */
        public void link(int i, int j, double conductanceFactor) {
            if (i == j) return;
            if (links == from.length) {
                from = Arrays.copyOf(from, 2 * links);
                to = Arrays.copyOf(to, 2 * links);
                conductance = Arrays.copyOf(conductance, 2 * links);
            }
            from[links] = i;
            to[links] = j;
            conductance[links++] = conductanceFactor;
            diagonal[i] += conductanceFactor;
            diagonal[j] += conductanceFactor;
        }

        /** A conductance between an unknown and a place held at zero. */
        public void tieToZero(int i, double conductanceFactor) {
            diagonal[i] += conductanceFactor;
        }

        public SymmetricMatrix build() {
            int[] start = new int[size + 1];
            for (int k = 0; k < links; k++) {
                start[from[k] + 1]++;
                start[to[k] + 1]++;
            }
            for (int i = 0; i < size; i++) start[i + 1] += start[i];
            int[] at = Arrays.copyOf(start, size), column = new int[2 * links];
            double[] value = new double[2 * links];
            for (int k = 0; k < links; k++) {
                put(column, value, at[from[k]]++, to[k], -conductance[k]);
                put(column, value, at[to[k]]++, from[k], -conductance[k]);
            }
            for (int i = 0; i < size; i++) sortRow(column, value, start[i], start[i + 1]);
            return new SymmetricMatrix(start, column, value, diagonal);
        }

        private static void put(int[] column, double[] value, int at, int c, double v) {
            column[at] = c;
            value[at] = v;
        }

        private static void sortRow(int[] column, double[] value, int from, int to) {
            for (int i = from + 1; i < to; i++) {
                int c = column[i], k = i;
                double v = value[i];
                for (; k > from && column[k - 1] > c; k--) {
                    column[k] = column[k - 1];
                    value[k] = value[k - 1];
                }
                column[k] = c;
                value[k] = v;
            }
        }
    }

    /** y = A·x. */
    void times(double[] x, double[] y) {
        for (int i = 0; i < diagonal.length; i++) {
            double s = diagonal[i] * x[i];
            for (int k = start[i]; k < start[i + 1]; k++) s += value[k] * x[column[k]];
            y[i] = s;
        }
    }

    /** z = M⁻¹·r with the symmetric successive over-relaxation splitting at factor one (forward, then backward substitution). */
    void precondition(double[] r, double[] z) {
        int n = diagonal.length;
        for (int i = 0; i < n; i++) {
            double s = r[i];
            for (int k = start[i]; k < start[i + 1] && column[k] < i; k++) s -= value[k] * z[column[k]];
            z[i] = s / diagonal[i];
        }
        for (int i = n - 1; i >= 0; i--) {
            double s = 0;
            for (int k = start[i + 1] - 1; k >= start[i] && column[k] > i; k--) s += value[k] * z[column[k]];
            z[i] -= s / diagonal[i];
        }
    }
}
