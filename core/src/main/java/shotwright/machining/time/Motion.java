package shotwright.machining.time;

/**
 * Mechanics of moves with constant acceleration. Lengths in mm, speeds in mm/s, acceleration in mm/s².
 */
public final class Motion {
    private Motion() {}

    /**
     * Time of a straight move that enters at speed u and leaves at speed w: up to v where the length allows, else to the peak √(a·L + (u² +
     * w²)/2).
     *
     * @param enterMmPerS speed at the start, at most {@code mmPerS}
     * @param leaveMmPerS speed at the end, at most {@code mmPerS}, and within reach over the length
     */
    public static double timeS(
            double lengthMm, double mmPerS, double accelerationMmPerS2, double enterMmPerS, double leaveMmPerS) {
        if (!(lengthMm > 0)) return 0;
        double u = enterMmPerS, w = leaveMmPerS, a = accelerationMmPerS2;
        double peak = Math.min(mmPerS, Math.sqrt(a * lengthMm + (u * u + w * w) / 2));
        peak = Math.max(peak, Math.max(u, w));
        double ramps = (2 * peak * peak - u * u - w * w) / (2 * a);
        return (2 * peak - u - w) / a + Math.max(0, lengthMm - ramps) / peak;
    }

    /**
     * Speed through a corner so that the path, rounded by a circle, stays within a deviation: √(a·δ·s/(1 − s)), s = sin(θ/2), θ the angle
     * between the two moves, π when they run on straight. Key JDEV.
     */
    public static double cornerMmPerS(double accelerationMmPerS2, double deviationMm, double angleRad) {
        double s = Math.sin(angleRad / 2);
        return s >= 1 ? Double.POSITIVE_INFINITY : Math.sqrt(accelerationMmPerS2 * deviationMm * s / (1 - s));
    }

    /** Speed around an arc: √(a·R). */
    public static double arcMmPerS(double accelerationMmPerS2, double radiusMm) {
        return Math.sqrt(accelerationMmPerS2 * radiusMm);
    }

    /**
     * Time of each move of a chain that starts and ends at rest: a forward pass holds the speed at each joint to what the move before can
     * reach, a backward pass to what the move after can shed.
     *
     * @param lengthMm lengths
     * @param mmPerS wanted speeds
     * @param accelerationMmPerS2 accelerations along the moves
     * @param jointMmPerS most speed at the start of each move; that of the first is not looked at
     */
    public static double[] timesS(
            double[] lengthMm, double[] mmPerS, double[] accelerationMmPerS2, double[] jointMmPerS) {
        int n = lengthMm.length;
        double[] at = new double[n + 1];
        for (int i = 1; i < n; i++) {
            double reach = Math.sqrt(at[i - 1] * at[i - 1] + 2 * accelerationMmPerS2[i - 1] * lengthMm[i - 1]);
            at[i] = Math.min(Math.min(jointMmPerS[i], reach), Math.min(mmPerS[i - 1], mmPerS[i]));
        }
        for (int i = n - 1; i > 0; i--)
            at[i] = Math.min(at[i], Math.sqrt(at[i + 1] * at[i + 1] + 2 * accelerationMmPerS2[i] * lengthMm[i]));
        double[] out = new double[n];
        for (int i = 0; i < n; i++) out[i] = timeS(lengthMm[i], mmPerS[i], accelerationMmPerS2[i], at[i], at[i + 1]);
        return out;
    }
}
