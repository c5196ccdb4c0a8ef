package shotwright.layout.release;

/** What an ejector pin may push: on the part and on itself. Forces in N, sizes in mm, stresses in MPa. */
public final class PinLoad {
    /** End fixing of a slender pin: both ends guided 0.5, one fixed and one pinned 0.7, both pinned 1, one free 2. */
    public static final double FIXED_PINNED = 0.7;

    private PinLoad() {}

    /** Shear stress around a pin that pushes through a wall, τ = F/(π·d·t). */
    public static double perforationMpa(double forceN, double pinMm, double wallMm) {
        return forceN / (Math.PI * pinMm * wallMm);
    }

    /** Pressure of the pin's face on the part. */
    public static double facePressureMpa(double forceN, double pinMm) {
        return 4 * forceN / (Math.PI * pinMm * pinMm);
    }

    /**
     * Load at which a slender pin buckles, P = π²·E·I/(K·L)², I = π·d⁴/64. For slenderness 4L/d above 100; shorter pins yield first.
     *
     * @param endFactor K
     */
    public static double bucklingN(double modulusMpa, double pinMm, double lengthMm, double endFactor) {
        double inertia = Math.PI * Math.pow(pinMm, 4) / 64;
        return Math.PI * Math.PI * modulusMpa * inertia / Math.pow(endFactor * lengthMm, 2);
    }
}
