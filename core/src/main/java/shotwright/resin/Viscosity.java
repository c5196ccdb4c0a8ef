package shotwright.resin;

import shotwright.measure.Source;

/** How thick the melt is at a shear rate and a temperature. Generic sets stand for a family, never for one grade. */
public sealed interface Viscosity permits CrossWlf, Carreau, PowerLaw, Level {
    /**
     * Viscosity in Pa·s.
     *
     * @param shearRatePerS shear rate, 1/s, zero or more
     * @param meltC melt temperature, °C
     */
    double viscosityPaS(double shearRatePerS, double meltC);

    /** Lower end of the shear rates the numbers were fitted on, 1/s. */
    double shearLowPerS();

    /** Upper end of the shear rates the numbers were fitted on, 1/s. */
    double shearHighPerS();

    /** Where the numbers come from. */
    Source source();

    /** What a reader must know before trusting it. */
    String caution();

    /** Power-law index at a shear rate, 1 + d ln η / d ln γ̇; below 1 the melt thins. */
    default double indexAt(double shearRatePerS, double meltC) {
        double up = 1.01;
        double ratio = viscosityPaS(shearRatePerS * up, meltC) / viscosityPaS(shearRatePerS / up, meltC);
        return 1 + Math.log(ratio) / (2 * Math.log(up));
    }

    /** Consistency m in Pa·sⁿ of the power law that touches the curve at a shear rate, with {@link #indexAt}. */
    default double consistencyAt(double shearRatePerS, double meltC) {
        double index = indexAt(shearRatePerS, meltC);
        return viscosityPaS(shearRatePerS, meltC) / Math.pow(shearRatePerS, index - 1);
    }
}
