package shotwright.cool;

/**
 * Temperature of a flat wall whose two faces are held cold, whole series (Carslaw and Jaeger, Conduction of Heat in Solids).
 *
 * <p>θ = (T − Tw)/(Tm − Tw). Centre: θ = Σ 4/π·(−1)ᵏ/(2k+1)·e^(−(2k+1)²π²Fo). Mean: θ = Σ 8/π²/(2k+1)²·e^(−(2k+1)²π²Fo). Fo = a·t/s², s the
 * full wall. Range: any Fo of zero or more; at Fo = 0 both are 1.
 */
public final class SlabSeries {
    private SlabSeries() {}

    /** Share of the first temperature excess left at the centre line. */
    public static double centreShare(double fourierRatio) {
        if (atStart(fourierRatio)) return 1;
        double sum = 0, sign = 1;
        for (int k = 0; ; k++, sign = -sign) {
            int odd = 2 * k + 1;
            double term = 4 / Math.PI / odd * Math.exp(-odd * (double) odd * Math.PI * Math.PI * fourierRatio);
            sum += sign * term;
            if (term < 1e-16) return Math.min(1, sum);
        }
    }

    /** Share of the first temperature excess left on average over the wall. */
    public static double meanShare(double fourierRatio) {
        if (atStart(fourierRatio)) return 1;
        double sum = 0;
        for (int k = 0; ; k++) {
            int odd = 2 * k + 1;
            double square = odd * (double) odd;
            double term = 8 / (Math.PI * Math.PI) / square * Math.exp(-square * Math.PI * Math.PI * fourierRatio);
            sum += term;
            if (term < 1e-16) return Math.min(1, sum);
        }
    }

    private static boolean atStart(double fourierRatio) {
        if (!(fourierRatio >= 0)) throw new IllegalArgumentException("Fo: " + fourierRatio + " is below zero");
        return fourierRatio < 1e-9;
    }
}
