package shotwright.sizing;

import static shotwright.sizing.Figures.number;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import shotwright.measure.Digits;
import shotwright.press.Press;
import shotwright.resin.Resin;

/**
 * Cavities against cost on one press: the price of the mold and of a part by {@link CavityPrices}, and the mold's share of the quantity. Cycle
 * of a further cavity: a second more at the press (common practice).
 */
final class CavityTable {
    /** A further cavity must save at least this share of a part's price before the station proposes it. */
    static final double WORTH_SHARE = 0.15;

    private static final int MOST = 8;

    private CavityTable() {}

    static List<CavityRow> rows(SizingInput input, Press press) {
        Resin resin = input.resin();
        TreeSet<Integer> counts = new TreeSet<>();
        for (int n = 1; n <= MOST; n *= 2) counts.add(n);
        Integer given = input.cavities();
        if (given != null) counts.add(given);
        List<CavityRow> rows = new ArrayList<>();
        int refused = 0;
        for (int n : counts) {
            boolean wanted = given != null && n <= given;
            if (refused >= 2 && !wanted) continue;
            CavityRow row = row(input, press, resin, n);
            if (row.verdict() == Verdict.NO) refused++;
            rows.add(row);
        }
        return decide(rows, input);
    }

    private static CavityRow row(SizingInput input, Press press, Resin resin, int n) {
        // The layout's feed and the cycle belong to the number of cavities they were found for; other rows estimate
        // theirs.
        int found = input.cavities() == null || input.cycleS() == null ? 1 : input.cavities();
        boolean same = input.cavities() != null && input.cavities() == n;
        SizingInput own = same ? input : input.known(null, null, input.cycleS(), null);
        Load load = Load.of(own, press, resin, n);
        ClampNeed need = ClampNeed.of(load, null);
        PressVerdict verdict = PressChecks.of(load, need, null);
        double cycle = load.cycleS() + (n - found);
        CavityPrices.Price price = input.prices()
                .of(new CavityPrices.Try(press, n, load.mold(), load.feed().volumeMm3(), cycle, input.quantity()));
        return new CavityRow(
                n,
                false,
                verdict.verdict(),
                need.neededKn(),
                load.shotG(),
                load.mold().widthMm(),
                load.mold().heightMm(),
                cycle,
                price.moldPrice(),
                price.partPrice() + price.moldPrice() / input.quantity(),
                0,
                verdict.firstReason());
    }

    private static List<CavityRow> decide(List<CavityRow> rows, SizingInput input) {
        int chosen = chosen(rows, input);
        CavityRow taken = rows.get(chosen);
        List<CavityRow> out = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            CavityRow r = rows.get(i);
            int even = i == 0 ? 0 : breakEven(rows.get(i - 1), r, input.quantity());
            out.add(r.taken(i == chosen, even, words(r, taken, i == chosen, even, input)));
        }
        return out;
    }

    private static int chosen(List<CavityRow> rows, SizingInput input) {
        Integer given = input.cavities();
        int best = 0;
        for (int i = 0; i < rows.size(); i++) {
            CavityRow r = rows.get(i), b = rows.get(best);
            if (given != null && r.cavitiesCount() == given) return i;
            if (r.verdict() == Verdict.NO) continue;
            boolean better = r.verdict() == Verdict.FITS && r.pricePerPart() < (1 - WORTH_SHARE) * b.pricePerPart();
            if (b.verdict() == Verdict.NO || better) best = i;
        }
        return best;
    }

    /** Quantity from which a row is cheaper than another: difference of the molds over difference of the price without mold. */
    private static int breakEven(CavityRow before, CavityRow row, int quantity) {
        double more = row.moldPrice() - before.moldPrice();
        double saves = (before.pricePerPart() - before.moldPrice() / quantity)
                - (row.pricePerPart() - row.moldPrice() / quantity);
        return saves <= 0 ? 0 : (int) Math.min(Integer.MAX_VALUE, Math.ceil(Math.max(1, more / saves)));
    }

    private static String words(CavityRow r, CavityRow taken, boolean chosen, int even, SizingInput input) {
        String price = number(r.pricePerPart()) + " " + input.prices().currency() + " a part at " + input.quantity()
                + ", mold included";
        if (r.verdict() == Verdict.NO) return CavityRow.refused(r.words());
        String tight = r.verdict() == Verdict.TIGHT ? " " + r.words() : "";
        if (chosen) return "Taken: " + price + ".";
        String pays = even > 0 && r.cavitiesCount() > 1
                ? " It pays from about " + Digits.fixed(rounded(even), 0) + " parts."
                : "";
        if (r.pricePerPart() < taken.pricePerPart())
            return (r.verdict() == Verdict.TIGHT
                            ? "Cheaper, " + price + ", but tight."
                            : "Saves only " + Figures.percent(1 - r.pricePerPart() / taken.pricePerPart()) + ", "
                                    + price + ".")
                    + pays
                    + tight;
        return "Dearer, " + price + "." + pays + tight;
    }

    private static int rounded(int count) {
        int step = count > 2000 ? 500 : count > 300 ? 100 : 10;
        return Math.max(step, (int) Math.round((double) count / step) * step);
    }
}
