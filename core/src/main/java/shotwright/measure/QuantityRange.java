package shotwright.measure;

/**
 * A range with its unit and source, as it stands on the rack.
 *
 * @param low lower end
 * @param high upper end, at least {@code low}
 * @param unit the unit of both ends, also in the name of the component that holds it
 * @param source where it comes from
 */
public record QuantityRange(double low, double high, String unit, Source source) {
    public QuantityRange {
        if (!(low <= high) || !Double.isFinite(low) || !Double.isFinite(high))
            throw new IllegalArgumentException("range: " + low + " to " + high + " does not rise");
    }

    /** The middle of the range. */
    public double mid() {
        return (low + high) / 2;
    }

    /** The value brought inside the range. */
    public double clamp(double value) {
        return Math.clamp(value, low, high);
    }
}
