package shotwright.sizing;

import shotwright.measure.Units;

/**
 * Force that pushes the halves apart. Areas are projected areas of all cavities and the feed, holes that shut off taken out; overlaps count
 * once. Sources: common practice for the rule, CRAW §4.3.5 for pressure and chart, closed forms of Newtonian and power-law flow for the disc.
 */
public final class ClampForce {
    /** Clamp per projected area of the rule, short tons per square inch, bare of allowances (common practice; published spread 2 to 5). */
    public static final double RULE_SHORT_TONS_PER_IN2 = 2.5;

    private ClampForce() {}

    /** Rule F = f·A in kN; 2.5 short ton/in² are 34.5 MPa. */
    public static double ruleKn(double areaMm2, double shortTonsPerIn2) {
        return meanPressureKn(shortTonsPerIn2 * Units.MPA_PER_SHORT_TON_PER_IN2, areaMm2);
    }

    /** Area in mm² that a clamp opens at a rule, bare of allowances. */
    public static double areaMm2(double clampKn, double shortTonsPerIn2) {
        return clampKn * 1000 / (shortTonsPerIn2 * Units.MPA_PER_SHORT_TON_PER_IN2);
    }

    /** F = p̄·A in kN. */
    public static double meanPressureKn(double meanMpa, double areaMm2) {
        return meanMpa * areaMm2 / 1000;
    }

    /**
     * Mean pressure read off a chart of easy-flowing resins, times the resin's viscosity factor and a factor for doubt (1.10 … 1.20), in MPa;
     * walls 0.5 to 3 mm, flow ratio up to 250. CRAW §4.3.5.
     */
    public static double chartMpa(double chartMpa, double viscosityFactor, double doubtFactor) {
        return chartMpa * viscosityFactor * doubtFactor;
    }

    /** Area of a round projection in mm². */
    public static double discMm2(double diameterMm) {
        return Math.PI * diameterMm * diameterMm / 4;
    }

    /** Closing force of a deep part, F = A·(p + k·d) in kN; k in MPa per mm of depth, d in mm (TBC Example 16.11). */
    public static double withDepthKn(double areaMm2, double pressureMpa, double perDepthMpaPerMm, double depthMm) {
        return meanPressureKn(pressureMpa + perDepthMpaPerMm * depthMm, areaMm2);
    }

    /**
     * Opening force of a centre-gated disc at the end of filling, Newtonian, gate disc at gate pressure included: F = (3ηQ/h³)·(R² − r0²), N; η
     * Pa·s, Q m³/s, lengths m.
     */
    public static double discN(
            double viscosityPaS, double flowM3PerS, double gapM, double radiusM, double gateRadiusM) {
        return 3 * viscosityPaS * flowM3PerS / (gapM * gapM * gapM) * (radiusM * radiusM - gateRadiusM * gateRadiusM);
    }

    /** The same without the gate disc, F = (3ηQ/h³)·(R² − r0² − 2·r0²·ln(R/r0)), N. */
    public static double annulusN(
            double viscosityPaS, double flowM3PerS, double gapM, double radiusM, double gateRadiusM) {
        double r0 = gateRadiusM * gateRadiusM;
        return 3
                * viscosityPaS
                * flowM3PerS
                / (gapM * gapM * gapM)
                * (radiusM * radiusM - r0 - 2 * r0 * Math.log(radiusM / gateRadiusM));
    }

    /** Mean over gate pressure in a disc with a small gate at the end of filling, (1 − n)/(3 − n). */
    public static double discMeanShare(double index) {
        return (1 - index) / (3 - index);
    }

    /** Mean over gate pressure in a strip at the end of filling: one half, for any index (the gradient is even). */
    public static double stripMeanShare() {
        return 0.5;
    }

    /** Clamp left of a nameplate after a share is lost to plates that do not close in parallel (MDT: 10 %). */
    public static double usableKn(double nameplateKn, double lostShare) {
        return nameplateKn * (1 - lostShare);
    }
}
