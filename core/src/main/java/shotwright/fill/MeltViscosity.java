package shotwright.fill;

/** Viscosity of a melt, Pa·s, at a shear rate (1/s) and a temperature (°C). Falls with both. */
@FunctionalInterface
public interface MeltViscosity {
    double paS(double shearRatePerS, double tempC);

    /** The same melt, stiffer or thinner by a factor. */
    default MeltViscosity times(double factor) {
        return (rate, temp) -> factor * paS(rate, temp);
    }

    /** Power index n about a shear rate: 1 + d ln η/d ln γ̇, from a step of ten per cent to either side. */
    default double indexRatio(double shearRatePerS, double tempC) {
        double up = paS(shearRatePerS * 1.1, tempC), down = paS(shearRatePerS / 1.1, tempC);
        return Math.clamp(1 + Math.log(up / down) / (2 * Math.log(1.1)), 0.1, 1);
    }

    /** Shear rate that gives a shear stress: η(γ̇)·γ̇ = τ, 1/s. */
    default double rateAtPerS(double stressPa, double tempC) {
        if (!(stressPa > 0)) return 0;
        double low = Math.log(1e-9), high = Math.log(1e9), x = Math.log(100), target = Math.log(stressPa);
        for (int i = 0; i < 60; i++) {
            double rate = Math.exp(x), off = Math.log(paS(rate, tempC)) + x - target;
            if (off > 0) high = x;
            else low = x;
            if (Math.abs(off) < 1e-7) break;
            double next = x - off / indexRatio(rate, tempC);
            x = next > low && next < high ? next : (low + high) / 2;
        }
        return Math.exp(x);
    }
}
