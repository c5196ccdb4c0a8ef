package shotwright.solve;

/**
 * Conjugate gradients with a symmetric Gauss–Seidel preconditioner for sparse symmetric positive definite systems. Source: Hestenes and
 * Stiefel 1952; Saad, Iterative Methods for Sparse Linear Systems, algorithm 9.1.
 */
public final class ConjugateGradient {
    private ConjugateGradient() {}

    /**
     * Solves A·x = b from the start given in {@code x}.
     *
     * @param toleranceShare stops when the residual is this share of the right side
     * @return iterations used
     * @throws ArithmeticException when it does not settle within the iterations allowed, which means the matrix is not positive definite
     */
    public static int solve(SymmetricMatrix a, double[] b, double[] x, double toleranceShare, int mostIterations) {
        int n = a.size();
        double[] r = new double[n], z = new double[n], d = new double[n], q = new double[n];
        a.times(x, q);
        double size = 0;
        for (int i = 0; i < n; i++) {
            r[i] = b[i] - q[i];
            size += b[i] * b[i];
        }
        double stop = toleranceShare * toleranceShare * size;
        a.precondition(r, z);
        System.arraycopy(z, 0, d, 0, n);
        double rz = dot(r, z);
        for (int it = 0; it < mostIterations; it++) {
            if (dot(r, r) <= stop) return it;
            a.times(d, q);
            double step = rz / dot(d, q);
            for (int i = 0; i < n; i++) {
                x[i] += step * d[i];
                r[i] -= step * q[i];
            }
            a.precondition(r, z);
            double next = dot(r, z), grow = next / rz;
            rz = next;
            for (int i = 0; i < n; i++) d[i] = z[i] + grow * d[i];
        }
        throw new ArithmeticException("conjugate gradients: not settled after " + mostIterations + " iterations");
    }

    private static double dot(double[] a, double[] b) {
        double s = 0;
        for (int i = 0; i < a.length; i++) s += a[i] * b[i];
        return s;
    }
}
