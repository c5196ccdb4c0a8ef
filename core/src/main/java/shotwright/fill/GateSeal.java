package shotwright.fill;

/**
 * Time until a gate is frozen through: the gate cools like a wall or a rod until its middle is at the no-flow temperature.
 *
 * <p>Slab: t = h²/(π²a)·ln[4/π·(Tm − Tw)/(Tnf − Tw)]. Round: t = d²/(23.133·a)·ln[1.602·(Tm − Tw)/(Tnf − Tw)].
 *
 * <p>Symbols: h depth, d diameter, mm; a mm²/s; Tm melt, Tw mold, Tnf no-flow temperature, °C; t in s. Range: real gates seal after 1 to 3
 * times this, because hold keeps feeding hot melt (common practice). Source: MEN conduction forms (from memory).
 */
public final class GateSeal {
    private static final double BETA = 2.404825557695773;
    private static final double TWO_OVER_BETA_J1 = 2 / (BETA * 0.5191474972894669);

    private GateSeal() {}

    public static double slabS(double depthMm, double diffusivityMm2PerS, double meltC, double moldC, double noFlowC) {
        double theta = excess(meltC, moldC, noFlowC);
        return Math.max(
                0, depthMm * depthMm / (Math.PI * Math.PI * diffusivityMm2PerS) * Math.log(4 / Math.PI * theta));
    }

    public static double roundS(
            double diameterMm, double diffusivityMm2PerS, double meltC, double moldC, double noFlowC) {
        double theta = excess(meltC, moldC, noFlowC);
        return Math.max(
                0,
                diameterMm * diameterMm / (4 * BETA * BETA * diffusivityMm2PerS) * Math.log(TWO_OVER_BETA_J1 * theta));
    }

    private static double excess(double meltC, double moldC, double noFlowC) {
        if (!(moldC < noFlowC && noFlowC < meltC))
            throw new IllegalArgumentException(
                    "no-flow: " + noFlowC + " °C does not lie between mold " + moldC + " °C and melt " + meltC + " °C");
        return (meltC - moldC) / (noFlowC - moldC);
    }
}
