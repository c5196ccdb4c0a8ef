package shotwright.sizing;

/** Pressure a press puts into the melt, and what a part roughly asks for. Sources: common practice; CRAW for the flow ratio idea. */
public final class MeltPressure {
    /** Pressure the flow-length guide is given at, MPa (common practice: 80 to 100). */
    public static final double GUIDE_MPA = 90;

    /** Wall the flow-length guide is given at, mm. */
    public static final double GUIDE_WALL_MM = 2;

    /** Highest answer of the rough estimate, MPa: above it the only message is "too thin for its length". */
    public static final double ROUGH_CAP_MPA = 400;

    /** Lowest answer, MPa: nozzle and feed alone take a few. */
    public static final double ROUGH_LEAST_MPA = 5;

    private MeltPressure() {}

    /** Melt pressure under a plunger, p = 4Fη/(πD²) in MPa; η 0.60 … 0.85 is what pellets and spreader leave. */
    public static double plungerMpa(double forceKn, double diameterMm, double efficiencyShare) {
        return 4000 * forceKn * efficiencyShare / (Math.PI * diameterMm * diameterMm);
    }

    /** Melt pressure from the line pressure of an air or oil cylinder, p_line·(D_cylinder/D_plunger)²·η in MPa. */
    public static double cylinderMpa(double lineMpa, double cylinderMm, double plungerMm, double efficiencyShare) {
        double ratio = cylinderMm / plungerMm;
        return lineMpa * ratio * ratio * efficiencyShare;
    }

    /**
     * Melt pressure a flow length asks for, rough (±40 %): the guide L/h = ref·(h/2 mm)·√(p/90 MPa) turned round. Kept between
     * {@link #ROUGH_LEAST_MPA} and {@link #ROUGH_CAP_MPA}.
     *
     * @param flowLengthMm longest way from the gate
     * @param wallMm wall along it
     * @param guideRatio the resin's flow length over wall at 90 MPa and 2 mm
     */
    public static double roughMpa(double flowLengthMm, double wallMm, double guideRatio) {
        double share = flowLengthMm / wallMm / (guideRatio * wallMm / GUIDE_WALL_MM);
        return Math.clamp(GUIDE_MPA * share * share, ROUGH_LEAST_MPA, ROUGH_CAP_MPA);
    }
}
