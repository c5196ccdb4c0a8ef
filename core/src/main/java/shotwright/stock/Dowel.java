package shotwright.stock;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.measure.Quantity;
import shotwright.measure.QuantityRange;
import shotwright.measure.Source;
import shotwright.measure.Units;
import shotwright.rack.Rack;

/**
 * A hardened ground dowel of one diameter.
 *
 * @param id id on the rack
 * @param name name shown
 * @param diameterMm nominal diameter
 * @param overLowUm least size over nominal
 * @param overHighUm greatest size over nominal
 * @param chamferMm chamfer at the end
 * @param lengths lengths sold
 * @param pressHoleMm hole its standard gives to press it into; null where ISO 286 holes are used
 */
public record Dowel(
        String id,
        String name,
        Quantity diameterMm,
        Quantity overLowUm,
        Quantity overHighUm,
        Quantity chamferMm,
        Lengths lengths,
        @Nullable QuantityRange pressHoleMm)
        implements Rack.Entry {
    /**
     * Lengths sold.
     *
     * @param valuesMm rising lengths
     * @param source where they come from
     */
    public record Lengths(List<Double> valuesMm, Source source) {
        public Lengths {
            valuesMm = List.copyOf(valuesMm);
            for (int i = 1; i < valuesMm.size(); i++) {
                if (valuesMm.get(i) <= valuesMm.get(i - 1))
                    throw new IllegalArgumentException("valuesMm: lengths must rise");
            }
        }
    }

    /** Over the greatest inch pin, least and most of a slip hole (common practice: 0.0003 to 0.0010 in). */
    private static final double INCH_SLIP_LEAST_MM = 0.0003 * Units.MM_PER_IN;

    private static final double INCH_SLIP_MOST_MM = 0.0010 * Units.MM_PER_IN;

    /** Thinnest pin. */
    public double leastMm() {
        return diameterMm.value() + overLowUm.value() / 1000;
    }

    /** Thickest pin. */
    public double greatestMm() {
        return diameterMm.value() + overHighUm.value() / 1000;
    }

    /** Hole it is pressed into: as its standard says, N7 for metric pins. */
    public HoleLimits pressHole() {
        return pressHoleMm == null
                ? HoleLimits.of(Fit.N7, diameterMm.value())
                : new HoleLimits(pressHoleMm.low(), pressHoleMm.high());
    }

    /** Hole it slides in: F7 for metric pins, 0.0003 to 0.0010 in over the thickest inch pin. */
    public HoleLimits slipHole() {
        return pressHoleMm == null
                ? HoleLimits.of(Fit.F7, diameterMm.value())
                : new HoleLimits(greatestMm() + INCH_SLIP_LEAST_MM, greatestMm() + INCH_SLIP_MOST_MM);
    }

    /** The shortest length sold that is at least so long; the longest when none is. */
    public double lengthFromMm(double leastMm) {
        List<Double> mm = lengths.valuesMm();
        return mm.stream().filter(l -> l >= leastMm).findFirst().orElse(mm.getLast());
    }
}
