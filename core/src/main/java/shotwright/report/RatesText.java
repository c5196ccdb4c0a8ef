package shotwright.report;

import java.util.stream.Collectors;
import shotwright.measure.Quantity;
import shotwright.quote.Rates;

/** Says which rates a price stands at. */
final class RatesText {
    private RatesText() {}

    /** Whose they are, the hourly ones, overhead and margin. */
    static String sentence(Rates r) {
        String hours = r.hourly().entrySet().stream()
                .map(e -> e.getKey() + " " + plain(e.getValue()))
                .collect(Collectors.joining(", "));
        return "At " + r.whose() + ": " + hours + " " + r.currency() + " an hour, overhead "
                + Numbers.percent(r.overheadShare().value(), 0) + " of cost, margin "
                + Numbers.percent(r.marginShare().value(), 0)
                + " of the price. The press has its rate in its own file.";
    }

    private static String plain(Quantity q) {
        return Numbers.figures(q.value(), 3);
    }
}
