package shotwright.layout.gate;

import shotwright.resin.ChannelFlow;

/**
 * Apparent shear rate in a gate, γ̇ = 6Q/(w·h²) for a slot and 4Q/(πr³) for a round one, and the opening that keeps a limit. Flow in mm³/s,
 * sizes in mm. The limits of resins are limits on the apparent value. Source: standard.
 */
public final class GateShear {
    private GateShear() {}

    public static double slotPerS(double flowMm3PerS, double widthMm, double depthMm) {
        return ChannelFlow.slotShearRatePerS(flowMm3PerS * 1e-9, widthMm * 1e-3, depthMm * 1e-3);
    }

    public static double roundPerS(double flowMm3PerS, double diameterMm) {
        return ChannelFlow.roundShearRatePerS(flowMm3PerS * 1e-9, diameterMm * 1e-3 / 2);
    }

    /** The depth of a slot of given width at which the shear rate just reaches a limit, mm. */
    public static double slotDepthMm(double flowMm3PerS, double widthMm, double limitPerS) {
        return Math.sqrt(6 * flowMm3PerS / (widthMm * limitPerS));
    }

    /** The diameter of a round gate at which the shear rate just reaches a limit, mm. */
    public static double roundDiameterMm(double flowMm3PerS, double limitPerS) {
        return 2 * Math.cbrt(4 * flowMm3PerS / (Math.PI * limitPerS));
    }
}
