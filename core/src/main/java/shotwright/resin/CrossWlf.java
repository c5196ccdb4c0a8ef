package shotwright.resin;

import shotwright.measure.Source;
import shotwright.measure.Units;

/**
 * Cross viscosity with Williams–Landel–Ferry temperature shift: η = η0/[1 + (η0·γ̇/τ*)^(1−n)], η0 = D1·exp[−A1·(T − T*)/(A2 + T − T*)],
 * T* = D2 + D3·p, A2 = Ã2 + D3·p; T in K, η0 without limit below T*. Valid in the fitted shear range; sources CHW, CRCW.
 *
 * @param nIndex power-law index at high rate, 0 … 1
 * @param tauStarPa stress at which thinning sets in, Pa
 * @param d1PaS reference viscosity, Pa·s
 * @param d2K reference temperature without pressure, K
 * @param d3KPerPa how the reference temperature rises with pressure, K/Pa; 0 unless it was fitted on pressure data
 * @param a1Factor first shift constant
 * @param a2K second shift constant, K
 * @param shearLowPerS fitted from, 1/s
 * @param shearHighPerS fitted to, 1/s
 * @param source where the set comes from
 * @param caution what a reader must know
 */
public record CrossWlf(
        double nIndex,
        double tauStarPa,
        double d1PaS,
        double d2K,
        double d3KPerPa,
        double a1Factor,
        double a2K,
        double shearLowPerS,
        double shearHighPerS,
        Source source,
        String caution)
        implements Viscosity {
    /** Taken for a melt below its reference temperature, Pa·s: it does not flow. */
    private static final double SOLID_PAS = 1e12;

    public CrossWlf {
        if (!(nIndex > 0 && nIndex < 1))
            throw new IllegalArgumentException("nIndex: " + nIndex + " is not between 0 and 1");
        if (!(tauStarPa > 0) || !(d1PaS > 0) || !(a1Factor > 0) || !(a2K > 0))
            throw new IllegalArgumentException("tauStarPa, d1PaS, a1Factor and a2K must be above zero");
    }

    @Override
    public double viscosityPaS(double shearRatePerS, double meltC) {
        return viscosityPaS(shearRatePerS, meltC, 0);
    }

    /** Viscosity under pressure, Pa·s. */
    public double viscosityPaS(double shearRatePerS, double meltC, double pressurePa) {
        double eta0 = zeroShearPaS(meltC, pressurePa);
        return eta0 / (1 + Math.pow(eta0 * Math.max(0, shearRatePerS) / tauStarPa, 1 - nIndex));
    }

    /** Viscosity at rest η0, Pa·s. */
    public double zeroShearPaS(double meltC, double pressurePa) {
        double above = Units.cToK(meltC) - d2K - d3KPerPa * pressurePa;
        if (above <= 0) return SOLID_PAS;
        return Math.min(SOLID_PAS, d1PaS * Math.exp(-a1Factor * above / (a2K + d3KPerPa * pressurePa + above)));
    }
}
