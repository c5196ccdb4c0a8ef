package shotwright.quote;

import shotwright.measure.Source;

/**
 * What an hour costs and how a shop runs, in neutral money; the shop overrides any of it. Defaults: small shop of the 2020s (common practice,
 * common practice).
 *
 * @param currency word or sign shown beside money; the built-in rates are neutral units
 * @param labour at the bench and the press
 * @param press the press itself
 * @param mill the mill itself
 * @param design drawing and programming
 * @param dryer dryer, purge and the like, per hour of a lot
 * @param overheadShare added to cost for what no job carries
 * @param marginShare of the price
 * @param upTimeShare share of the hour that makes parts
 * @param goodShare share of good parts
 * @param regrindShare share of the feed ground and used again
 * @param lossShare resin lost on the way
 * @param setupH to set up, purge and start a lot
 * @param startShotsCount shots thrown away when a lot starts
 * @param workDayH productive hours of a day
 * @param smallPartsMoney dowels, screws, a cutter for one mold
 */
public record Rates(
        String currency,
        Rate labour,
        Rate press,
        Rate mill,
        Rate design,
        Rate dryer,
        double overheadShare,
        double marginShare,
        double upTimeShare,
        double goodShare,
        double regrindShare,
        double lossShare,
        double setupH,
        int startShotsCount,
        double workDayH,
        double smallPartsMoney) {
    /**
     * An hour's price with its range.
     *
     * @param lowPerH low
     * @param typicalPerH usual
     * @param highPerH high
     * @param source where it comes from
     */
    public record Rate(double lowPerH, double typicalPerH, double highPerH, Source source) {
        public Rate {
            if (!(0 <= lowPerH && lowPerH <= typicalPerH && typicalPerH <= highPerH))
                throw new IllegalArgumentException(
                        "rate: " + lowPerH + " … " + typicalPerH + " … " + highPerH + " per hour does not rise");
        }

        /** One rate of the shop's own, without a range. */
        public static Rate yours(double perH) {
            return new Rate(perH, perH, perH, new Source(Source.Kind.YOURS, "the shop's own rate"));
        }
    }

    public Rates {
        share("overhead", overheadShare, 0, 2);
        share("margin", marginShare, 0, 0.9);
        share("up time", upTimeShare, 0.05, 1);
        share("good parts", goodShare, 0.05, 1);
        share("regrind", regrindShare, 0, 1);
        share("loss", lossShare, 0, 1);
    }

    private static void share(String name, double value, double low, double high) {
        if (!(value >= low && value <= high))
            throw new IllegalArgumentException(name + ": " + value + " is not between " + low + " and " + high);
    }

    /** The typical small shop. */
    public static Rates typical() {
        Source s = Source.commonPractice("small shop, 2020s, neutral money per hour");
        return new Rates(
                "units",
                new Rate(25, 45, 80, s),
                new Rate(4, 8, 15, s),
                new Rate(12, 25, 45, s),
                new Rate(35, 60, 100, s),
                new Rate(1, 2, 4, s),
                0.2,
                0.2,
                0.75,
                0.97,
                0,
                0.03,
                1.5,
                25,
                6,
                40);
    }

    /** The same shop with another margin. */
    public Rates margin(double newMarginShare) {
        return new Rates(
                currency,
                labour,
                press,
                mill,
                design,
                dryer,
                overheadShare,
                newMarginShare,
                upTimeShare,
                goodShare,
                regrindShare,
                lossShare,
                setupH,
                startShotsCount,
                workDayH,
                smallPartsMoney);
    }

    /** The same shop naming its money. */
    public Rates in(String newCurrency) {
        return new Rates(
                newCurrency,
                labour,
                press,
                mill,
                design,
                dryer,
                overheadShare,
                marginShare,
                upTimeShare,
                goodShare,
                regrindShare,
                lossShare,
                setupH,
                startShotsCount,
                workDayH,
                smallPartsMoney);
    }
}
