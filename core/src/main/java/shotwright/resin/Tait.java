package shotwright.resin;

import shotwright.measure.Source;
import shotwright.measure.Units;

/**
 * Specific volume against temperature and pressure, two-domain Tait: v = v0(T)·{1 − C·ln[1 + p/B(T)]} + v_t, C = 0.0894, T̄ = T − b5;
 * melt v0 = b1m + b2m·T̄, B = b3m·e^(−b4m·T̄); solid the same with b1s …, v_t = b7·e^(b8·T̄ − b9·p); transition T_t = b5 + b6·p. T in K, p in Pa,
 * v in m³/kg. Sources CRCW (form), DH p. 39 (melt constants), CHW (two domains).
 *
 * @param b1MeltM3PerKg melt volume at b5
 * @param b2MeltM3PerKgK melt expansion
 * @param b3MeltPa melt stiffness
 * @param b4MeltPerK its fall
 * @param b1SolidM3PerKg solid volume at b5
 * @param b2SolidM3PerKgK solid expansion
 * @param b3SolidPa solid stiffness
 * @param b4SolidPerK its fall
 * @param b5K transition temperature without pressure
 * @param b6KPerPa its rise with pressure
 * @param b7M3PerKg crystallisation step, 0 for amorphous resins
 * @param b8PerK its width
 * @param b9PerPa its fall with pressure
 * @param source where the set comes from
 * @param caution what a reader must know
 */
public record Tait(
        double b1MeltM3PerKg,
        double b2MeltM3PerKgK,
        double b3MeltPa,
        double b4MeltPerK,
        double b1SolidM3PerKg,
        double b2SolidM3PerKgK,
        double b3SolidPa,
        double b4SolidPerK,
        double b5K,
        double b6KPerPa,
        double b7M3PerKg,
        double b8PerK,
        double b9PerPa,
        Source source,
        String caution) {
    /** The universal constant C. */
    public static final double C = 0.0894;

    public Tait {
        if (!(b1MeltM3PerKg > 0) || !(b1SolidM3PerKg > 0) || !(b3MeltPa > 0) || !(b3SolidPa > 0))
            throw new IllegalArgumentException("b1 and b3 must be above zero");
    }

    /** Specific volume, m³/kg. */
    public double volumeM3PerKg(double temperatureC, double pressurePa) {
        double over = Units.cToK(temperatureC) - b5K;
        if (over > b6KPerPa * pressurePa)
            return underPressureM3PerKg(
                    b1MeltM3PerKg + b2MeltM3PerKgK * over, b3MeltPa * Math.exp(-b4MeltPerK * over), pressurePa);
        double solid = underPressureM3PerKg(
                b1SolidM3PerKg + b2SolidM3PerKgK * over, b3SolidPa * Math.exp(-b4SolidPerK * over), pressurePa);
        return solid + b7M3PerKg * Math.exp(b8PerK * over - b9PerPa * pressurePa);
    }

    /** Density, g/cm³. */
    public double densityGPerCm3(double temperatureC, double pressurePa) {
        return 1e-3 / volumeM3PerKg(temperatureC, pressurePa);
    }

    /** Melt volume in the form of DH: v0 = A0 + A1·t + A2·t², B = B0·e^(−B1·t), t in °C; m³/kg. */
    public static double meltM3PerKg(
            double a0M3PerKg,
            double a1M3PerKgC,
            double a2M3PerKgC2,
            double b0Pa,
            double b1PerC,
            double meltC,
            double pressurePa) {
        double v0 = a0M3PerKg + a1M3PerKgC * meltC + a2M3PerKgC2 * meltC * meltC;
        return underPressureM3PerKg(v0, b0Pa * Math.exp(-b1PerC * meltC), pressurePa);
    }

    private static double underPressureM3PerKg(double v0M3PerKg, double bPa, double pressurePa) {
        return v0M3PerKg * (1 - C * Math.log1p(pressurePa / bPa));
    }
}
