package shotwright.job;

import org.jspecify.annotations.Nullable;
import shotwright.layout.LayoutResult;
import shotwright.part.Part;
import shotwright.quote.QuoteResult;
import shotwright.resin.Resin;
import shotwright.sheet.PressSheet;
import shotwright.sheet.SheetInput;
import shotwright.sheet.SheetMaker;
import shotwright.sheet.TrialOrder;
import shotwright.sizing.SizingResult;

/**
 * What is written for people at the end of the line.
 *
 * @param quote prices
 * @param sheet press sheet of the first resin
 * @param order order of trial when there are several resins; null with one
 */
record Papers(QuoteResult quote, PressSheet sheet, @Nullable TrialOrder order) {

    static Papers of(
            Decisions decisions,
            Prices prices,
            Part part,
            SizingResult sizing,
            LayoutResult layout,
            Flow.Answer flow,
            double programH) {
        Resin resin = decisions.resin();
        QuoteResult quote = prices.quote(
                sizing,
                layout,
                flow,
                programH,
                decisions.card().quantities().stream().max(Integer::compare).orElse(0));
        PressSheet sheet = SheetMaker.make(new SheetInput(
                decisions.card().job() == null ? part.name() : decisions.card().job(),
                resin,
                null,
                sizing.press(),
                layout,
                flow.fill(),
                flow.cool(),
                sizing.shotG(),
                sizing.clampNeededKn(),
                sizing.residenceS()));
        TrialOrder order = decisions.resins().size() > 1 ? TrialOrder.of(decisions.resins(), sizing.press()) : null;
        return new Papers(quote, sheet, order);
    }
}
