package shotwright.cool;

/**
 * Cooling time of a ball-like lump, centre at the ejection temperature, one term of the conduction series: t = D²/(4π²a)·ln(2·Θ).
 *
 * <p>Symbols: D diameter of the largest ball that fits the lump, mm; a mm²/s; Θ = (Tm − Tw)/(Te − Tw); t in s. Range: Fo = a·t/R² above
 * 0.1; cold all round. Source: Carslaw and Jaeger (from memory).
 */
public final class BallCooling {
    private BallCooling() {}

    /** Seconds until the centre is at the ejection temperature. */
    public static double centreTimeS(
            double diameterMm, double diffusivityMm2PerS, double meltC, double moldC, double ejectC) {
        Excess.positive("diameter", diameterMm, "mm");
        Excess.positive("diffusivity", diffusivityMm2PerS, "mm²/s");
        double t = diameterMm * diameterMm / (4 * Math.PI * Math.PI * diffusivityMm2PerS);
        return Math.max(0, t * Math.log(2 * Excess.ratio(meltC, moldC, ejectC)));
    }
}
