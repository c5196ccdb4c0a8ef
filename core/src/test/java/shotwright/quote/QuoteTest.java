package shotwright.quote;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import shotwright.finding.Finding;
import shotwright.measure.Quantity;
import shotwright.measure.Source;
import shotwright.press.PressRack;
import shotwright.resin.ResinRack;
import shotwright.stock.StockRack;

class QuoteTest {
    private static final Rates TYPICAL = RatesRack.standard().byId("shop");

    private static QuoteInput input(double programH, int asked, double cycleS, Rates rates) {
        return new QuoteInput(
                rates,
                ResinRack.standard().byId("pp-homo"),
                PressRack.standard().byId("electric-10t"),
                StockRack.standard().byId("6061-bar-20x80-mm"),
                StockRack.materials().byId("6061-t6"),
                80,
                80,
                40,
                3,
                1,
                6600,
                7000,
                6,
                1.5,
                1600,
                0.5,
                1,
                cycleS,
                4,
                true,
                programH,
                asked);
    }

    /** The typical shop with another margin of its own. */
    private static Rates margin(double share) {
        Rates r = TYPICAL;
        return new Rates(
                r.id(),
                r.name(),
                r.currency(),
                r.labourRatePerH(),
                r.millRatePerH(),
                r.designRatePerH(),
                r.dryerRatePerH(),
                r.overheadShare(),
                new Quantity(share, "1", new Source(Source.Kind.YOURS, "your own entry")),
                r.upTimeShare(),
                r.goodShare(),
                r.regrindShare(),
                r.lossShare(),
                r.setupH(),
                r.startShotsCount(),
                r.workDayH(),
                r.smallPartsPrice());
    }

    @Test
    void pricesFallWithQuantityAndTheLotAddsUp() {
        QuoteResult q = Quote.quote(input(0, 333, 60, TYPICAL));
        assertThat(q.perPart()).extracting(QuoteResult.PartPrice::quantityCount).contains(1, 333, 1000);
        double last = Double.POSITIVE_INFINITY;
        for (QuoteResult.PartPrice p : q.perPart()) {
            assertThat(p.pricePerPart()).isLessThan(last);
            assertThat(p.lotPrice()).isCloseTo(p.pricePerPart() * p.quantityCount(), within(1e-6));
            last = p.pricePerPart();
        }
        assertThat(q.hours()).anyMatch(h -> !h.shown());
        assertThat(q.findings())
                .extracting(Finding::code)
                .contains("milling-estimated", "rates-are-typical", "answers-move-price");
    }

    @Test
    void moldPriceIsCostWithOverheadAndMargin() {
        Rates r = TYPICAL;
        QuoteResult q = Quote.quote(input(0, 0, 60, r));
        double cost = q.costs().stream().mapToDouble(QuoteResult.Cost::money).sum();
        assertThat(q.moldPrice().nominal()).isCloseTo(cost * 1.2 / 0.8, within(1e-6));
        double metalKg = 83.0 * 83 * 40 * 2.7e-6;
        double price =
                StockRack.standard().byId("6061-bar-20x80-mm").pricePerKg().mid();
        assertThat(q.costs().getFirst().money()).isCloseTo(metalKg * price, within(0.05));
        assertThat(Quote.quote(input(0, 0, 60, margin(0.3))).moldPrice().nominal())
                .isGreaterThan(q.moldPrice().nominal());
    }

    @Test
    void provedProgramsNarrowTheBand() {
        QuoteResult guess = Quote.quote(input(0, 0, 60, TYPICAL)), known = Quote.quote(input(6, 0, 60, TYPICAL));
        assertThat(known.moldPrice().high() / known.moldPrice().nominal())
                .isLessThan(guess.moldPrice().high() / guess.moldPrice().nominal());
        assertThat(known.findings()).extracting(Finding::code).doesNotContain("milling-estimated");
    }

    @Test
    void longerCyclesCostMore() {
        double fast = Quote.partPrice(input(0, 0, 30, TYPICAL), 500).pricePerPart();
        assertThat(Quote.partPrice(input(0, 0, 90, TYPICAL), 500).pricePerPart())
                .isGreaterThan(fast * 1.5);
    }

    @Test
    void firstPriceBandHoldsTheLaterQuote() {
        PriceBand band = PriceBand.first(
                6600, 7000, new double[] {40, 40, 12}, 0, ResinRack.standard().byId("pp-homo"), null, 500, TYPICAL);
        QuoteResult q = Quote.quote(input(0, 500, 60, TYPICAL));
        assertThat(q.moldPrice().nominal())
                .isBetween(band.mold().low(), band.mold().high());
        assertThat(band.assumptions().getFirst()).startsWith("From defaults");
        assertThat(band.moldAndFirstLotMoney()[0]).isLessThan(band.moldAndFirstLotMoney()[1]);
        PriceBand undercut = PriceBand.first(
                6600, 7000, new double[] {40, 40, 12}, 2, ResinRack.standard().byId("pp-homo"), null, 500, TYPICAL);
        assertThat(undercut.mold().nominal()).isGreaterThan(band.mold().nominal());
    }

    @Test
    void absurdRatesAreRefused() {
        assertThatThrownBy(() -> margin(1)).hasMessageContaining("marginShare");
        assertThatThrownBy(() -> margin(-0.1)).hasMessageContaining("marginShare");
        assertThatThrownBy(() -> input(0, 0, 0, TYPICAL)).hasMessageContaining("cycle");
    }

    @Test
    void millingGuessGrowsWithMetalAndSurface() {
        MillingGuess small = MillingGuess.of(20_000, 5000, 1), large = MillingGuess.of(80_000, 5000, 1);
        assertThat(large.roughingH()).isCloseTo(4 * small.roughingH(), within(1e-9));
        assertThat(MillingGuess.of(20_000, 5000, 0.3).smallCutterH()).isGreaterThan(small.smallCutterH());
    }
}
