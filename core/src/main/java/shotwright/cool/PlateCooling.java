package shotwright.cool;

/**
 * Cooling time of a flat wall between two mold faces, one term of the conduction series.
 *
 * <p>Centre line at the ejection temperature: t = s²/(π²a)·ln(4/π·Θ). Mean over the wall: t = s²/(π²a)·ln(8/π²·Θ).
 *
 * <p>Symbols: s the <em>full</em> wall, mm; a effective thermal diffusivity of melt to ejection, mm²/s; Θ = (Tm − Tw)/(Te − Tw) with melt
 * Tm, time-average mold wall Tw and ejection temperature Te, °C; t in s. Range: Fo = a·t/s² above 0.05 (error below 0.7 %), both faces
 * equally cold; one cold face only: give twice the wall. Source: MEN (cooling chapter, from memory), RAO ch. 3 example; the trap of
 * halving the wall once too often is held by a test.
 */
public final class PlateCooling {
    private PlateCooling() {}

    /** Seconds until the centre line is at the ejection temperature; 0 when the melt is already below it. */
    public static double centreTimeS(
            double wallMm, double diffusivityMm2PerS, double meltC, double moldC, double ejectC) {
        return time(wallMm, diffusivityMm2PerS, 4 / Math.PI * Excess.ratio(meltC, moldC, ejectC));
    }

    /** Seconds until the mean over the wall is at the ejection temperature; only for stiff thin parts. */
    public static double meanTimeS(
            double wallMm, double diffusivityMm2PerS, double meltC, double moldC, double ejectC) {
        return time(wallMm, diffusivityMm2PerS, 8 / (Math.PI * Math.PI) * Excess.ratio(meltC, moldC, ejectC));
    }

    private static double time(double wallMm, double diffusivityMm2PerS, double argument) {
        Excess.positive("wall", wallMm, "mm");
        Excess.positive("diffusivity", diffusivityMm2PerS, "mm²/s");
        return Math.max(0, wallMm * wallMm / (Math.PI * Math.PI * diffusivityMm2PerS) * Math.log(argument));
    }
}
