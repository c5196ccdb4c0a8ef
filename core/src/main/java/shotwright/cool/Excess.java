package shotwright.cool;

/** The dimensionless temperature that all conduction formulas share, with its guards. */
final class Excess {
    private Excess() {}

    /** Θ = (Tm − Tw)/(Te − Tw). */
    static double ratio(double meltC, double moldC, double ejectC) {
        if (!(ejectC > moldC))
            throw new IllegalArgumentException("eject: " + ejectC + " °C is not above the mold wall at " + moldC
                    + " °C; the part would never be cold");
        if (!(meltC > moldC))
            throw new IllegalArgumentException("melt: " + meltC + " °C is not above the mold wall at " + moldC + " °C");
        return (meltC - moldC) / (ejectC - moldC);
    }

    static void positive(String name, double value, String unit) {
        if (!(value > 0) || !Double.isFinite(value))
            throw new IllegalArgumentException(name + ": " + value + " " + unit + " is not above zero");
    }
}
