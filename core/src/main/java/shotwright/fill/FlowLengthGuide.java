package shotwright.fill;

/**
 * Flow length a resin reaches against wall, scaled from its guide value at 2 mm and 80 to 100 MPa: L/h = ref·(h/2)·√(p/90).
 *
 * <p>Symbols: L longest way, h wall, mm; p melt pressure at the start of the way, MPa; ref the resin's guide ratio. Range: rough, ±40 %.
 * Source: isothermal flow at constant pressure until the wall has frozen, L ∝ h²·√(p/η) (worked out); guide ratios: trade tables (from
 * memory).
 */
public final class FlowLengthGuide {
    private static final double GUIDE_WALL_MM = 2;
    private static final double GUIDE_PRESSURE_MPA = 90;

    private FlowLengthGuide() {}

    /** Flow length over wall that can be reached. */
    public static double reachableRatio(double guideRatio, double wallMm, double pressureMpa) {
        if (!(wallMm > 0)) throw new IllegalArgumentException("wall: " + wallMm + " mm is not above zero");
        if (!(pressureMpa >= 0)) throw new IllegalArgumentException("pressure: " + pressureMpa + " MPa is below zero");
        return guideRatio * (wallMm / GUIDE_WALL_MM) * Math.sqrt(pressureMpa / GUIDE_PRESSURE_MPA);
    }

    /** How a use of the reachable ratio is judged: up to 0.7 fine, up to 1 risky, beyond no. */
    public static FillResult.Verdict judge(double usedShare) {
        if (usedShare <= 0.7) return FillResult.Verdict.FILLS;
        return usedShare <= 1 ? FillResult.Verdict.DOUBTFUL : FillResult.Verdict.SHORT;
    }
}
