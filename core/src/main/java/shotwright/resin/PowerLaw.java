package shotwright.resin;

import java.util.List;
import shotwright.measure.Source;

/**
 * Power law η = m·γ̇^(n−1) at one or more temperatures; between them ln η is interpolated, beyond them carried on with the last slope. Below
 * the fitted range the viscosity of its lower end is kept: a power law carried further overstates it. Source TG Table A.1 (form).
 *
 * @param rows consistency and index, rising temperature
 * @param slopePerK used when there is one row only: share by which viscosity falls per kelvin at constant rate
 * @param shearLowPerS fitted from, 1/s
 * @param shearHighPerS fitted to, 1/s
 * @param source where the rows come from
 * @param caution what a reader must know
 */
public record PowerLaw(
        List<Row> rows, double slopePerK, double shearLowPerS, double shearHighPerS, Source source, String caution)
        implements Viscosity {
    /**
     * One temperature.
     *
     * @param meltC melt temperature
     * @param consistencyFactor m, Pa·sⁿ
     * @param nIndex n
     */
    public record Row(double meltC, double consistencyFactor, double nIndex) {}

    public PowerLaw {
        rows = List.copyOf(rows);
        if (rows.isEmpty()) throw new IllegalArgumentException("rows: a power law needs at least one row");
        for (int i = 1; i < rows.size(); i++) {
            if (rows.get(i).meltC() <= rows.get(i - 1).meltC())
                throw new IllegalArgumentException("rows: temperatures must rise");
        }
        for (Row r : rows) {
            if (!(r.consistencyFactor() > 0) || !(r.nIndex() > 0 && r.nIndex() <= 1))
                throw new IllegalArgumentException(
                        "rows: m must be above zero and n between 0 and 1 at " + r.meltC() + " °C");
        }
    }

    @Override
    public double viscosityPaS(double shearRatePerS, double meltC) {
        double rate = Math.max(shearLowPerS, shearRatePerS);
        if (rows.size() == 1)
            return etaPaS(
                    rows.getFirst(), rate, -slopePerK * (meltC - rows.getFirst().meltC()));
        int i = 0;
        while (i < rows.size() - 2 && meltC > rows.get(i + 1).meltC()) i++;
        Row a = rows.get(i), b = rows.get(i + 1);
        double t = (meltC - a.meltC()) / (b.meltC() - a.meltC());
        return Math.pow(etaPaS(a, rate, 0), 1 - t) * Math.pow(etaPaS(b, rate, 0), t);
    }

    /** η = K0·e^(−βT)·γ̇^(n−1), T in °C (RAO eq. 1.32), Pa·s. */
    public static double exponentialPaS(
            double consistencyFactor, double betaPerC, double nIndex, double shearRatePerS, double meltC) {
        return consistencyFactor * Math.exp(-betaPerC * meltC) * Math.pow(shearRatePerS, nIndex - 1);
    }

    private static double etaPaS(Row row, double rate, double lnShift) {
        return row.consistencyFactor() * Math.pow(rate, row.nIndex() - 1) * Math.exp(lnShift);
    }
}
