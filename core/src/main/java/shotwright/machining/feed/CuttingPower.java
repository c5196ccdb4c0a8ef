package shotwright.machining.feed;

/**
 * Metal removed, power, torque and mean force. Depth ap, width ae in mm, feed vf in mm/min, specific force kc in N/mm²; key MILLF.
 */
public final class CuttingPower {
    /** Share of the motor's power that reaches the cutter, middle of 0.75 … 0.85 (key MILLF). */
    public static final double EFFICIENCY = 0.8;

    private CuttingPower() {}

    /** Metal removed: ap·ae·vf/1000. */
    public static double removalCm3PerMin(double depthMm, double widthMm, double feedMmPerMin) {
        return depthMm * widthMm * feedMmPerMin / 1000;
    }

    /** Power at the cutter, W: ap·ae·vf·kc/60 000. */
    public static double powerW(double depthMm, double widthMm, double feedMmPerMin, double kcNPerMm2) {
        return depthMm * widthMm * feedMmPerMin * kcNPerMm2 / 60_000;
    }

    /** Torque, N·m: P/(2π·n). */
    public static double torqueNm(double powerW, double speedRpm) {
        return powerW / (2 * Math.PI * speedRpm / 60);
    }

    /** Tangential force averaged over a turn, N: P/v. */
    public static double meanForceN(double powerW, double surfaceMPerMin) {
        return 60 * powerW / surfaceMPerMin;
    }
}
