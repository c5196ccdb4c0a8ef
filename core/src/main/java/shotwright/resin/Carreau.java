package shotwright.resin;

import shotwright.measure.Source;
import shotwright.measure.Units;

/**
 * Carreau viscosity η = K1·a/(1 + K2·γ̇·a)^K3 with the temperature shift a = exp[(E/R)·(1/T − 1/T0)]; T in K. Source OSS (form and sets),
 * RAO eq. 1.39 for the same form with another shift.
 *
 * @param k1PaS viscosity at rest at the reference temperature, Pa·s
 * @param k2S reciprocal of the rate at which thinning sets in, s
 * @param k3Exponent slope at high rate, 1 − n
 * @param referenceC reference temperature T0, °C
 * @param activationKjPerMol activation energy E of flow, kJ/mol
 * @param shearLowPerS fitted from, 1/s
 * @param shearHighPerS fitted to, 1/s
 * @param source where the set comes from
 * @param caution what a reader must know
 */
public record Carreau(
        double k1PaS,
        double k2S,
        double k3Exponent,
        double referenceC,
        double activationKjPerMol,
        double shearLowPerS,
        double shearHighPerS,
        Source source,
        String caution)
        implements Viscosity {
    /** Gas constant, kJ/(mol·K) (CODATA 2018). */
    private static final double GAS_KJ_PER_MOL_K = 8.31446261815324e-3;

    public Carreau {
        if (!(k1PaS > 0) || !(k2S > 0) || !(k3Exponent >= 0 && k3Exponent < 1))
            throw new IllegalArgumentException("k1PaS and k2S must be above zero, k3Exponent between 0 and 1");
        double per20K = arrhenius(activationKjPerMol, referenceC, referenceC - 20);
        if (!(per20K >= 1.05 && per20K <= 5))
            throw new IllegalArgumentException("activationKjPerMol: " + activationKjPerMol + " thickens the melt "
                    + per20K + " times in 20 K; a melt thickens 1.05 to 5 times. Check the unit");
    }

    @Override
    public double viscosityPaS(double shearRatePerS, double meltC) {
        return shiftedPaS(k1PaS, k2S, k3Exponent, shiftFactor(meltC), shearRatePerS);
    }

    /** Shift factor a at a temperature; 1 at the reference, above 1 when colder. */
    public double shiftFactor(double meltC) {
        return arrhenius(activationKjPerMol, referenceC, meltC);
    }

    /** Arrhenius shift exp[(E/R)·(1/T − 1/T0)]. */
    public static double arrhenius(double activationKjPerMol, double referenceC, double meltC) {
        return Math.exp(activationKjPerMol / GAS_KJ_PER_MOL_K * (1 / Units.cToK(meltC) - 1 / Units.cToK(referenceC)));
    }

    /**
     * Williams–Landel–Ferry shift with universal constants, log a = 8.86·(T1 − Ts)/(101.6 + T1 − Ts) − 8.86·(T − Ts)/(101.6 + T − Ts), from
     * T1 to T; RAO eq. 1.40.
     */
    public static double wlf(double standardC, double referenceC, double meltC) {
        double log = 8.86 * (referenceC - standardC) / (101.6 + referenceC - standardC)
                - 8.86 * (meltC - standardC) / (101.6 + meltC - standardC);
        return Math.pow(10, log);
    }

    /** The curve shifted by a factor a: K1·a/(1 + K2·γ̇·a)^K3, Pa·s. */
    public static double shiftedPaS(
            double k1PaS, double k2S, double k3Exponent, double shiftFactor, double shearRatePerS) {
        return k1PaS * shiftFactor / Math.pow(1 + k2S * shearRatePerS * shiftFactor, k3Exponent);
    }
}
