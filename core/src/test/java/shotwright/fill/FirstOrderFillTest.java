package shotwright.fill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import shotwright.finding.Finding;
import shotwright.resin.ChannelFlow;

class FirstOrderFillTest {
    private static FillResult plate(double wall, double meltC, double pressMpa) {
        return FirstOrderFill.fill(Plans.plateInput(wall, 1, Plans.ps(meltC, 40), Plans.press(pressMpa), 1));
    }

    /** With no cooled layer the cold slit is the slit formula of a power law. */
    @Test
    void hotSlitIsTheClosedForm() {
        double m = 1e4, n = 0.35;
        MeltViscosity power = (rate, t) -> m * Math.pow(Math.max(rate, 1e-12), n - 1);
        Melt ps = Plans.ps(220, 40);
        Melt melt = new Melt("x", "x", power, 0, true, 220, 250, 40, 118, 0.085, 0.97, 2000, 1e6, 1, 200, ps.source());
        double slope = new ColdWallSlit(melt, 1).slopeMpaPerMm(2, 50, 1, 0);
        double closed = ChannelFlow.slitDropPa(m, n, 1e-3, 1, 2e-3, 50e-3 * 2e-3) * 1e-6;
        assertThat(slope).isCloseTo(closed, Percentage.withPercentage(1));
    }

    @Test
    void skinMakesItStifferAndShutsTheGap() {
        ColdWallSlit slit = new ColdWallSlit(Plans.ps(220, 40), 1);
        double last = 0;
        for (double layer = 0; layer < 0.9; layer += 0.1) {
            double g = slit.slopeMpaPerMm(2, 50, 1, layer);
            assertThat(g).isGreaterThan(last);
            last = g;
        }
        assertThat(slit.slopeMpaPerMm(0.5, 50, 1, 1.2)).isInfinite();
        assertThat(slit.frozenShare(2, 0.5)).isBetween(0.1, 0.5);
    }

    @Test
    void budgetAddsUpAndIsLabelled() {
        FillResult r = plate(2, 220, 120);
        assertThat(r.steps()).extracting(FillResult.PressureStep::name).startsWith("sprue", "runner", "gate");
        double sum =
                r.steps().stream().mapToDouble(FillResult.PressureStep::dropMpa).sum();
        assertThat(r.pressurePeakMpa()).isCloseTo(sum, within(1e-9));
        assertThat(r.pressureBandMpa().low()).isLessThan(0.6 * sum + 1e-9);
        assertThat(FillResult.MODEL).isEqualTo("first-order");
        assertThat(r.findings()).extracting(Finding::code).contains("generic-viscosity");
        assertThat(r.ladder()).hasSize(3);
        assertThat(r.fillWindowS().low()).isLessThanOrEqualTo(r.fillTimeS());
        assertThat(r.scan()).hasSizeGreaterThan(5);
    }

    /** common practice */
    @Test
    void trendsHaveTheirSigns() {
        FillResult base = plate(2, 220, 120);
        assertThat(plate(2, 240, 120).pressurePeakMpa()).isLessThan(base.pressurePeakMpa());
        assertThat(plate(3, 220, 120).pressurePeakMpa()).isLessThan(base.pressurePeakMpa());
        assertThat(plate(1, 220, 120).pressurePeakMpa()).isGreaterThan(base.pressurePeakMpa());
        FillInput small = Plans.plateInput(2, 0.5, Plans.ps(220, 40), Plans.press(120), 1);
        assertThat(FirstOrderFill.fill(small).pressurePeakMpa()).isGreaterThan(base.pressurePeakMpa());
    }

    @Test
    void weakPressIsShortAndSaysWhatCures() {
        FillResult strong = plate(1, 220, 400), weak = plate(1, 220, strong.pressurePeakMpa() / 4);
        assertThat(strong.verdict()).isEqualTo(FillResult.Verdict.FILLS);
        assertThat(weak.verdict()).isEqualTo(FillResult.Verdict.SHORT);
        Finding f = weak.findings().getFirst();
        assertThat(f.code()).isIn("pressure-short", "freezes-short");
        assertThat(f.remedy()).contains("Any one of these").contains("MPa");
    }

    @Test
    void twoCavitiesShareTheSprue() {
        FillResult one = plate(2, 220, 200);
        FillInput in = Plans.plateInput(2, 1, Plans.ps(220, 40), Plans.press(200), 2);
        FillResult two = FirstOrderFill.fill(new FillInput(
                in.melt(),
                in.press(),
                in.layout(),
                in.field(),
                in.cavityVolumeMm3(),
                in.projectedAreaMm2(),
                40,
                one.fillTimeS()));
        assertThat(two.steps().getFirst().shearRatePerS())
                .isCloseTo(2 * one.steps().getFirst().shearRatePerS(), Percentage.withPercentage(1));
        assertThat(two.clampHoldKn()).isGreaterThan(1.9 * one.clampHoldKn() - 10);
        assertThat(two.findings()).extracting(Finding::code).contains("cavities-unbalanced");
    }

    @Test
    void holdThatOpensTheMoldIsSaid() {
        FillInput in = Plans.plateInput(2, 1, Plans.ps(220, 40), Plans.press(120), 1);
        PressLimits weak = new PressLimits("w", "the hand press", 120, Double.POSITIVE_INFINITY, 30, 30);
        FillResult r = FirstOrderFill.fill(new FillInput(in.melt(), weak, in.layout(), in.field(), 2400, 1200, 40, 0));
        assertThat(r.findings()).extracting(Finding::code).contains("hold-opens-mold");
        assertThat(r.clampHoldKn())
                .isCloseTo(0.8 * 40 * (1200 + 4 * 15 + 2 * 1.2) / 1000, Percentage.withPercentage(1));
        // what a ram of this power pushes is power over pressure
        assertThat(2400 / r.fillTimeS() * r.pressurePeakMpa()).isLessThan(1.1 * 30_000);
        FillResult free = plate(2, 220, 120);
        assertThat(r.fillTimeS()).isGreaterThan(free.fillTimeS());
    }

    @Test
    void noWindowIsSaid() {
        FillInput in = Plans.plateInput(2, 1, Plans.ps(220, 40), Plans.press(120), 1);
        PressLimits slow = new PressLimits("s", "the slow press", 120, 20, Double.POSITIVE_INFINITY, 100);
        FillResult r = FirstOrderFill.fill(new FillInput(in.melt(), slow, in.layout(), in.field(), 2400, 1200, 40, 0));
        assertThat(r.findings()).extracting(Finding::code).contains("fill-window-closed");
        assertThat(r.verdict()).isNotEqualTo(FillResult.Verdict.FILLS);
    }
}
