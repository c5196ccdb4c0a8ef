package shotwright.quote;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shotwright.measure.Quantity;
import shotwright.measure.Source;
import shotwright.rack.Rack;

/**
 * What an hour costs and how a shop runs, one file of the rack. The one that ships is a typical small shop in neutral money (common practice);
 * the shop's own replaces any of it. The press has its hourly rate in its own file.
 *
 * @param id id on the rack
 * @param name whose rates they are
 * @param currency word or sign shown beside money
 * @param labourRatePerH a person at the bench and the press
 * @param millRatePerH the mill itself
 * @param designRatePerH drawing and programming
 * @param dryerRatePerH dryer, purge and the like, per hour of a lot
 * @param overheadShare added to cost for what no job carries
 * @param marginShare of the price
 * @param upTimeShare share of the hour that makes parts
 * @param goodShare share of good parts
 * @param regrindShare share of the feed ground and used again
 * @param lossShare resin lost on the way
 * @param setupH to set up, purge and start a lot
 * @param startShotsCount shots thrown away when a lot starts
 * @param workDayH productive hours of a day
 * @param smallPartsPrice dowels, screws, a cutter for one mold
 */
public record Rates(
        String id,
        String name,
        String currency,
        Quantity labourRatePerH,
        Quantity millRatePerH,
        Quantity designRatePerH,
        Quantity dryerRatePerH,
        Quantity overheadShare,
        Quantity marginShare,
        Quantity upTimeShare,
        Quantity goodShare,
        Quantity regrindShare,
        Quantity lossShare,
        Quantity setupH,
        Quantity startShotsCount,
        Quantity workDayH,
        Quantity smallPartsPrice)
        implements Rack.Entry {
    private static final Set<Source.Kind> OF_THE_SHOP =
            EnumSet.of(Source.Kind.YOURS, Source.Kind.MEASURED, Source.Kind.COMPUTED);

    public Rates {
        within("labourRatePerH", labourRatePerH, 0, 1e9);
        within("millRatePerH", millRatePerH, 0, 1e9);
        within("designRatePerH", designRatePerH, 0, 1e9);
        within("dryerRatePerH", dryerRatePerH, 0, 1e9);
        within("overheadShare", overheadShare, 0, 2);
        within("marginShare", marginShare, 0, 0.9);
        within("upTimeShare", upTimeShare, 0.05, 1);
        within("goodShare", goodShare, 0.05, 1);
        within("regrindShare", regrindShare, 0, 1);
        within("lossShare", lossShare, 0, 1);
        within("setupH", setupH, 0, 100);
        within("startShotsCount", startShotsCount, 0, 10_000);
        within("workDayH", workDayH, 0.5, 24);
        within("smallPartsPrice", smallPartsPrice, 0, 1e9);
    }

    private static void within(String name, Quantity q, double low, double high) {
        if (!(q.value() >= low && q.value() <= high))
            throw new IllegalArgumentException(name + ": " + q.value() + " is not between " + low + " and " + high);
    }

    /** The hourly rates by what they pay for. */
    public Map<String, Quantity> hourly() {
        Map<String, Quantity> out = new LinkedHashMap<>();
        out.put("labour", labourRatePerH);
        out.put("mill", millRatePerH);
        out.put("design", designRatePerH);
        out.put("dryer", dryerRatePerH);
        return out;
    }

    /** Hourly rates that are not the shop's own: neither entered, measured nor worked out by it. */
    public List<String> typical() {
        return hourly().entrySet().stream()
                .filter(e -> !OF_THE_SHOP.contains(e.getValue().source().kind()))
                .map(Map.Entry::getKey)
                .toList();
    }

    /** Whose rates they are, in words. */
    public String whose() {
        List<String> foreign = typical();
        if (foreign.size() == hourly().size()) return "a typical small shop's rates, not yours";
        return "the rates of " + name
                + (foreign.isEmpty()
                        ? ""
                        : ", those for " + String.join(", ", foreign) + " still a typical small shop's");
    }

    /** The same shop naming its money. */
    public Rates in(String newCurrency) {
        return new Rates(
                id,
                name,
                newCurrency,
                labourRatePerH,
                millRatePerH,
                designRatePerH,
                dryerRatePerH,
                overheadShare,
                marginShare,
                upTimeShare,
                goodShare,
                regrindShare,
                lossShare,
                setupH,
                startShotsCount,
                workDayH,
                smallPartsPrice);
    }
}
