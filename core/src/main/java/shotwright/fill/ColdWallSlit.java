package shotwright.fill;

import shotwright.solve.ErrorFunction;

/**
 * Pressure slope of a hot melt between two cold walls a gap h apart, with the melt cold and stiff, then frozen, toward the walls.
 *
 * <p>Temperature at a distance d from a wall: T = Tw + (Tm − Tw)·erf(d/ℓ), with ℓ = 2·√(a·t) for walls touched since t (conduction in the
 * half space), but no more than ℓ = 1.0076·(9·a·x/γ̇)^⅓ at a distance x from where fresh hot melt comes in (Lévêque 1928, equal slope at the
 * wall; 1.0076 = 2/√π·Γ(4/3)). Shear stress τ = G·y with y from the middle, shear rate from τ = η(γ̇, T)·γ̇, none below the no-flow
 * temperature. The mean velocity v·h/2 = ∫ y·γ̇ dy over half the gap fixes the slope G.
 *
 * <p>Symbols: h mm, v mm/s, G MPa/mm, a mm²/s, t s, x mm, T °C. Range: h small against the other sides; shear heat left out, which keeps
 * the pressure on the high side when filling fast. With hot walls it is the isothermal slit (test against F26).
 */
public final class ColdWallSlit {
    private static final int LAYERS = 20;
    private static final double LEVEQUE = 1.0076;

    private final Melt melt;
    private final MeltViscosity viscosity;
    private final double noFlowShare;

    ColdWallSlit(Melt melt, double viscosityFactor) {
        this.melt = melt;
        viscosity = melt.viscosity().times(viscosityFactor);
        noFlowShare = (melt.noFlowC() - melt.moldC()) / (melt.meltC() - melt.moldC());
    }

    /** Depth ℓ of the cooled layer, mm. */
    double layerMm(double contactS, double fromEntryMm, double shearRatePerS) {
        double byTime = 2 * Math.sqrt(melt.diffusivityMm2PerS() * Math.max(0, contactS));
        double byFlow = shearRatePerS > 0
                ? LEVEQUE * Math.cbrt(9 * melt.diffusivityMm2PerS() * Math.max(0, fromEntryMm) / shearRatePerS)
                : Double.POSITIVE_INFINITY;
        return Math.min(byTime, byFlow);
    }

    /** Share of the gap that is frozen for a layer depth. */
    double frozenShare(double gapMm, double layerMm) {
        return Math.min(1, 2 * layerMm * ErrorFunction.inverse(noFlowShare) / gapMm);
    }

    /**
     * Pressure slope for a mean velocity, MPa/mm; infinite when the gap is frozen shut.
     *
     * @param narrowFactor drag of narrow sides, 1 for wide gaps; the velocity is divided by it
     */
    double slopeMpaPerMm(double gapMm, double speedMmPerS, double narrowFactor, double layerMm) {
        if (!(speedMmPerS > 0)) return 0;
        double[] temp = temperatures(gapMm, layerMm);
        if (!(temp[0] > melt.noFlowC())) return Double.POSITIVE_INFINITY;
        double wanted = speedMmPerS / narrowFactor, n = melt.indexRatio();
        double slope = 1e-6 * viscosity.paS(6 * wanted / gapMm, melt.meltC()) * 12 * wanted / (gapMm * gapMm);
        double low = 0, high = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 60; i++) {
            double v = speed(gapMm, slope, temp);
            if (v < wanted) low = slope;
            else high = slope;
            if (Math.abs(v / wanted - 1) < 1e-4) break;
            double next = v > 0 ? slope * Math.pow(wanted / v, n) : 4 * slope;
            boolean inside = next > low && next < high;
            slope = inside ? next : Double.isInfinite(high) ? 4 * slope : (low + high) / 2;
        }
        return slope;
    }

    /** Temperatures of the layers, middle first; two warm-up layers overlap in a thin gap. */
    private double[] temperatures(double gapMm, double layerMm) {
        double[] temp = new double[LAYERS];
        for (int k = 0; k < LAYERS; k++) {
            double y = (k + 0.5) * gapMm / 2 / LAYERS, near = gapMm / 2 - y, far = gapMm / 2 + y;
            double share = layerMm > 0
                    ? Math.max(0, ErrorFunction.of(near / layerMm) + ErrorFunction.of(far / layerMm) - 1)
                    : 1;
            temp[k] = melt.moldC() + (melt.meltC() - melt.moldC()) * share;
        }
        return temp;
    }

    /** Mean velocity at a slope, mm/s. */
    private double speed(double gapMm, double slopeMpaPerMm, double[] temp) {
        double layer = gapMm / 2 / LAYERS, flow = 0;
        for (int k = 0; k < LAYERS && temp[k] > melt.noFlowC(); k++) {
            double y = (k + 0.5) * layer;
            flow += y * viscosity.rateAtPerS(slopeMpaPerMm * 1e6 * y, temp[k]) * layer;
        }
        return flow / (gapMm / 2);
    }
}
