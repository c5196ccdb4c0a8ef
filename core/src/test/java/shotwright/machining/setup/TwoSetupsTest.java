package shotwright.machining.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;
import shotwright.mill.Mill;
import shotwright.mill.MillRack;
import shotwright.stock.StockRack;

class TwoSetupsTest {
    private static final Mill MILL = MillRack.standard().byId("small-vmc-30k");
    private static final SetupWishes WISHES = new SetupWishes(25, 6, 4, 10, 30, 12, 150);

    private static Blank blank(HalfBlock half, String bar) {
        if (Blank.of(half, StockRack.standard().byId(bar), 3) instanceof Blank b) return b;
        throw new AssertionError(Blank.of(half, StockRack.standard().byId(bar), 3));
    }

    private static String refused(HalfBlock half, String bar) {
        return Blank.of(half, StockRack.standard().byId(bar), 3) instanceof NoBlank n ? n.why() : "";
    }

    /** 80 × 60 × 20: the drawn 60 mm bar gives the sides, two ends are sawn; finished 19 leaves half a millimetre on each face. */
    @Test
    void aBarGivesItsSidesAndTheSawTheEnds() {
        Blank b = blank(new HalfBlock("half A", 80, 60, 19, 0), "6061-bar-20x60-mm");
        assertThat(b.turned()).isFalse();
        assertThat(b.edges()).isEqualTo(FaceWork.AS_DRAWN);
        assertThat(b.back()).isEqualTo(FaceWork.SKIMMED);
        assertThat(b.sawnLengthMm()).isEqualTo(82);
        assertThat(b.endOffMm()).isEqualTo(1);
        assertThat(b.backOffMm()).isEqualTo(0.5);
        assertThat(b.partingOffMm()).isEqualTo(0.5);
        Blank tall = blank(new HalfBlock("half A", 60, 80, 19, 0), "6061-bar-20x60-mm");
        assertThat(tall.turned()).isTrue();
        assertThat(tall.lengthMm()).isEqualTo(80);
        assertThat(blank(new HalfBlock("half B", 80, 56, 19, 0), "6061-bar-20x60-mm")
                        .edges())
                .isEqualTo(FaceWork.MILLED);
        assertThat(blank(new HalfBlock("half B", 80, 60, 19.5, 0), "6061-bar-20x60-mm")
                        .back())
                .isEqualTo(FaceWork.BY_HAND);
        assertThat(blank(new HalfBlock("half B", 80, 60, 19.7, 0), "6061-bar-20x60-mm")
                        .back())
                .isEqualTo(FaceWork.AS_DRAWN);
        assertThat(refused(new HalfBlock("half B", 80, 60, 17, 3), "6061-bar-20x60-mm"))
                .contains("20.00 mm thick")
                .contains("20.30 mm");
        assertThat(refused(new HalfBlock("half B", 80, 70, 15, 0), "6061-bar-20x60-mm"))
                .contains("60.0 mm wide")
                .contains("70.0 mm");
        assertThat(refused(new HalfBlock("half B", 1200, 60, 15, 0), "6061-bar-20x60-mm"))
                .contains("1000 mm long");
        Blank plate = blank(new HalfBlock("half A", 120, 90, 19, 0), "5083-plate-20x300-mm");
        assertThat(plate.edges()).isEqualTo(FaceWork.MILLED);
        assertThat(plate.blankAcrossMm()).isEqualTo(92);
    }

    /** Every blank is sawn once, and no bar is longer than it is sold, kerfs counted. */
    @Test
    void theSawTakesEveryBlankOnce() {
        SplittableRandom random = new SplittableRandom(31);
        List<Blank> all = new ArrayList<>();
        for (int i = 0; i < 60; i++)
            all.add(blank(
                    new HalfBlock("half " + i, random.nextDouble(61, 400), 60, 19, 0),
                    i % 3 == 0 ? "7075-bar-20x60-mm" : "6061-bar-20x60-mm"));
        SawPlan plan = SawPlan.of(all);
        assertThat(plan.bars().stream().flatMap(b -> b.blanks().stream())).containsExactlyInAnyOrderElementsOf(all);
        double sum = 0;
        for (SawPlan.SawnBar b : plan.bars()) {
            assertThat(b.leftMm()).isNotNegative();
            assertThat(b.blanks()).allMatch(x -> x.bar().equals(b.bar()));
            sum += b.usedMm();
        }
        assertThat(sum)
                .isCloseTo(all.stream().mapToDouble(b -> b.sawnLengthMm() + 1).sum(), within(1e-9));
        assertThat(plan.bars().size()).isLessThanOrEqualTo((int) Math.ceil(1.5 * sum / 1000) + 2);
        SawPlan pair = SawPlan.of(List.of(
                blank(new HalfBlock("half A", 80, 60, 19, 0), "6061-bar-20x60-mm"),
                blank(new HalfBlock("half B", 80, 60, 19, 0), "6061-bar-20x60-mm")));
        assertThat(pair.bars()).hasSize(1);
        assertThat(pair.bars().getFirst().words())
                .contains("166 mm needed")
                .contains("82.0 mm for half A")
                .contains("half B");
    }

    @Test
    void turningTwiceIsNoTurning() {
        TwoSetups s = TwoSetups.of(blank(new HalfBlock("half A", 80, 60, 19, 0), "6061-bar-20x60-mm"), MILL, WISHES);
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < 1000; i++) {
            Vec3 p = new Vec3(random.nextDouble(80), -random.nextDouble(60), -random.nextDouble(19));
            Vec3 q = s.turned(p);
            assertThat(q.y()).isEqualTo(p.y());
            assertThat(s.turned(q).distance(p)).isLessThan(1e-12);
        }
        assertThat(s.turned(new Vec3(0, 0, 0))).isEqualTo(new Vec3(80, 0, -19));
    }

    /** What stood up in the first clamping lies down in the second: the same metal, less what was milled. */
    @Test
    void theSecondBlankIsWhatTheFirstLeft() {
        for (HalfBlock half : List.of(
                new HalfBlock("half A", 80, 60, 19, 0),
                new HalfBlock("half B", 80, 60, 15, 3),
                new HalfBlock("half A", 70, 56, 19, 0),
                new HalfBlock("half B", 70, 56, 15, 4.4))) {
            TwoSetups s = TwoSetups.of(blank(half, "6061-bar-20x60-mm"), MILL, WISHES);
            Box3 first = s.back().stock(), second = s.parting().stock();
            assertThat(s.turned(new Vec3(0, 0, first.min().z())).z())
                    .isCloseTo(second.max().z(), within(1e-9));
            assertThat(s.turned(new Vec3(0, 0, 0)).z()).isCloseTo(second.min().z(), within(1e-9));
            assertThat(first.size().z()).isCloseTo(20, within(1e-9));
            assertThat(first.size().x()).isCloseTo(second.size().x(), within(1e-9));
            assertThat(-s.back().finished().min().z())
                    .as("the jaws hold milled sides")
                    .isGreaterThan(s.parting().gripMm());
            for (Setup setup : List.of(s.back(), s.parting())) {
                assertThat(setup.gripMm()).isBetween(3.0, 6.0);
                for (Box3 jaw : setup.keepOut()) {
                    assertThat(jaw.max().z()).isCloseTo(setup.stock().min().z() + setup.gripMm(), within(1e-9));
                    assertThat(jaw.min().y() >= setup.finished().max().y()
                                    || jaw.max().y() <= setup.finished().min().y())
                            .isTrue();
                }
            }
            assertThat(s.back().finished().min().z())
                    .isGreaterThan(s.back().keepOut().getFirst().max().z());
            assertThat(s.trouble()).isEmpty();
        }
    }

    @Test
    void facingGoesWhereTheTravelIs() {
        Blank b = blank(new HalfBlock("half A", 230, 60, 19, 0), "6061-bar-20x60-mm");
        Mill small = MillRack.standard().byId("benchtop-mill-10k");
        assertThat(TwoSetups.of(b, MILL, WISHES).parting().facing()).isEqualTo(Setup.Facing.ALONG_X);
        TwoSetups across = TwoSetups.of(b, small, WISHES);
        assertThat(across.parting().facing()).isEqualTo(Setup.Facing.ALONG_Y);
        assertThat(across.trouble()).isEmpty();
        Blank longer = blank(new HalfBlock("half A", 260, 60, 19, 0), "6061-bar-20x60-mm");
        assertThat(TwoSetups.of(longer, small, WISHES).trouble())
                .anyMatch(t -> t.contains("of travel and the mill has 250"));
    }

    @Test
    void whatCannotBeHeldIsSaid() {
        Blank thin = blank(new HalfBlock("half A", 80, 60, 11, 0), "6061-bar-20x60-mm");
        SetupWishes deep = new SetupWishes(25, 6, 9, 10, 30, 12, 150);
        assertThat(TwoSetups.of(thin, MILL, deep).trouble())
                .anyMatch(t -> t.contains("features on the sides leave 1.0 mm"));
        Blank wide = blank(new HalfBlock("half A", 120, 100, 19, 0), "6061-bar-20x100-mm");
        assertThat(TwoSetups.of(wide, MillRack.standard().byId("bench-router-300"), WISHES)
                        .trouble())
                .anyMatch(t -> t.contains("opens 80.0 mm"));
    }

    /** 150 N at friction 0.15 with 2.5-fold safety on two jaws: 1250 N, common practice. */
    @Test
    void theViseHoldsTheCut() {
        assertThat(TwoSetups.clampForceN(150)).isCloseTo(1250, within(1e-9));
    }

    @Test
    void theStepsReadLikeASheet() {
        TwoSetups s = TwoSetups.of(blank(new HalfBlock("half A", 80, 60, 19, 0), "6061-bar-20x60-mm"), MILL, WISHES);
        String back = String.join("\n", s.back().steps()),
                parting = String.join("\n", s.parting().steps());
        assertThat(back)
                .contains("6.0 mm stand in the jaws")
                .contains("G54")
                .contains("Mill both ends to length 80.00 mm");
        assertThat(parting)
                .contains("about the y axis")
                .contains("G55")
                .contains("z 19.00 mm above the parallels")
                .contains("never the parting line");
        assertThat(back + parting).doesNotContain("null").doesNotContain("%");
    }
}
