package shotwright.stock;

/**
 * Maker's tolerance of gauge pins from 0.254 to 20.96 mm (key B89). A go pin lies above its size, a no-go pin below, so that a wrong hole is
 * never passed.
 */
public enum GaugeClass {
    X(1.02),
    Y(1.78),
    Z(2.54),
    ZZ(5.08);

    private static final double LEAST_MM = 0.254;
    private static final double MOST_MM = 20.96;

    private final double toleranceUm;

    GaugeClass(double toleranceUm) {
        this.toleranceUm = toleranceUm;
    }

    /** How far a pin may be off, to its own side. */
    public double toleranceUm() {
        return toleranceUm;
    }

    /** Sizes a go pin for a hole may have. */
    public HoleLimits goMm(HoleLimits hole) {
        return new HoleLimits(checked(hole.lowMm()), hole.lowMm() + toleranceUm / 1000);
    }

    /** Sizes a no-go pin for a hole may have. */
    public HoleLimits noGoMm(HoleLimits hole) {
        return new HoleLimits(hole.highMm() - toleranceUm / 1000, checked(hole.highMm()));
    }

    private static double checked(double diaMm) {
        if (!(diaMm >= LEAST_MM && diaMm <= MOST_MM))
            throw new IllegalArgumentException(
                    "gauge pin of " + diaMm + " mm is outside " + LEAST_MM + " … " + MOST_MM + " mm");
        return diaMm;
    }
}
