package shotwright.layout.align;

/** What a dowel may carry and how far it may stand out. Sizes in mm, forces in N, stresses in MPa. */
public final class DowelLoad {
    /** Shear a hardened dowel may take (common practice). */
    public static final double SHEAR_LIMIT_MPA = 150;

    /** Pressure of a dowel on aluminium (common practice). */
    public static final double BEARING_LIMIT_MPA = 60;

    /** Expansion of aluminium, 1/K. */
    public static final double ALUMINIUM_PER_K = 23.6e-6;

    private DowelLoad() {}

    /**
     * How far a pin may stand into its slip hole before a half that is tilted by hand jams on it: clearance / tan(tilt).
     *
     * @param clearanceMm diametral clearance
     * @param tiltDeg tilt of the half while it is lifted off by hand; 0.5° is a careful hand
     */
    public static double noJamMm(double clearanceMm, double tiltDeg) {
        return clearanceMm / Math.tan(Math.toRadians(tiltDeg));
    }

    /** Shear stress τ = 4F/(π·d²). */
    public static double shearMpa(double forceN, double diameterMm) {
        return 4 * forceN / (Math.PI * diameterMm * diameterMm);
    }

    /** Bearing pressure F/(d·L). */
    public static double bearingMpa(double forceN, double diameterMm, double lengthMm) {
        return forceN / (diameterMm * lengthMm);
    }

    /** How much the pitch of the pins differs between halves of different warmth, α·ΔT·L, mm. */
    public static double pitchMismatchMm(double pitchMm, double warmthDifferenceK) {
        return ALUMINIUM_PER_K * warmthDifferenceK * pitchMm;
    }
}
