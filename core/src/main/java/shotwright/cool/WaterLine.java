package shotwright.cool;

/**
 * A drilled water line.
 *
 * <p>Dittus–Boelter: Nu = 0.023·Re^0.8·Pr^0.4, Re above 1e4. Gnielinski: Nu = (f/8)(Re − 1000)Pr/[1 + 12.7·√(f/8)·(Pr^⅔ − 1)],
 * f = (0.79·ln Re − 1.64)^−2, 3000 < Re < 5e6. Flow for a Reynolds number: Q = Re·π·d·ν/4. Row of lines under a plane:
 * S/L = 2π/ln[(2P/πd)·sinh(2πz/P)]. Symbols: d bore, P pitch, z depth, all in one length unit; ν m²/s. Source: INC (from memory).
 */
public final class WaterLine {
    private WaterLine() {}

    public static double dittusBoelterRatio(double reynoldsRatio, double prandtlRatio) {
        return 0.023 * Math.pow(reynoldsRatio, 0.8) * Math.pow(prandtlRatio, 0.4);
    }

    /** Friction factor of a smooth tube (Petukhov). */
    public static double frictionFactor(double reynoldsRatio) {
        return Math.pow(0.79 * Math.log(reynoldsRatio) - 1.64, -2);
    }

    public static double gnielinskiRatio(double reynoldsRatio, double prandtlRatio) {
        double f8 = frictionFactor(reynoldsRatio) / 8;
        return f8
                * (reynoldsRatio - 1000)
                * prandtlRatio
                / (1 + 12.7 * Math.sqrt(f8) * (Math.cbrt(prandtlRatio * prandtlRatio) - 1));
    }

    /** Flow that gives a Reynolds number, L/min. */
    public static double flowLitrePerMin(double reynoldsRatio, double boreMm, double viscosityM2PerS) {
        return reynoldsRatio * Math.PI * boreMm / 1000 * viscosityM2PerS / 4 * 60_000;
    }

    /** Conduction shape factor per length of a row of lines under a plane face. */
    public static double rowShapeFactor(double boreMm, double depthMm, double pitchMm) {
        double x = 2 * pitchMm / (Math.PI * boreMm) * Math.sinh(2 * Math.PI * depthMm / pitchMm);
        return 2 * Math.PI / Math.log(x);
    }
}
