package shotwright.layout.release;

/**
 * How hard a part holds on to a core. Sizes in mm, E and p in MPa, forces in N.
 *
 * <p>Closed sleeve or box: p = 2·t·E(Te)·ε / [d·(1 − ν/2)], F = μ·p·A with the grip area A, wall t, core diameter d (perimeter/π), free
 * shrink ε at ejection. Thin walls, t ≪ d. Source: keys of SOURCES.md GD, MEN (from memory).
 */
public final class CoreGrip {
    /** Air pressure that holds a part on a closed core, MPa. */
    public static final double ATMOSPHERE_MPA = 0.1013;

    private CoreGrip() {}

    /** Pressure of the shrunk part on the core, MPa. */
    public static double pressureMpa(
            double wallMm, double modulusMpa, double freeShrinkShare, double coreDiameterMm, double poissonRatio) {
        return 2 * wallMm * modulusMpa * freeShrinkShare / (coreDiameterMm * (1 - poissonRatio / 2));
    }

    /** Ejection force without draft, F = μ·p·A, N. */
    public static double forceN(double frictionRatio, double pressureMpa, double gripAreaMm2) {
        return frictionRatio * pressureMpa * gripAreaMm2;
    }

    /**
     * What draft leaves of friction: (μ·cosφ − sinφ) / (1 + μ·sinφ·cosφ), never below 0. Stands in place of μ. Zero when tanφ ≥ μ: the part
     * lets go by itself. Source: key of SOURCES.md: POU (from memory).
     */
    public static double draftFactor(double frictionRatio, double draftDeg) {
        double s = Math.sin(Math.toRadians(draftDeg)), c = Math.cos(Math.toRadians(draftDeg));
        return Math.max(0, (frictionRatio * c - s) / (1 + frictionRatio * s * c));
    }

    /** Force of the air on a closed core while nothing lets air in, N. */
    public static double vacuumN(double coreAreaMm2) {
        return ATMOSPHERE_MPA * coreAreaMm2;
    }

    /**
     * Ejection force by the cross-section that was kept from shrinking, F = μ·cosφ·E(Te)·α·(T_solid − Te)·A_eff, N. Source: key of SOURCES.md: KAZ
     * (from memory).
     *
     * @param sectionMm2 area of the wall's cross-section around the core
     */
    public static double bySectionN(
            double frictionRatio, double draftDeg, double modulusMpa, double freeShrinkShare, double sectionMm2) {
        return frictionRatio * Math.cos(Math.toRadians(draftDeg)) * modulusMpa * freeShrinkShare * sectionMm2;
    }
}
