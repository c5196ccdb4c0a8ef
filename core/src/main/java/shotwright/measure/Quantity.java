package shotwright.measure;

/**
 * One number with its unit and source, as it stands on the rack.
 *
 * @param value the number
 * @param unit its unit, also in the name of the component that holds it
 * @param source where it comes from
 */
public record Quantity(double value, String unit, Source source) {
    public Quantity {
        if (!Double.isFinite(value)) throw new IllegalArgumentException("value: " + value + " is not a finite number");
    }
}
