package shotwright.layout.vent;

/**
 * Air through a vent. Laminar slot flow Q = w·h³·Δp/(12·μ·L), capped where the air reaches the speed of sound, Q ≤ 0.58·A·340 m/s. Sizes in
 * mm, Δp in MPa, flow in mm³/s; air at 100 °C, μ = 2.2e-5 Pa·s. Source: common practice (key KAZ ch. 8; slot flow standard, cap by isentropic flow).
 */
public final class VentFlow {
    /** Dynamic viscosity of air at 100 °C, Pa·s. */
    public static final double AIR_PA_S = 2.2e-5;

    private static final double CHOKING_SHARE = 0.58;
    private static final double SOUND_MM_PER_S = 340e3;

    private VentFlow() {}

    /** Slot flow without the cap, mm³/s. */
    public static double laminarMm3PerS(double widthMm, double depthMm, double landMm, double overpressureMpa) {
        return widthMm * depthMm * depthMm * depthMm * overpressureMpa / (12 * AIR_PA_S * 1e-6 * landMm);
    }

    /** The most a vent passes whatever the pressure, mm³/s. */
    public static double chokedMm3PerS(double widthMm, double depthMm) {
        return CHOKING_SHARE * widthMm * depthMm * SOUND_MM_PER_S;
    }

    /** What a vent passes, mm³/s. */
    public static double flowMm3PerS(double widthMm, double depthMm, double landMm, double overpressureMpa) {
        return Math.min(laminarMm3PerS(widthMm, depthMm, landMm, overpressureMpa), chokedMm3PerS(widthMm, depthMm));
    }

    /** Temperature of trapped air pressed together without loss of heat, T₂ = T₁·(p₂/p₁)^0.2857, °C: what burns the plastic. */
    public static double trappedAirC(double startC, double pressureRatio) {
        return (startC + 273.15) * Math.pow(pressureRatio, 0.2857) - 273.15;
    }
}
