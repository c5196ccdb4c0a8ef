package shotwright.cool;

/**
 * Heat a mold loses to still air and by radiation.
 *
 * <p>Vertical plate, Squire–Eckert: Nu = 0.678·Ra^¼·(Pr/(0.952 + Pr))^¼, laminar, Ra below 1e9 (LIEN Example 8.1). Churchill–Chu:
 * Nu = {0.825 + 0.387·Ra^(1/6)/[1 + (0.492/Pr)^(9/16)]^(8/27)}², any Ra (INC, from memory). Ra = g·β·ΔT·L³/(ν·α), h = Nu·k/L. Radiation:
 * h_r = 4·ε·σ·T_m³ for small differences. Symbols: L plate height, m; k W/(m·K); ν, α m²/s; β 1/K; T K; h W/(m²·K).
 */
public final class AirCooling {
    /** Standard gravity, m/s² (exact by definition). */
    private static final double GRAVITY = 9.80665;
    /** Stefan–Boltzmann constant, W/(m²·K⁴) (CODATA 2018). */
    private static final double STEFAN_BOLTZMANN = 5.670374419e-8;

    private AirCooling() {}

    /** Rayleigh number of a plate of height L. */
    public static double rayleighRatio(
            double plateK, double airK, double heightM, double viscosityM2PerS, double diffusivityM2PerS) {
        double beta = 1 / airK;
        return GRAVITY * beta * Math.abs(plateK - airK) * Math.pow(heightM, 3) / (viscosityM2PerS * diffusivityM2PerS);
    }

    /** Nusselt number, Squire–Eckert. */
    public static double squireEckertRatio(double rayleighRatio, double prandtlRatio) {
        return 0.678 * Math.pow(rayleighRatio, 0.25) * Math.pow(prandtlRatio / (0.952 + prandtlRatio), 0.25);
    }

    /** Nusselt number, Churchill–Chu. */
    public static double churchillChuRatio(double rayleighRatio, double prandtlRatio) {
        double below = Math.pow(1 + Math.pow(0.492 / prandtlRatio, 9.0 / 16), 8.0 / 27);
        double root = 0.825 + 0.387 * Math.pow(rayleighRatio, 1.0 / 6) / below;
        return root * root;
    }

    /** Heat transfer by radiation about a mean temperature, W/(m²·K). */
    public static double radiationWPerM2K(double emissivityShare, double meanK) {
        return 4 * emissivityShare * STEFAN_BOLTZMANN * meanK * meanK * meanK;
    }

    /**
     * Still-air heat transfer of a bare mold: Squire–Eckert with air at film temperature about 40 °C (ν 1.7e-5, α 2.4e-5 m²/s, k 0.0272
     * W/(m·K), Pr 0.71) plus radiation of machined aluminium, W/(m²·K).
     */
    public static double stillAirWPerM2K(double plateC, double airC, double heightMm, double emissivityShare) {
        double plateK = plateC + 273.15, airK = airC + 273.15, heightM = heightMm / 1000;
        if (Math.abs(plateK - airK) < 0.5) plateK = airK + 0.5;
        double nu = squireEckertRatio(rayleighRatio(plateK, airK, heightM, 1.7e-5, 2.4e-5), 0.71);
        return nu * 0.0272 / heightM + radiationWPerM2K(emissivityShare, (plateK + airK) / 2);
    }
}
