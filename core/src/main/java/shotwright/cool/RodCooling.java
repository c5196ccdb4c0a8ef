package shotwright.cool;

/**
 * Cooling time of a long round rod (runner, sprue, boss), one term of the conduction series.
 *
 * <p>Centre: t = D²/(23.133·a)·ln(1.602·Θ). Mean over the section: t = D²/(23.133·a)·ln(0.6917·Θ).
 *
 * <p>Symbols: D diameter, mm; a mm²/s; Θ = (Tm − Tw)/(Te − Tw); t in s. The constants come from β₀ = 2.404826, the first zero of J₀: 4β₀²,
 * 2/(β₀·J₁(β₀)) and 4/β₀². Range: length above 2D; the mean formula Θ above 2. Source: Carslaw and Jaeger, MEN (from memory).
 */
public final class RodCooling {
    private static final double BETA = 2.404825557695773;
    private static final double J1_AT_BETA = 0.5191474972894669;

    private RodCooling() {}

    /** Seconds until the axis is at the ejection temperature. */
    public static double centreTimeS(
            double diameterMm, double diffusivityMm2PerS, double meltC, double moldC, double ejectC) {
        return time(diameterMm, diffusivityMm2PerS, 2 / (BETA * J1_AT_BETA) * Excess.ratio(meltC, moldC, ejectC));
    }

    /** Seconds until the mean over the section is at the ejection temperature: enough for runners and sprues. */
    public static double meanTimeS(
            double diameterMm, double diffusivityMm2PerS, double meltC, double moldC, double ejectC) {
        return time(diameterMm, diffusivityMm2PerS, 4 / (BETA * BETA) * Excess.ratio(meltC, moldC, ejectC));
    }

    private static double time(double diameterMm, double diffusivityMm2PerS, double argument) {
        Excess.positive("diameter", diameterMm, "mm");
        Excess.positive("diffusivity", diffusivityMm2PerS, "mm²/s");
        return Math.max(0, diameterMm * diameterMm / (4 * BETA * BETA * diffusivityMm2PerS) * Math.log(argument));
    }
}
