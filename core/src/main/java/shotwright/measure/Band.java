package shotwright.measure;

/**
 * An estimate with its limits, set like limits on a drawing. The unit stands in the name of what holds the band.
 *
 * @param low lower limit
 * @param nominal the value in between
 * @param high upper limit
 */
public record Band(double low, double nominal, double high) {
    public Band {
        if (!(low <= nominal && nominal <= high))
            throw new IllegalArgumentException("band: " + low + " … " + nominal + " … " + high + " does not rise");
    }

    /** A band of {@code share} to either side, for example 0.4 for ±40 %. */
    public static Band plusMinus(double nominal, double share) {
        double d = Math.abs(nominal) * share;
        return new Band(nominal - d, nominal, nominal + d);
    }

    /** The band times a factor of zero or more. */
    public Band times(double factor) {
        if (factor < 0) throw new IllegalArgumentException("factor: " + factor + " is below zero");
        return new Band(low * factor, nominal * factor, high * factor);
    }

    /** The sum of two bands, limits added (worst case). */
    public Band plus(Band other) {
        return new Band(low + other.low, nominal + other.nominal, high + other.high);
    }
}
