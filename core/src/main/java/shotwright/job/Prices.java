package shotwright.job;

import org.jspecify.annotations.Nullable;
import shotwright.finding.Severity;
import shotwright.layout.Block;
import shotwright.layout.LayoutResult;
import shotwright.mesh.MassProperties;
import shotwright.press.Press;
import shotwright.quote.Quote;
import shotwright.quote.QuoteInput;
import shotwright.quote.QuoteResult;
import shotwright.quote.Rates;
import shotwright.resin.Resin;
import shotwright.review.InsideCorner;
import shotwright.review.ReviewResult;
import shotwright.sizing.CavityPrices;
import shotwright.sizing.SizingResult;
import shotwright.stock.Stock;

/**
 * Asks the quote what a number of cavities costs: on estimates before the layout, on the layout, the cycle and the trimming once they are known.
 * The cavity table and the quote both ask here.
 */
final class Prices implements CavityPrices {
    /** Kerf of a saw cut before the layout, and seconds to trim a gate (common practice). */
    private static final double SAW_MM = 3, TRIM_S = 6;

    private final Decisions decisions;
    private final Shop shop;
    private final ReviewResult review;
    private final @Nullable Settled settled;

    /** What the line found for the number of cavities taken. */
    private record Settled(int cavitiesCount, LayoutResult layout, Flow.@Nullable Answer flow, double programH) {}

    Prices(Decisions decisions, Shop shop, ReviewResult review) {
        this(decisions, shop, review, null);
    }

    private Prices(Decisions decisions, Shop shop, ReviewResult review, @Nullable Settled settled) {
        this.decisions = decisions;
        this.shop = shop;
        this.review = review;
        this.settled = settled;
    }

    /** The same once the layout stands, and the flow when it was worked out. */
    Prices settled(int cavities, LayoutResult layout, Flow.@Nullable Answer flow, double programH) {
        return new Prices(decisions, shop, review, new Settled(cavities, layout, flow, programH));
    }

    /** The shop's rates in the currency of the card. */
    Rates rates() {
        String currency = decisions.card().currency();
        return currency == null ? shop.rates() : shop.rates().in(currency);
    }

    @Override
    public String currency() {
        return rates().currency();
    }

    @Override
    public Price of(Try t) {
        Settled s = settled;
        QuoteResult q = Quote.quote(
                s == null || s.cavitiesCount() != t.cavitiesCount()
                        ? estimated(t)
                        : asLaidOut(
                                t.press(),
                                t.cavitiesCount(),
                                s.layout(),
                                s.flow() == null ? t.cycleS() : cycleS(s.flow()),
                                s.programH(),
                                t.quantityCount()));
        return new Price(q.moldPrice().nominal(), q.at(t.quantityCount()).pricePerPart());
    }

    /**
     * The quote of the mold as it stands at the end of the line.
     *
     * @param programH hours of the proved programs; 0 while there are none
     * @param asked quantity asked for, 0 when none
     */
    QuoteResult quote(SizingResult sizing, LayoutResult layout, Flow.Answer flow, double programH, int asked) {
        return Quote.quote(asLaidOut(sizing.press(), sizing.cavities(), layout, cycleS(flow), programH, asked));
    }

    private QuoteInput estimated(Try t) {
        Block block = new Block(
                t.block().widthMm(),
                t.block().heightMm(),
                t.block().thicknessMm() / 2,
                t.block().thicknessMm() / 2,
                "",
                "",
                SAW_MM);
        return input(t.press(), t.cavitiesCount(), block, t.feedVolumeMm3(), t.cycleS(), TRIM_S, 0, t.quantityCount());
    }

    private QuoteInput asLaidOut(
            Press press, int cavities, LayoutResult layout, double cycleS, double programH, int asked) {
        double trim = layout.gates().isEmpty() ? 0 : layout.gates().getFirst().trimS();
        return input(press, cavities, layout.block(), layout.feedVolumeMm3(), cycleS, trim, programH, asked);
    }

    private static double cycleS(Flow.Answer flow) {
        return flow.cool().cycleTimeS() + flow.cool().pauseS();
    }

    private QuoteInput input(
            Press press,
            int cavities,
            Block block,
            double feedMm3,
            double cycleS,
            double trimS,
            double programH,
            int asked) {
        Resin resin = decisions.resin();
        MassProperties mass = review.pulled().part().mass();
        double gPerMm3 = resin.solidDensityGPerCm3().mid() / 1000;
        return new QuoteInput(
                rates(),
                resin,
                press,
                stock(block),
                decisions.material(),
                block.widthMm(),
                block.heightMm(),
                block.thicknessAMm() + block.riseAMm() + block.thicknessBMm() + block.riseBMm(),
                block.sawAllowanceMm(),
                cavities,
                mass.volumeMm3(),
                mass.surfaceAreaMm2(),
                mass.volumeMm3() * gPerMm3,
                feedMm3 * gPerMm3,
                feedMm3,
                review.corners().stream()
                                .mapToDouble(InsideCorner::needsMm)
                                .filter(d -> d > 0)
                                .min()
                                .orElse(0)
                        / 2,
                (int) review.findings().stream()
                        .filter(f -> f.severity() == Severity.ASK)
                        .count(),
                cycleS,
                trimS,
                !press.fixtureGuided(),
                programH,
                asked);
    }

    /** The bar half A is sawn from, or any of the alloy where none is chosen yet or none is thick enough. */
    private Stock stock(Block block) {
        return shop.stock().find(block.stockA()).orElseGet(() -> shop.stock().all().stream()
                .filter(s -> s.material().equals(decisions.material().id()))
                .findFirst()
                .orElse(shop.stock().all().getFirst()));
    }
}
