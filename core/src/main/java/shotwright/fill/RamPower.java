package shotwright.fill;

/** Flow that a ram of limited power keeps up at a pressure: Q = P/p. P W, p MPa, Q mm³/s; steady. Source: work rate (worked out). */
public final class RamPower {
    private RamPower() {}

    public static double flowMm3PerS(double powerW, double pressureMpa) {
        if (!(pressureMpa > 0))
            throw new IllegalArgumentException("pressure: " + pressureMpa + " MPa is not above zero");
        return powerW / (pressureMpa * 1e6) * 1e9;
    }
}
