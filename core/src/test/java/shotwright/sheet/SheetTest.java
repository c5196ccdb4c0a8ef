package shotwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import shotwright.cool.CoolInput;
import shotwright.cool.CoolResult;
import shotwright.cool.FirstOrderCool;
import shotwright.fill.FillInput;
import shotwright.fill.FillResult;
import shotwright.fill.FirstOrderFill;
import shotwright.fill.Melt;
import shotwright.fill.Plans;
import shotwright.fill.PressLimits;
import shotwright.finding.Finding;
import shotwright.layout.LayoutResult;
import shotwright.mesh.Bvh;
import shotwright.mesh.WallThickness;
import shotwright.press.Press;
import shotwright.press.PressRack;
import shotwright.progress.Progress;
import shotwright.resin.Resin;
import shotwright.resin.ResinRack;
import shotwright.stock.StockRack;

class SheetTest {
    private static final LayoutResult PLATE = Plans.plate(2, 1, 1);

    private static Resin resin(String id) {
        return ResinRack.standard().byId(id);
    }

    private static Press press(String id) {
        return PressRack.standard().byId(id);
    }

    private static FillResult fill(Resin r, Press p) {
        Melt melt = Melt.of(r, SheetMaker.meltC(r, p), r.settings().moldC().value());
        return FirstOrderFill.fill(new FillInput(
                melt,
                PressLimits.of(p),
                PLATE,
                Plans.plateField(2),
                2400,
                1200,
                r.settings().holdMpa().mid(),
                0));
    }

    private static CoolResult cool(Resin r, Press p, FillResult f) {
        WallThickness walls = WallThickness.of(Bvh.of(Plans.plateMesh(2)), 500, 7, Progress.SILENT);
        return FirstOrderCool.cool(new CoolInput(
                r,
                SheetMaker.meltC(r, p),
                p,
                StockRack.materials().byId("6061-t6"),
                PLATE,
                walls,
                384_000,
                3.2,
                f.fillTimeS(),
                f.gateSealS() + 0.75,
                22));
    }

    private static PressSheet sheet(String resin, @Nullable String before, String press) {
        Resin r = resin(resin);
        Press p = press(press);
        FillResult f = fill(r, p);
        return SheetMaker.make(new SheetInput(
                "plate", r, before == null ? null : resin(before), p, PLATE, f, cool(r, p, f), 3.2, 30, 120));
    }

    @Test
    void plungerRunsTheWholeChamberHotterThanAScrewNozzle() {
        PressSheet plunger = sheet("abs", null, "electric-10t"), screw = sheet("abs", null, "electric-screw-20t");
        double nozzle = resin("abs").settings().nozzleC().value();
        assertThat(plunger.meltC()).isBetween(nozzle + 5, nozzle + 10);
        assertThat(plunger.rearC()).isEqualTo(plunger.meltC());
        assertThat(screw.meltC()).isEqualTo(nozzle);
        assertThat(screw.rearC()).isLessThan(screw.meltC());
        assertThat(plunger.holdS()).isGreaterThan(0.75);
        assertThat(plunger.firstShots()).anyMatch(s -> s.startsWith("60 %")).anyMatch(s -> s.startsWith("95 %"));
    }

    /** The limits of the press sheet hold for every resin on every press. */
    @Test
    void noSheetPassesALimit() {
        FillResult any = fill(resin("abs"), press("electric-10t"));
        for (Press p : PressRack.standard().all()) {
            for (Resin r : ResinRack.standard().all()) {
                double melt = SheetMaker.meltC(r, p);
                assertThat(melt)
                        .as(r.id() + " on " + p.id())
                        .isLessThanOrEqualTo(r.maxMeltC().value());
                assertThat(melt).isLessThanOrEqualTo(p.maxBarrelC().value());
                if (r.id().startsWith("pom")) assertThat(melt).isLessThanOrEqualTo(230);
                if (r.id().startsWith("pvc")) assertThat(melt).isLessThanOrEqualTo(210);
            }
        }
        assertThat(any.verdict()).isNotNull();
        assertThat(Objects.requireNonNull(SheetFindings.tooHot(resin("pom-c"), 231))
                        .code())
                .isEqualTo("melt-too-hot");
        assertThat(Objects.requireNonNull(SheetFindings.tooHot(resin("pom-c"), 217))
                        .code())
                .isEqualTo("acetal-hot");
        assertThat(Objects.requireNonNull(SheetFindings.tooHot(resin("pvc-u"), 211))
                        .code())
                .isEqualTo("melt-too-hot");
        assertThat(SheetFindings.tooHot(resin("pom-c"), 205)).isNull();
    }

    @Test
    void cautionsStandOnEverySheet() {
        PressSheet s = sheet("pom-c", null, "electric-10t");
        assertThat(s.cautions()).anyMatch(c -> c.contains("formaldehyde")).anyMatch(c -> c.contains("Local rules"));
        assertThat(s.cautions()).anyMatch(c -> c.contains("0.207 MPa"));
        assertThat(s.steps()).hasSizeGreaterThan(10);
    }

    @Test
    void acetalAfterVinylIsStopped() {
        PressSheet s = sheet("pom-c", "pvc-u", "electric-10t");
        assertThat(s.findings()).extracting(Finding::code).contains("must-never-meet");
        assertThat(s.purge()).anyMatch(p -> p.contains("taken apart"));
        assertThat(sheet("pom-c", "pe-hd", "electric-10t").findings())
                .extracting(Finding::code)
                .doesNotContain("must-never-meet");
    }

    @Test
    void trialOrderKeepsForbiddenApartAndPurgesLeast() {
        Press p = press("electric-10t");
        TrialOrder order = TrialOrder.of(List.of(resin("pom-c"), resin("pvc-u"), resin("pp-homo"), resin("pe-hd")), p);
        List<String> ids = order.steps().stream().map(TrialOrder.Step::resin).toList();
        assertThat(Math.abs(ids.indexOf("pom-c") - ids.indexOf("pvc-u"))).isGreaterThan(1);
        assertThat(Math.abs(ids.indexOf("pp-homo") - ids.indexOf("pe-hd"))).isEqualTo(1);
        assertThat(order.findings())
                .extracting(Finding::code)
                .contains("kept-apart")
                .doesNotContain("must-never-meet");
        assertThat(order.purgeG())
                .isCloseTo(
                        order.steps().stream()
                                .mapToDouble(TrialOrder.Step::purgeG)
                                .sum(),
                        within(1e-9));
        TrialOrder two = TrialOrder.of(List.of(resin("pom-c"), resin("pvc-u")), p);
        assertThat(two.findings()).extracting(Finding::code).contains("must-never-meet");
        assertThatThrownBy(() -> TrialOrder.of(List.of(), p)).hasMessageContaining("give 1 to 8");
    }

    @Test
    void otherResinsComeOutInOtherSizes() {
        Press p = press("electric-10t");
        List<ResinComparison.Tried> tried = List.of("abs", "pp-homo").stream()
                .map(id -> {
                    Resin r = resin(id);
                    FillResult f = fill(r, p);
                    return new ResinComparison.Tried(r, f, cool(r, p, f));
                })
                .toList();
        ResinComparison c = ResinComparison.of(PLATE, new double[] {60, 20, 2}, tried);
        assertThat(c.rows().getFirst().sizeXMm().nominal()).isCloseTo(60, within(0.1));
        ResinComparison.Row pp = c.rows().get(1);
        double mid = resin("pp-homo").shrinkPercent().mid() / 100;
        assertThat(pp.sizeXMm().nominal()).isCloseTo(60 * (1 - mid) / (1 - 0.005), within(1e-9));
        assertThat(pp.offDrawingPercent()).isLessThan(-0.5);
        assertThat(c.findings()).extracting(Finding::code).contains("size-of-other-resin");
    }
}
