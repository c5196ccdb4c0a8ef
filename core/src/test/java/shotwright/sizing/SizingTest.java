package shotwright.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shotwright.finding.Finding;
import shotwright.finding.Severity;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.measure.Units;
import shotwright.press.Press;
import shotwright.press.PressRack;
import shotwright.resin.ResinRack;

class SizingTest {
    private static Press press(String id) {
        return PressRack.standard().byId(id);
    }

    /** A flat part of 0.70 in² projected area, 2 mm thick. */
    private static SizingInput flat(double areaIn2, String... resins) {
        double area = Units.in2ToMm2(areaIn2), side = Math.sqrt(area);
        return new SizingInput(
                area * 2,
                area,
                new Vec2(0, 0),
                new Vec3(side, side, 2),
                2,
                2,
                List.of(resins).stream().map(ResinRack.standard()::byId).toList(),
                PressRack.standard().all(),
                null,
                null,
                null,
                500,
                SizingTest::price,
                null,
                null,
                null,
                null);
    }

    /** A mold of 500 and 200 for each cavity, a part of an hour at 50 shared by all cavities; money of our own invention. */
    private static CavityPrices.Price price(CavityPrices.Try t) {
        return new CavityPrices.Price(500 + 200 * t.cavitiesCount(), 50 * t.cycleS() / 3600 / t.cavitiesCount());
    }

    private static List<String> codes(SizingResult r) {
        return r.findings().stream().map(Finding::code).toList();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"abs", "pp-homo", "pp-copo", "hips", "gpps", "pe-hd", "pe-ld", "pom-c", "tpe-s", "san", "petg"})
    void seventyHundredthsOnTwoShortTonsIsTightAndAllowed(String resin) {
        SizingResult r = Sizing.size(flat(0.70, resin).decided(press("hand-lever-2t"), null, 1));
        assertThat(r.clampNeededShortTons()).isCloseTo(1.75, within(1e-9));
        assertThat(r.ours().check(PressCheck.Subject.CLAMP).verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(r.verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(codes(r)).contains("clamp-tight");
        assertThat(r.findings()).noneMatch(f -> f.severity() == Severity.STOP);
    }

    @Test
    void twoUpOnTheSamePressIsRefusedWithTheReason() {
        SizingResult r = Sizing.size(flat(0.70, "abs").decided(press("hand-lever-2t"), null, 2));
        assertThat(r.verdict()).isEqualTo(Verdict.NO);
        assertThat(r.clampNeededShortTons()).isCloseTo(3.5, within(1e-9));
        assertThat(r.ours().firstReason()).contains("3.50 short tons").contains("2.00 short tons");
        Finding stop = r.findings().getFirst();
        assertThat(stop.code()).isEqualTo("clamp-short");
        assertThat(stop.severity()).isEqualTo(Severity.STOP);
        assertThat(stop.remedy()).startsWith("Cut one cavity");
    }

    @Test
    void twoUpStandsInTheTableWithItsReasonWhenNobodyDecided() {
        SizingResult r = Sizing.size(flat(0.70, "abs").decided(press("hand-lever-2t"), null, null));
        assertThat(r.cavities()).isEqualTo(1);
        CavityRow two = r.cavityRows().get(1);
        assertThat(two.cavitiesCount()).isEqualTo(2);
        assertThat(two.verdict()).isEqualTo(Verdict.NO);
        assertThat(two.words()).startsWith("Not possible on this press. Clamp:");
        assertThat(codes(r)).contains("cavities-refused");
    }

    @Test
    void theFeedIsCountedOnceItIsKnown() {
        SizingInput input =
                flat(0.70, "abs").decided(press("hand-lever-2t"), null, 1).known(60.0, 250.0, null, null);
        SizingResult r = Sizing.size(input);
        assertThat(r.projectedAreaShotMm2()).isCloseTo(Units.in2ToMm2(0.70) + 60, within(1e-9));
        assertThat(r.shotVolumeMm3()).isCloseTo(input.partVolumeMm3() + 250, within(1e-9));
        assertThat(r.verdict()).isEqualTo(Verdict.TIGHT);
    }

    @Test
    void allowanceIsTakenOnce() {
        for (Press p : PressRack.standard().all())
            assertThat(PressChecks.spareShare(p))
                    .isEqualTo(Math.min(p.usableShare().value(), 1 / 1.2));
    }

    @Test
    void theSmallestPressWithRoomToSpareIsTaken() {
        SizingResult r = Sizing.size(flat(0.70, "abs"));
        assertThat(r.ours().verdict()).isEqualTo(Verdict.FITS);
        double ours = r.press().nameplateKn();
        assertThat(r.presses())
                .filteredOn(p -> p.verdict() == Verdict.FITS)
                .allMatch(p -> p.press().nameplateKn() >= ours);
        assertThat(r.presses()).hasSize(PressRack.standard().all().size());
        assertThat(r.presses()).filteredOn(p -> p.verdict() != Verdict.FITS).allMatch(p -> !p.firstReason()
                .isBlank());
    }

    @Test
    void aPartTooLargeForEveryPressIsToldSo() {
        SizingResult r = Sizing.size(flat(40, "abs"));
        assertThat(r.verdict()).isEqualTo(Verdict.NO);
        assertThat(r.findings()).anyMatch(f -> f.severity() == Severity.STOP);
    }

    @Test
    void bandsHoldTheNeed() {
        for (String id : ResinRack.standard().ids()) {
            SizingResult r = Sizing.size(flat(1.2, id));
            assertThat(r.clampBandKn().low()).as(id).isLessThanOrEqualTo(r.clampNeededKn());
            assertThat(r.clampBandKn().high()).as(id).isGreaterThanOrEqualTo(r.clampNeededKn());
            assertThat(r.clamp().ways()).as(id).hasSize(3);
        }
    }

    @Test
    void theViseClampIsToldAsAnEstimateWithTheTestThatMeasuresIt() {
        SizingResult r = Sizing.size(flat(0.5, "pp-homo").decided(press("vise-clamp-hand-plunger"), null, 1));
        Finding f = r.findings().stream()
                .filter(x -> x.code().equals("clamp-estimated"))
                .findFirst()
                .orElseThrow();
        assertThat(f.text()).contains("15.1 kN");
        assertThat(f.remedy()).contains("film of flash").contains("torque");
    }

    @Test
    void aSecondPressWithAnotherNozzleEntryIsRefused() {
        SizingResult r = Sizing.size(flat(0.5, "abs").decided(press("hand-lever-2t"), press("electric-10t"), 1));
        PressVerdict second = java.util.Objects.requireNonNull(r.second());
        assertThat(second.check(PressCheck.Subject.ENTRY).verdict()).isEqualTo(Verdict.NO);
        assertThat(r.verdict()).isEqualTo(Verdict.NO);
        assertThat(codes(r)).contains("second-press");
    }

    @Test
    void acetalAndVinylInOneJobAreStopped() {
        SizingResult r = Sizing.size(flat(0.5, "pom-c", "pvc-u"));
        assertThat(codes(r)).contains("resins-never-meet");
        assertThat(r.resinRows()).hasSize(1);
    }

    @Test
    void moreAreaNeverMakesAnyPressBetter() {
        for (Press p : PressRack.standard().all()) {
            Verdict before = Verdict.FITS;
            for (double in2 = 0.2; in2 < 12; in2 *= 1.5) {
                Verdict now = Sizing.size(flat(in2, "pp-homo").decided(p, null, 1))
                        .ours()
                        .check(PressCheck.Subject.CLAMP)
                        .verdict();
                assertThat(now).as(p.id() + " at " + in2 + " in²").isGreaterThanOrEqualTo(before);
                before = now;
            }
        }
    }

    @Test
    void cavitiesAreTakenOnlyWhereTheyPay() {
        SizingResult few = Sizing.size(
                flat(0.3, "pp-homo").decided(press("electric-10t"), null, null).quantity(100));
        SizingResult many = Sizing.size(
                flat(0.3, "pp-homo").decided(press("electric-10t"), null, null).quantity(20_000));
        assertThat(few.cavities()).isEqualTo(1);
        assertThat(many.cavities()).isGreaterThan(1);
    }

    @Test
    void aThinLongPartOnASlowPressFreezesBeforeItIsFull() {
        double area = 30 * 60;
        SizingInput thin = new SizingInput(
                area * 0.7,
                area,
                new Vec2(0, 0),
                new Vec3(60, 30, 10),
                0.7,
                0.8,
                List.of(ResinRack.standard().byId("abs")),
                PressRack.standard().all(),
                press("screw-jack-4t"),
                null,
                1,
                500,
                SizingTest::price,
                null,
                null,
                null,
                null);
        assertThat(Sizing.size(thin).ours().check(PressCheck.Subject.SPEED).verdict())
                .isNotEqualTo(Verdict.FITS);
        PressVerdict fast =
                Sizing.size(thin.decided(press("electric-screw-20t"), null, 1)).ours();
        assertThat(fast.check(PressCheck.Subject.SPEED).verdict()).isEqualTo(Verdict.FITS);
    }

    @Test
    void whenNoPressServesTheNearestIsNamedAndTheReasonIsTold() {
        SizingResult r = Sizing.size(flat(40, "abs"));
        assertThat(r.findings().getFirst().code()).isEqualTo("no-press");
        assertThat(r.press().id()).isEqualTo("hydraulic-30t");
        assertThat(codes(r)).contains("clamp-short").doesNotContain("cavities-refused");
    }

    @Test
    void aMoldALittleTooLargeIsTightAndALotIsRefused() {
        SizingInput base = flat(0.3, "pp-homo").decided(press("hand-lever-2t"), null, 1);
        for (double sideMm : new double[] {70, 75, 90}) {
            SizingInput part = new SizingInput(
                    base.partVolumeMm3(),
                    base.projectedAreaMm2(),
                    base.centreOffMm(),
                    new Vec3(sideMm, 5, 2),
                    2,
                    2,
                    base.resins(),
                    base.presses(),
                    base.press(),
                    null,
                    1,
                    500,
                    SizingTest::price,
                    null,
                    null,
                    null,
                    null);
            Verdict expected = sideMm == 70 ? Verdict.FITS : sideMm == 75 ? Verdict.TIGHT : Verdict.NO;
            assertThat(Sizing.size(part)
                            .ours()
                            .check(PressCheck.Subject.ENVELOPE)
                            .verdict())
                    .as("%s mm long", sideMm)
                    .isEqualTo(expected);
        }
    }

    @Test
    void ourPressIsChosenToBeFedLikeTheSecondOne() {
        for (String id : List.of("electric-5t", "electric-10t")) {
            SizingResult r = Sizing.size(flat(0.5, "abs").decided(null, press(id), 1));
            assertThat(r.press().nozzleMeets()).isEqualTo(press(id).nozzleMeets());
            assertThat(r.verdict()).isNotEqualTo(Verdict.NO);
        }
    }
}
