package shotwright.stock;

import java.util.List;
import shotwright.measure.Quantity;
import shotwright.measure.Source;
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
 */
public record Dowel(
        String id,
        String name,
        Quantity diameterMm,
        Quantity overLowUm,
        Quantity overHighUm,
        Quantity chamferMm,
        Lengths lengths)
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

    /** The shortest length sold that is at least so long; the longest when none is. */
    public double lengthFromMm(double leastMm) {
        List<Double> mm = lengths.valuesMm();
        return mm.stream().filter(l -> l >= leastMm).findFirst().orElse(mm.getLast());
    }
}
