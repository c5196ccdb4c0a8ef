package shotwright.resin;

import shotwright.measure.Source;

/**
 * Only the order of magnitude is known: a range at 1000 1/s and one temperature, with an assumed index and an assumed fall with
 * temperature, η = √(low·high)·(γ̇/1000)^(n−1)·e^(−β(T − T0)). Below 100 1/s the value at 100 1/s is kept.
 *
 * @param lowPaS lower end at 1000 1/s
 * @param highPaS upper end at 1000 1/s
 * @param atC the temperature it holds at
 * @param nIndex assumed power-law index
 * @param slopePerK assumed share by which viscosity falls per kelvin at constant rate
 * @param source where the range comes from
 * @param caution what a reader must know
 */
public record Level(
        double lowPaS, double highPaS, double atC, double nIndex, double slopePerK, Source source, String caution)
        implements Viscosity {
    public Level {
        if (!(lowPaS > 0 && lowPaS <= highPaS))
            throw new IllegalArgumentException("lowPaS to highPaS must rise from above zero");
        if (!(nIndex > 0 && nIndex <= 1))
            throw new IllegalArgumentException("nIndex: " + nIndex + " is not between 0 and 1");
    }

    @Override
    public double viscosityPaS(double shearRatePerS, double meltC) {
        double rate = Math.max(shearLowPerS(), shearRatePerS);
        return Math.sqrt(lowPaS * highPaS) * Math.pow(rate / 1000, nIndex - 1) * Math.exp(-slopePerK * (meltC - atC));
    }

    @Override
    public double shearLowPerS() {
        return 100;
    }

    @Override
    public double shearHighPerS() {
        return 10_000;
    }
}
