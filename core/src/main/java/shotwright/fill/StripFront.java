package shotwright.fill;

/**
 * Melt front in a strip of width W, gap H, fed over its whole end; power law η = m·γ̇^(n−1), isothermal, no slip, H ≪ W, no drag of the
 * narrow sides.
 *
 * <p>Constant flow: x = Q·t/(W·H), P = (2m·x/H)·[(2n+1)/n·2Q/(W·H²)]ⁿ. Constant pressure: x = [(n+1)/n·c·t]^(n/(n+1)),
 * c = n/(2n+1)·(H/2)·(P·H/2m)^(1/n); with n = 1 this is x = √(P·H²·t/(6η)).
 *
 * <p>Units: mm, s, mm³/s, MPa, m Pa·sⁿ. Source: lubrication flow, Bird, Stewart and Lightfoot; ZTF §3.1 (from memory).
 *
 * @param widthMm W
 * @param gapMm H
 * @param consistencyPaSn m
 * @param exponentRatio n
 */
public record StripFront(double widthMm, double gapMm, double consistencyPaSn, double exponentRatio) {
    /** Where the front stands after a time at constant flow, mm. */
    public double placeAtFlowMm(double flowMm3PerS, double timeS) {
        return flowMm3PerS * timeS / (widthMm * gapMm);
    }

    /** Pressure at the gate with the front at x, MPa. */
    public double pressureMpa(double flowMm3PerS, double frontMm) {
        double n = exponentRatio, shear = (2 * n + 1) / n * 2 * flowMm3PerS / (widthMm * gapMm * gapMm);
        return 2 * consistencyPaSn * frontMm / gapMm * Math.pow(shear, n) * 1e-6;
    }

    /** Where the front stands after a time at constant gate pressure, mm. */
    public double placeAtPressureMm(double pressureMpa, double timeS) {
        double n = exponentRatio;
        double c = n / (2 * n + 1) * (gapMm / 2) * Math.pow(pressureMpa * 1e6 * gapMm / (2 * consistencyPaSn), 1 / n);
        // c carries mm/s · mm^(1/n) because the gap is in mm and the front in mm: x^(1/n) dx = c dt
        return Math.pow((n + 1) / n * c * timeS, n / (n + 1));
    }
}
