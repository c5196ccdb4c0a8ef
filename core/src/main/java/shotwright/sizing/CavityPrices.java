package shotwright.sizing;

import shotwright.press.Press;

/** What a mold and its parts cost. The quote answers it, so that the cavity table and the quote are one calculation. */
@FunctionalInterface
public interface CavityPrices {
    /** Price of a number of cavities. */
    Price of(Try cavities);

    /** Word or sign put behind money. */
    default String currency() {
        return "units";
    }

    /**
     * A number of cavities to price.
     *
     * @param press the press
     * @param cavitiesCount how many up
     * @param block block estimated for them
     * @param feedVolumeMm3 feed
     * @param cycleS cycle
     * @param quantityCount parts ordered
     */
    record Try(
            Press press,
            int cavitiesCount,
            MoldEstimate block,
            double feedVolumeMm3,
            double cycleS,
            int quantityCount) {}

    /**
     * What they cost.
     *
     * @param moldPrice the mold
     * @param partPrice one part at the quantity, mold not included
     */
    record Price(double moldPrice, double partPrice) {}
}
