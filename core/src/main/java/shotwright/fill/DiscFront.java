package shotwright.fill;

/**
 * Melt front in a disc of gap h fed at its middle over radius r₀; isothermal, no slip, h ≪ r.
 *
 * <p>Constant flow: r = √(r₀² + Q·t/(π·h)); Newtonian P = (6ηQ/πh³)·ln(r/r₀); power law
 * P = (2m/h)·[(2n+1)/n·Q/(π·h²)]ⁿ·(r^(1−n) − r₀^(1−n))/(1−n). Constant pressure, Newtonian:
 * t = (12η/(P·h²))·[½R²·ln(R/r₀) − ¼(R² − r₀²)]. Opening force of the whole disc with its gate, Newtonian: F = (3ηQ/h³)·(R² − r₀²). Mean
 * over gate pressure, power law, r₀ → 0: (1−n)/(3−n).
 *
 * <p>Units: mm, s, mm³/s, MPa, N, m Pa·sⁿ. Source: lubrication flow, Bird, Stewart and Lightfoot; ZTF §3.1 (from memory); force worked out.
 *
 * @param gateRadiusMm r₀
 * @param gapMm h
 * @param consistencyPaSn m, equal to η when n = 1
 * @param exponentRatio n
 */
public record DiscFront(double gateRadiusMm, double gapMm, double consistencyPaSn, double exponentRatio) {
    /** Radius of the front after a time at constant flow, mm. */
    public double radiusAtFlowMm(double flowMm3PerS, double timeS) {
        return Math.sqrt(gateRadiusMm * gateRadiusMm + flowMm3PerS * timeS / (Math.PI * gapMm));
    }

    /** Time to reach a radius at constant flow, s. */
    public double timeAtFlowS(double flowMm3PerS, double radiusMm) {
        return Math.PI * gapMm * (radiusMm * radiusMm - gateRadiusMm * gateRadiusMm) / flowMm3PerS;
    }

    /** Pressure at the gate with the front at a radius, MPa. Near n = 1 the logarithm takes over without a step. */
    public double pressureMpa(double flowMm3PerS, double radiusMm) {
        double n = exponentRatio, q = 1 - n;
        double shear = (2 * n + 1) / n * flowMm3PerS / (Math.PI * gapMm * gapMm);
        double log = Math.log(radiusMm / gateRadiusMm), ratio = q * log;
        double reach = Math.pow(gateRadiusMm, q) * (Math.abs(ratio) < 1e-12 ? log : Math.expm1(ratio) / q);
        return 2 * consistencyPaSn / gapMm * Math.pow(shear, n) * reach * 1e-6;
    }

    /** Time to reach a radius at constant gate pressure, Newtonian (n must be 1), s. */
    public double timeAtPressureS(double pressureMpa, double radiusMm) {
        newtonian();
        double r = radiusMm, r0 = gateRadiusMm;
        double reach = r * r / 2 * Math.log(r / r0) - (r * r - r0 * r0) / 4;
        return 12 * consistencyPaSn / (pressureMpa * 1e6 * gapMm * gapMm) * reach;
    }

    /** Force that opens the mold with the front at a radius, gate included, Newtonian (n must be 1), N. */
    public double openingForceN(double flowMm3PerS, double radiusMm) {
        newtonian();
        double r0 = gateRadiusMm;
        return 3 * consistencyPaSn * 1e-6 * flowMm3PerS / Math.pow(gapMm, 3) * (radiusMm * radiusMm - r0 * r0);
    }

    /** Mean over the disc against the pressure at a small gate. */
    public static double meanPressureShare(double exponentRatio) {
        return (1 - exponentRatio) / (3 - exponentRatio);
    }

    private void newtonian() {
        if (exponentRatio != 1)
            throw new IllegalArgumentException("n: " + exponentRatio + ", this closed form holds for n = 1 only");
    }
}
