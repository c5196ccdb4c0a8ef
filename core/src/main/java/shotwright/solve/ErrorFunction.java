package shotwright.solve;

/**
 * The error function erf x = 2/√π ∫₀ˣ e^(−t²) dt and its inverse, from the series erf x = 2/√π e^(−x²) Σ 2ᵏ x^(2k+1)/(2k+1)!!, whose terms
 * are all of one sign. Range: every finite x; relative error below 1e-14 for |x| ≤ 6, beyond that erf is ±1 in double precision. Source:
 * NIST Digital Library of Mathematical Functions 7.6.2.
 */
public final class ErrorFunction {
    private static final double ALL_ONE = 6;

    private ErrorFunction() {}

    /** erf x. */
    public static double of(double x) {
        if (Math.abs(x) >= ALL_ONE) return Math.signum(x);
        double term = x, sum = x;
        for (int k = 1; Math.abs(term) > 1e-17 * Math.abs(sum); k++) {
            term *= 2 * x * x / (2 * k + 1);
            sum += term;
        }
        return 2 / Math.sqrt(Math.PI) * Math.exp(-x * x) * sum;
    }

    /** The x with erf x = y. @throws IllegalArgumentException unless −1 < y < 1 */
    public static double inverse(double y) {
        if (!(Math.abs(y) < 1)) throw new IllegalArgumentException("y: " + y + " is not between −1 and 1");
        return y == 0 ? 0 : Root.between(x -> of(x) - y, -ALL_ONE, ALL_ONE);
    }
}
