package shotwright.layout.gate;

/**
 * Time until a gate is frozen through, by conduction alone: slab t = h²/(π²a)·ln[(4/π)Θ], round t = d²/(23.13a)·ln[1.602Θ], with Θ = (Tm −
 * Tw)/(Tnf − Tw), thermal diffusivity a in mm²/s, sizes in mm. Melt that still flows during hold makes the real time 1 to 3 times as long.
 * Source: series solution of the slab and the rod, first term (Carslaw and Jaeger)
 */
public final class GateFreeze {
    private GateFreeze() {}

    /** Seconds until a slot of depth h is frozen. */
    public static double slotS(double depthMm, double diffusivityMm2PerS, double meltC, double wallC, double noFlowC) {
        double theta = theta(meltC, wallC, noFlowC);
        return depthMm * depthMm / (Math.PI * Math.PI * diffusivityMm2PerS) * Math.log(4 / Math.PI * theta);
    }

    /** Seconds until a round gate of diameter d is frozen. */
    public static double roundS(
            double diameterMm, double diffusivityMm2PerS, double meltC, double wallC, double noFlowC) {
        double theta = theta(meltC, wallC, noFlowC);
        return diameterMm * diameterMm / (23.13 * diffusivityMm2PerS) * Math.log(1.602 * theta);
    }

    /** The depth of a slot that is frozen after a given time, mm. */
    public static double slotDepthMm(
            double timeS, double diffusivityMm2PerS, double meltC, double wallC, double noFlowC) {
        double log = Math.log(4 / Math.PI * theta(meltC, wallC, noFlowC));
        return Math.PI * Math.sqrt(timeS * diffusivityMm2PerS / log);
    }

    private static double theta(double meltC, double wallC, double noFlowC) {
        if (!(meltC > noFlowC && noFlowC > wallC))
            throw new IllegalArgumentException("temperatures: melt " + meltC + ", no-flow " + noFlowC + ", wall "
                    + wallC + " °C do not fall in this order");
        return (meltC - wallC) / (noFlowC - wallC);
    }
}
