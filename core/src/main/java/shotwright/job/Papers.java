package shotwright.job;

import org.jspecify.annotations.Nullable;
import shotwright.finding.Severity;
import shotwright.layout.LayoutResult;
import shotwright.part.Part;
import shotwright.quote.Quote;
import shotwright.quote.QuoteInput;
import shotwright.quote.QuoteResult;
import shotwright.resin.Resin;
import shotwright.review.InsideCorner;
import shotwright.review.ReviewResult;
import shotwright.sheet.PressSheet;
import shotwright.sheet.SheetInput;
import shotwright.sheet.SheetMaker;
import shotwright.sheet.TrialOrder;
import shotwright.sizing.SizingResult;
import shotwright.stock.Stock;

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
            Shop shop,
            Part part,
            ReviewResult review,
            SizingResult sizing,
            LayoutResult layout,
            Flow.Answer flow) {
        Resin resin = decisions.resin();
        double feedG =
                layout.feedVolumeMm3() / 1000 * resin.solidDensityGPerCm3().mid();
        QuoteResult quote = Quote.quote(new QuoteInput(
                Line.rates(decisions.card()),
                resin,
                sizing.press(),
                stock(shop, layout, decisions),
                decisions.material(),
                layout.block().widthMm(),
                layout.block().heightMm(),
                layout.block().thicknessAMm() + layout.block().thicknessBMm(),
                layout.block().sawAllowanceMm(),
                sizing.cavities(),
                part.mass().volumeMm3(),
                part.mass().surfaceAreaMm2(),
                part.mass().volumeMm3() / 1000 * resin.solidDensityGPerCm3().mid(),
                feedG,
                layout.feedVolumeMm3(),
                review.corners().stream()
                                .mapToDouble(InsideCorner::needsMm)
                                .filter(d -> d > 0)
                                .min()
                                .orElse(0)
                        / 2,
                (int) review.findings().stream()
                        .filter(f -> f.severity() == Severity.ASK)
                        .count(),
                flow.cool().cycleTimeS() + flow.cool().pauseS(),
                layout.gates().isEmpty() ? 0 : layout.gates().getFirst().trimS(),
                !sizing.press().fixtureGuided(),
                0,
                decisions.card().quantities().stream().max(Integer::compare).orElse(0)));
        PressSheet sheet = SheetMaker.make(new SheetInput(
                decisions.card().job() == null ? part.name() : decisions.card().job(),
                resin,
                null,
                sizing.press(),
                layout,
                flow.fill(),
                flow.cool(),
                sizing.shotG(),
                sizing.clampNeededKn()));
        TrialOrder order = decisions.resins().size() > 1 ? TrialOrder.of(decisions.resins(), sizing.press()) : null;
        return new Papers(quote, sheet, order);
    }

    /** The bar half A is sawn from, or any of the alloy where the layout found none thick enough. */
    private static Stock stock(Shop shop, LayoutResult layout, Decisions decisions) {
        return shop.stock().find(layout.block().stockA()).orElseGet(() -> shop.stock().all().stream()
                .filter(s -> s.material().equals(decisions.material().id()))
                .findFirst()
                .orElse(shop.stock().all().getFirst()));
    }
}
