package shotwright.stock;

import shotwright.measure.Quantity;
import shotwright.measure.QuantityRange;
import shotwright.rack.Rack;

/**
 * A bar or plate as it is sold.
 *
 * @param id id on the rack
 * @param name name shown, in the unit it is sold in
 * @param shape bar or plate
 * @param material id of the mold alloy
 * @param thicknessMm thickness
 * @param widthMm width
 * @param lengthMm length sold
 * @param soldIn inch or metric sizes
 * @param thicknessToleranceMm how far the thickness may be off, either way
 * @param pricePerKg neutral money
 */
public record Stock(
        String id,
        String name,
        Shape shape,
        String material,
        Quantity thicknessMm,
        Quantity widthMm,
        Quantity lengthMm,
        SoldIn soldIn,
        Quantity thicknessToleranceMm,
        QuantityRange pricePerKg)
        implements Rack.Entry {
    /** Bar or plate. */
    public enum Shape {
        BAR,
        PLATE
    }

    /** Inch or metric sizes. */
    public enum SoldIn {
        INCH,
        MM
    }
}
