package shotwright.fill;

import shotwright.solve.ErrorFunction;

/**
 * Skin that freezes on each cold face while the melt passes: δ = 2λ·√(a·t), erf λ = (Tnf − Tw)/(Tm − Tw).
 *
 * <p>Symbols: δ mm per face; a mm²/s; t contact time, s; Tnf no-flow, Tw mold wall, Tm melt, °C. Range: δ below a quarter of the wall; no
 * shear heat, no fresh melt, so an upper bound. Source: conduction in the half space (Carslaw and Jaeger).
 */
public final class FrozenLayer {
    private FrozenLayer() {}

    /** 2λ, the factor before √(a·t). */
    public static double growthFactor(double meltC, double moldC, double noFlowC) {
        if (!(moldC < meltC))
            throw new IllegalArgumentException("melt: " + meltC + " °C is not above " + moldC + " °C");
        if (noFlowC <= moldC) return 0;
        if (!(noFlowC < meltC))
            throw new IllegalArgumentException("no-flow: " + noFlowC + " °C is not below the melt at " + meltC + " °C");
        return 2 * ErrorFunction.inverse((noFlowC - moldC) / (meltC - moldC));
    }

    /** Thickness on one face, mm. */
    public static double thicknessMm(
            double timeS, double diffusivityMm2PerS, double meltC, double moldC, double noFlowC) {
        return growthFactor(meltC, moldC, noFlowC) * Math.sqrt(diffusivityMm2PerS * Math.max(0, timeS));
    }
}
