package shotwright.sizing;

/**
 * Rates for weighing cavities against cost, neutral money; the quote works the price out properly later. Defaults are common practice.
 *
 * @param labourPricePerH a person's hour
 * @param millPricePerH the mill's hour
 * @param attendanceShare share of the cycle a person stands at the press
 * @param upTimeShare share of the hour that makes parts
 * @param firstCavityH hours to design, program and mill a mold with one cavity
 * @param nextCavityH hours each further cavity adds
 * @param metalPricePerKg mold metal
 */
public record SizingCosts(
        double labourPricePerH,
        double millPricePerH,
        double attendanceShare,
        double upTimeShare,
        double firstCavityH,
        double nextCavityH,
        double metalPricePerKg) {
    /** Typical small shop (common practice). */
    public static final SizingCosts TYPICAL = new SizingCosts(45, 25, 1, 0.8, 9, 2.5, 10);
}
