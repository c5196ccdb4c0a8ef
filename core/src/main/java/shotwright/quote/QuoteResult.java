package shotwright.quote;

import java.util.List;
import shotwright.finding.Finding;
import shotwright.measure.Band;

/**
 * What station 90 leaves behind.
 *
 * @param rates what it was worked out with
 * @param moldPrice price of the mold with its band
 * @param perPart price of a part against the quantity ordered
 * @param leadDays working days until first parts, with band
 * @param hours the hours behind it
 * @param costs the money behind it, before margin
 * @param findings what has to be said
 */
public record QuoteResult(
        Rates rates,
        Band moldPrice,
        List<PartPrice> perPart,
        Band leadDays,
        List<Hours> hours,
        List<Cost> costs,
        List<Finding> findings) {
    /**
     * Price at one quantity.
     *
     * @param quantityCount good parts delivered
     * @param pricePerPart price of one, mold not included
     * @param lotPrice price of the lot, mold not included
     */
    public record PartPrice(int quantityCount, double pricePerPart, double lotPrice) {}

    /**
     * Hours of one kind of work.
     *
     * @param name what is done
     * @param timeH hours
     * @param shown false for hours a customer never sees
     * @param why how it was estimated
     */
    public record Hours(String name, double timeH, boolean shown, String why) {}

    /**
     * One cost.
     *
     * @param name what for
     * @param money amount in the currency
     * @param why how it came about
     */
    public record Cost(String name, double money, String why) {}

    public QuoteResult {
        perPart = List.copyOf(perPart);
        hours = List.copyOf(hours);
        costs = List.copyOf(costs);
        findings = List.copyOf(findings);
    }

    /** Word or sign behind the money. */
    public String currency() {
        return rates.currency();
    }

    /** Price at a quantity; 1, 10, 50 … and the one asked for are there. */
    public PartPrice at(int quantityCount) {
        return perPart.stream()
                .filter(p -> p.quantityCount() == quantityCount)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("quantity: " + quantityCount + " was not priced"));
    }
}
