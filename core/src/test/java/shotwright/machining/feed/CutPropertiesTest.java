package shotwright.machining.feed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import shotwright.cutter.Cutter;
import shotwright.cutter.CutterRack;
import shotwright.mill.Mill;
import shotwright.mill.MillRack;
import shotwright.stock.Machinability;
import shotwright.stock.MoldMaterial;
import shotwright.stock.StockRack;

/** Properties that hold whatever the numbers are, and every cutter of the rack on every mill. */
class CutPropertiesTest {
    private static final FeedTable TABLE = FeedTable.standard().byId("aluminium");
    private static final Machinability ALLOY =
            StockRack.materials().byId("6061-t6").machinability();

    @Test
    void stepIsTheInverseOfCusp() {
        SplittableRandom random = new SplittableRandom(13);
        for (int i = 0; i < 20_000; i++) {
            double r = 0.1 + 6 * random.nextDouble(), h = r * Math.pow(10, -5 * random.nextDouble());
            assertThat(Cusp.ofBallMm(r, Cusp.stepOfBallMm(r, h))).isCloseTo(h, within(1e-12 + 1e-12 * r / h));
        }
    }

    @Test
    void forcePerAreaFallsWithTheChip() {
        SplittableRandom random = new SplittableRandom(14);
        for (int i = 0; i < 20_000; i++) {
            double h = Math.pow(10, -4 + 3 * random.nextDouble()), thicker = h * (1 + random.nextDouble());
            for (MoldMaterial m : StockRack.materials().all()) {
                var thin = SpecificForce.bandNPerMm2(m.machinability(), h);
                var thick = SpecificForce.bandNPerMm2(m.machinability(), thicker);
                assertThat(thick.nominal()).isLessThan(thin.nominal());
            }
        }
    }

    /** Two passes of half the width take the power of one but for the thinner chip, whose force per area is larger. */
    @Test
    void splittingAPassCostsOnlyTheThinnerChip() {
        SplittableRandom random = new SplittableRandom(15);
        for (int i = 0; i < 5_000; i++) {
            double d = 0.4 + 12 * random.nextDouble(),
                    ae = d * random.nextDouble(0.01, 1),
                    fz = 0.001 + 0.1 * random.nextDouble();
            double whole = Chip.meanMm(fz, ae, d), half = Chip.meanMm(fz, ae / 2, d);
            double one = CuttingPower.powerW(1, ae, 1000, kc(whole)),
                    two = 2 * CuttingPower.powerW(1, ae / 2, 1000, kc(half));
            assertThat(two / one)
                    .isCloseTo(Math.pow(whole / half, 0.25), within(1e-9))
                    .isGreaterThanOrEqualTo(1 - 1e-12);
        }
    }

    private static double kc(double chipMm) {
        return SpecificForce.powerLawNPerMm2(
                ALLOY.kc1NPerMm2().value(), ALLOY.mcExponent().value(), chipMm);
    }

    @Test
    void widthIsTheInverseOfEngagement() {
        SplittableRandom random = new SplittableRandom(3);
        for (int i = 0; i < 5_000; i++) {
            double d = 0.2 + 20 * random.nextDouble(), ae = d * random.nextDouble();
            assertThat(Chip.widthMm(Chip.engagementRad(ae, d), d)).isCloseTo(ae, within(1e-9 * d));
        }
    }

    /** A cone cut into many short cylinders bends and breaks as the cone. */
    @Test
    void aConeIsTheLimitOfSteps() {
        SplittableRandom random = new SplittableRandom(5);
        for (int run = 0; run < 50; run++) {
            double length = 2 + 20 * random.nextDouble(),
                    low = 0.3 + 2 * random.nextDouble(),
                    high = low * (1 + 2 * random.nextDouble());
            double at = length * 0.3 * random.nextDouble();
            CutterBeam cone = new CutterBeam(List.of(new CutterBeam.Stretch(length, low, high)), 600_000);
            int n = 4000;
            List<CutterBeam.Stretch> steps = new ArrayList<>();
            for (int i = 0; i < n; i++) {
                double d = low + (high - low) * (i + 0.5) / n;
                steps.add(new CutterBeam.Stretch(length / n, d, d));
            }
            CutterBeam stepped = new CutterBeam(steps, 600_000);
            assertThat(cone.tipMm(3, at) / stepped.tipMm(3, at)).isCloseTo(1, within(1e-5));
            assertThat(cone.stressMpa(3, at) / stepped.stressMpa(3, at)).isCloseTo(1, within(2e-3));
        }
    }

    @Test
    void everyCutOfTheRackKeepsItsLimits() {
        int cuts = 0, refused = 0;
        for (Mill mill : MillRack.standard().all())
            for (MoldMaterial alloy : StockRack.materials().all())
                for (Cutter c : CutterRack.standard().all()) {
                    if (!c.shape().mills()) continue;
                    for (CutKind kind : CutKind.values()) {
                        double out = Math.max(
                                c.reachMm().value() + 4, c.fluteLengthMm().value() + 4);
                        Cut cut = new Cut(c, out, alloy, mill, kind, 50, 50);
                        switch (CutChoice.of(cut, TABLE)) {
                            case CutData d -> {
                                holds(d);
                                cuts++;
                            }
                            case NoCut n -> {
                                assertThat(n.why()).endsWith(".").contains(c.name());
                                refused++;
                            }
                        }
                    }
                }
        assertThat(cuts).isGreaterThan(3000);
        assertThat(refused).isBetween(1, cuts);
    }

    private static void holds(CutData d) {
        String what = d.cut().cutter().id() + " " + d.cut().kind() + " on "
                + d.cut().mill().id();
        assertThat(d.feedMmPerMin())
                .as(what)
                .isGreaterThan(0)
                .isLessThanOrEqualTo(d.cut().mill().maxFeedMmPerMin().value() * 1.000001);
        assertThat(d.speedRpm())
                .as(what)
                .isBetween(
                        d.cut().mill().minRpm().value(), d.cut().mill().maxRpm().value());
        assertThat(d.depthMm())
                .as(what)
                .isLessThanOrEqualTo(d.cut().cutter().fluteLengthMm().value());
        assertThat(d.load().stressMpa().high()).as(what).isLessThanOrEqualTo(CutModel.MOST_STRESS_MPA * 1.000001);
        assertThat(d.load().deflectionMm().nominal())
                .as(what)
                .isLessThanOrEqualTo(CutModel.ROUGH_BENDING_MM * 1.000001);
        assertThat(d.load().powerW().nominal())
                .as(what)
                .isLessThanOrEqualTo(0.7 * 0.8 * d.cut().mill().powerAtW(d.speedRpm()) * 1.000001);
        assertThat(d.reasons()).as(what).isNotEmpty();
    }

    @Test
    void aCutterIsRefusedWhereItCannotWork() {
        assertThat(why("face-40", 25, "bench-router-300"))
                .contains("shank of 12.0 mm")
                .contains("7.0");
        assertThat(why("flat-2.0x12", 60, "small-vmc-30k")).isEmpty();
        assertThat(why("flat-4.0x12", 110, "small-vmc-30k")).contains("27.5 times as long as thick");
        assertThatThrownBy(() -> cut("drill-3.0x24", 30, "small-vmc-30k", CutKind.SLOT))
                .hasMessageContaining("only makes holes");
        assertThatThrownBy(() -> cut("flat-6.0x25", 20, "small-vmc-30k", CutKind.SLOT))
                .hasMessageContaining("cutting length");
    }

    private static String why(String cutter, double stickoutMm, String mill) {
        return CutChoice.of(cut(cutter, stickoutMm, mill, CutKind.SLOT), TABLE) instanceof NoCut n ? n.why() : "";
    }

    private static Cut cut(String cutter, double stickoutMm, String mill, CutKind kind) {
        return new Cut(
                CutterRack.standard().byId(cutter),
                stickoutMm,
                StockRack.materials().byId("6061-t6"),
                MillRack.standard().byId(mill),
                kind,
                1,
                1);
    }

    @Test
    void aReamerOnAFastSpindleIsToldOf() {
        MoldMaterial alloy = StockRack.materials().byId("6061-t6");
        Mill router = MillRack.standard().byId("bench-router-300"),
                mill = MillRack.standard().byId("benchtop-mill-10k");
        Cutter eight = CutterRack.standard().byId("reamer-8.0h7"),
                three = CutterRack.standard().byId("reamer-3.0h7");
        assertThat(HoleData.ream(eight, 12, alloy, router, TABLE).tooFast()).isTrue();
        assertThat(HoleData.ream(eight, 12, alloy, mill, TABLE).tooFast()).isFalse();
        assertThat(HoleData.ream(three, 12, alloy, router, TABLE).tooFast()).isFalse();
    }

    @Test
    void feedsAlongAPathAreHeldAndSmooth() {
        CutData cut = (CutData) CutChoice.of(
                new Cut(
                        CutterRack.standard().byId("flat-6.0x18"),
                        22,
                        StockRack.materials().byId("6061-t6"),
                        MillRack.standard().byId("small-vmc-30k"),
                        CutKind.CLEAR,
                        6,
                        0.6),
                TABLE);
        double straight = Chip.engagementRad(0.6, 6);
        SplittableRandom random = new SplittableRandom(128);
        List<FeedSchedule.Stretch> path = new ArrayList<>();
        for (int i = 0; i < 400; i++) {
            double phi =
                    switch (random.nextInt(4)) {
                        case 0 -> 0;
                        case 1 -> Math.PI * random.nextDouble();
                        default -> straight;
                    };
            path.add(new FeedSchedule.Stretch(0.05 + random.nextDouble(), phi, phi == 0 ? 0 : cut.depthMm()));
        }
        List<FeedSchedule.StretchFeed> feeds = FeedSchedule.of(cut, path);
        CutModel model = new CutModel(cut.cut());
        double perMm = cut.cut().cutter().flutes() * cut.speedRpm();
        for (int i = 0; i < feeds.size(); i++) {
            FeedSchedule.Stretch s = path.get(i);
            double fz = feeds.get(i).feedMmPerMin() / perMm;
            assertThat(feeds.get(i).feedMmPerMin()).isPositive().isLessThanOrEqualTo(8000);
            if (s.engagementRad() > 0) {
                assertThat(model.use(model.load(fz, s.depthMm(), s.engagementRad(), cut.speedRpm()), cut.speedRpm()))
                        .isLessThanOrEqualTo(1.000001);
                assertThat(fz * Chip.largestShare(s.engagementRad()))
                        .isLessThanOrEqualTo(cut.largestChipMm() * 1.000001);
            }
            if (i > 0) {
                double apart = (s.lengthMm() + path.get(i - 1).lengthMm()) / 2;
                double change = Math.abs(
                        Math.log(feeds.get(i).feedMmPerMin() / feeds.get(i - 1).feedMmPerMin()));
                assertThat(change).isLessThanOrEqualTo(Math.log(2) * apart / 3 + 1e-9);
            }
        }
        List<FeedSchedule.StretchFeed> even =
                FeedSchedule.of(cut, List.of(new FeedSchedule.Stretch(100, straight, cut.depthMm())));
        assertThat(even.getFirst().feedMmPerMin()).isCloseTo(cut.feedMmPerMin(), within(1e-3 * cut.feedMmPerMin()));
    }
}
