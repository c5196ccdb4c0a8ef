package shotwright.press;

/**
 * Clamp of a screw vise from the torque on its handle: F = 2π·η·T/p. Symbols: T torque N·m, p lead mm, η efficiency of screw and thrust face
 * (0.25 … 0.35 greased, common practice). A work balance of one turn; it holds while the vise does not bend.
 */
public final class ViseClamp {
    /** Usual efficiency of a greased vise screw (common practice). */
    public static final double EFFICIENCY = 0.3;

    private ViseClamp() {}

    /** Clamp in kN. */
    public static double forceKn(double torqueNm, double leadMm, double efficiencyShare) {
        if (!(leadMm > 0)) throw new IllegalArgumentException("leadMm: " + leadMm + " is not above zero");
        return 2 * Math.PI * efficiencyShare * torqueNm / leadMm;
    }

    /** Torque in N·m for a clamp in kN. */
    public static double torqueNm(double forceKn, double leadMm, double efficiencyShare) {
        return forceKn * leadMm / (2 * Math.PI * efficiencyShare);
    }
}
