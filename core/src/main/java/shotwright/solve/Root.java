package shotwright.solve;

import java.util.function.DoubleUnaryOperator;

/** Roots of functions of one number. */
public final class Root {
    private static final int MOST_STEPS = 200;

    private Root() {}

    /**
     * The place between {@code low} and {@code high} where the function crosses zero, to the last digits that the two ends can tell apart.
     * Halving with a secant try first in every step; the bracket never opens.
     *
     * @throws IllegalArgumentException when the function has the same sign at both ends
     */
    public static double between(DoubleUnaryOperator f, double low, double high) {
        double a = low, b = high, fa = f.applyAsDouble(a), fb = f.applyAsDouble(b);
        if (fa == 0) return a;
        if (fb == 0) return b;
        if (!(fa * fb < 0))
            throw new IllegalArgumentException("bracket: the function is " + fa + " at " + low + " and " + fb + " at "
                    + high + ", no sign change");
        for (int i = 0; i < MOST_STEPS; i++) {
            double width = b - a, middle = a + width / 2;
            double secant = a - fa * width / (fb - fa);
            boolean trySecant = i % 2 == 0 && secant > a && secant < b;
            double x = trySecant ? secant : middle, fx = f.applyAsDouble(x);
            if (fx == 0 || middle == a || middle == b) return x;
            if (fa * fx < 0) {
                b = x;
                fb = fx;
            } else {
                a = x;
                fa = fx;
            }
        }
        return a + (b - a) / 2;
    }
}
