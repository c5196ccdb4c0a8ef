package shotwright.machining.hole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import shotwright.cutter.Cutter;
import shotwright.cutter.CutterRack;
import shotwright.geom.Box3;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.Trial;
import shotwright.machining.path.Arc;
import shotwright.machining.path.Feed;
import shotwright.machining.path.Rapid;
import shotwright.machining.path.Step;
import shotwright.machining.proof.Proof;
import shotwright.machining.workpiece.Hole;
import shotwright.machining.workpiece.Phase;
import shotwright.machining.workpiece.Task;
import shotwright.measure.Quantity;
import shotwright.measure.Source;
import shotwright.mill.Mill;
import shotwright.mill.MillRack;
import shotwright.mold.Purpose;

/**
 * Holes against plane geometry, the numbers of handbook 1.7, 5.8, 5.9 and 12.5 (machining), ISO 286 by the sizes asked for, and the removal of
 * stock as a second way to look at them.
 */
class HolePlannerTest {
    private static final Vec2 AT = new Vec2(1.237, -0.381);
    private static final List<Cutter> RACK = CutterRack.standard().all();

    private static Hole hole(Purpose use, double diaMm, double depthMm, boolean through) {
        return new Hole("the hole", use, AT, true, through, diaMm, diaMm, 0, -depthMm);
    }

    private static HoleWay way(Hole hole, double floorMm, Mill mill, List<Cutter> cutters) {
        return new HolePlanner(Trial.shop(cutters, mill)).plan(hole, floorMm);
    }

    private static HoleWay way(Hole hole) {
        return way(hole, hole.through() ? Double.POSITIVE_INFINITY : 8, Trial.MILL, RACK);
    }

    private static List<Arc> arcs(Task task) {
        return Trial.steps(task).stream()
                .filter(Arc.class::isInstance)
                .map(Arc.class::cast)
                .toList();
    }

    private static double radiusMm(Task task) {
        return task.cutter().diaMm().value() / 2;
    }

    private static double lowestMm(Task task) {
        return Trial.steps(task).stream()
                .mapToDouble(s -> s.box().min().z())
                .min()
                .orElseThrow();
    }

    /** Height of a drill's point, handbook 5.9: 118° 0.3004 of its diameter, 130° 0.2332, 135° 0.2071, 140° 0.1820. */
    private static double pointMm(Cutter drill) {
        Quantity point = drill.pointAngleDeg();
        if (point == null) throw new AssertionError(drill.id() + " has no point");
        Double share = Map.of(118.0, 0.3004, 130.0, 0.2332, 135.0, 0.2071, 140.0, 0.1820)
                .get(point.value());
        if (share == null) throw new AssertionError(point.value() + "° is not in the handbook");
        return share * drill.diaMm().value();
    }

    private static boolean isFullTurn(Arc a) {
        return a.sweepRad() > 2 * Math.PI - 1e-9;
    }

    /** Bored dowel holes, sliding and held, blind and through: each pass leaves the cutter's radius and its path's radius. */
    @ParameterizedTest
    @CsvSource({"6.016,10,false", "5.988,10,false", "6.016,14,true", "5.988,14,true", "4.016,8,false", "8.0205,12,false"
    })
    void dowelHolesAreBoredToTheirVerySize(double diaMm, double depthMm, boolean through) {
        HoleWay way = way(hole(diaMm > 6 ? Purpose.DOWEL_SLIDING : Purpose.DOWEL_HELD, diaMm, depthMm, through));
        assertThat(way.byHand()).isEmpty();
        assertThat(way.tasks()).extracting(Task::phase).containsExactly(Phase.BORE);
        Task bore = way.tasks().getFirst();
        double r = radiusMm(bore), bottomMm = lowestMm(bore);
        // 1.7: a helix enters holes of 1.3 to 1.9 cutters
        assertThat(diaMm / (2 * r)).isBetween(1.3, 1.9);
        if (through) assertThat(bottomMm).isBetween(-depthMm - 1, -depthMm - 0.3);
        else assertThat(bottomMm).isEqualTo(-depthMm, within(1e-9));
        List<Double> turns = new ArrayList<>();
        for (Arc a : arcs(bore)) {
            assertThat(a.counterClockwise()).isTrue();
            if (!isFullTurn(a)) continue;
            assertThat(a.centre().distance(AT)).isLessThan(1e-9);
            // 12.5: pitch of a tenth to a fifth of the cutter at most
            assertThat(a.from().z() - a.to().z()).isBetween(-1e-9, 0.2 * 2 * r);
            if (a.from().z() - a.to().z() < 1e-9 && a.to().z() < bottomMm + 1e-9) turns.add(2 * (a.radiusMm() + r));
        }
        // 12.5: rough 0.2 under and once more, 0.05 under for the gauge, to size, once more without a cut
        assertThat(turns).hasSize(5);
        double[] leaves = {diaMm - 0.2, diaMm - 0.2, diaMm - 0.05, diaMm, diaMm};
        for (int i = 0; i < leaves.length; i++) assertThat(turns.get(i)).isEqualTo(leaves[i], within(1e-9));
        assertThat(way.notes()).anyMatch(n -> n.contains("gauge") && n.contains("0.05 mm under size"));
    }

    /** A 3 mm pin hole between the limits of H7, ISO 286-2: 3.000 to 3.010. */
    @ParameterizedTest
    @CsvSource({"true", "false"})
    void pinHolesAreSpottedDrilledAndReamed(boolean through) {
        double depthMm = 12;
        HoleWay way = way(hole(Purpose.PIN, 3.005, depthMm, through));
        assertThat(way.tasks()).extracting(Task::phase).containsExactly(Phase.SPOT, Phase.DRILL, Phase.REAM);
        Task spot = way.tasks().get(0),
                drill = way.tasks().get(1),
                ream = way.tasks().get(2);
        assertThat(ream.cutter().id()).isEqualTo("reamer-3.0h7");
        // 5.8 [S21]: 2.3 to 4.3 mm are reamed with 0.13 to 0.25 left on the diameter
        assertThat(3 - drill.cutter().diaMm().value()).isBetween(0.13, 0.25);
        // the spot stays inside a hole whose edge has to stay sharp: 90° makes it twice as wide as deep, and the tip's
        // flat
        double spotMm = 2 * -lowestMm(spot) + spot.cutter().diaMm().value();
        assertThat(spotMm).isBetween(drill.cutter().diaMm().value() - 0.5, 3.0);
        double full = lowestMm(drill) + pointMm(drill.cutter());
        if (through) {
            assertThat(full).isBetween(-depthMm - 1, -depthMm - 0.5 + 1e-3); // 5.9: 0.5 to 1 beyond the point
            assertThat(lowestMm(ream)).isLessThan(-depthMm - 0.5);
        } else {
            assertThat(full).isLessThanOrEqualTo(lowestMm(ream) + 1e-3);
            assertThat(lowestMm(ream)).isEqualTo(-depthMm - 1, within(1e-9));
        }
        // in and out at a feed, never at the rapid
        for (Step s : Trial.steps(ream))
            if (s instanceof Rapid) assertThat(s.box().min().z()).isGreaterThan(0);
        assertThat(drill.speedRpm()).isGreaterThan(ream.speedRpm());
    }

    private static Cutter withPoint(Cutter c, double deg) {
        return new Cutter(
                c.id(),
                c.name(),
                c.shape(),
                c.diaMm(),
                c.cornerRadiusMm(),
                c.taperDeg(),
                new Quantity(deg, "°", Source.computed("for a test")),
                c.fluteLengthMm(),
                c.reachMm(),
                c.neckMm(),
                c.shankMm(),
                c.flutes(),
                c.material(),
                c.soldIn(),
                c.maxRpm(),
                c.price());
    }

    /** Handbook 5.9: points of 118° are 0.3004 D high, of 135° 0.2071 D; what they need below the hole has to be there. */
    @ParameterizedTest
    @CsvSource({"118,0.3004", "135,0.2071"})
    void drillPointsStayInTheMetal(double pointDeg, double heightOfDia) {
        List<Cutter> rack = RACK.stream()
                .map(c -> c.shape() == Cutter.Shape.DRILL ? withPoint(c, pointDeg) : c)
                .toList();
        double pointMm = heightOfDia * 4.2;
        Hole thread = hole(Purpose.THREAD, 4.2, 10, false);
        HoleWay drilled = way(thread, pointMm + 0.01, Trial.MILL, rack);
        assertThat(drilled.tasks()).extracting(Task::phase).contains(Phase.DRILL);
        assertThat(lowestMm(drilled.tasks().getLast())).isEqualTo(-10 - pointMm, within(1e-3));
        assertThat(drilled.byHand()).contains("tap");
        HoleWay tooThin = way(thread, pointMm - 0.01, Trial.MILL, rack);
        for (Task t : tooThin.tasks()) assertThat(lowestMm(t)).isGreaterThan(-10 - pointMm + 0.01);
        Hole pin = hole(Purpose.PIN, 3.005, 10, false);
        double leadMm = 1 + heightOfDia * 2.8;
        assertThat(way(pin, leadMm + 0.01, Trial.MILL, rack).tasks())
                .extracting(Task::phase)
                .contains(Phase.REAM);
        assertThat(way(pin, leadMm - 0.01, Trial.MILL, rack).tasks())
                .extracting(Task::phase)
                .containsExactly(Phase.BORE);
    }

    /** A sprue of 4 to 6 mm gets a straight pilot that leaves the taper whole, and a hand step for the reamer. */
    @ParameterizedTest
    @CsvSource({"4,6", "6,4"})
    void taperedSpruesGetAPilot(double mouthMm, double endMm) {
        Hole sprue = new Hole("sprue", Purpose.SPRUE, AT, true, true, mouthMm, endMm, 0, -20);
        HoleWay way = way(sprue);
        assertThat(way.byHand()).contains("ream sprue").contains("4.00 to 6.00 mm");
        assertThat(way.tasks()).extracting(Task::phase).containsExactly(Phase.SPOT, Phase.DRILL);
        assertThat(way.tasks().getLast().cutter().diaMm().value()).isLessThan(4).isGreaterThan(3);
        double spotMm = 2 * -lowestMm(way.tasks().getFirst())
                + way.tasks().getFirst().cutter().diaMm().value();
        assertThat(spotMm).isLessThan(mouthMm);
        HoleWay slim = way(new Hole("sprue", Purpose.SPRUE, AT, true, true, 1, 1.4, 0, -20));
        assertThat(slim.tasks()).isEmpty();
        assertThat(slim.byHand()).contains("drill").contains("ream sprue");
    }

    @Test
    void holesTooSlimForTheRackAreLeftToTheBenchInWords() {
        for (Purpose use :
                List.of(Purpose.PIN, Purpose.CLEARANCE, Purpose.THREAD, Purpose.DOWEL_HELD, Purpose.COUNTERBORE)) {
            HoleWay way = way(hole(use, 0.7, 20, true));
            assertThat(way.tasks()).isEmpty();
            assertThat(way.byHand()).contains("bench").contains("the hole");
        }
        assertThat(way(hole(Purpose.THREAD, 0.7, 20, true)).byHand()).contains("tap");
    }

    /** A cutter whose path is wider than itself would leave a core standing; each next ring takes no more than its own width. */
    @ParameterizedTest
    @CsvSource({"10.4", "16", "21", "24", "30"})
    void wideHolesAreOpenedFromTheMiddleWithoutACore(double diaMm) {
        Task bore = way(hole(Purpose.COUNTERBORE, diaMm, 5, false)).tasks().getFirst();
        double r = radiusMm(bore), doneMm = 0;
        List<Arc> turns =
                arcs(bore).stream().filter(HolePlannerTest::isFullTurn).toList();
        assertThat(turns).isNotEmpty();
        for (Arc a : turns) {
            assertThat(a.radiusMm() - r).isLessThan(doneMm + 1e-9);
            if (a.to().z() < -5 + 1e-9 && a.from().z() < -5 + 1e-9) doneMm = Math.max(doneMm, a.radiusMm() + r);
        }
        assertThat(2 * doneMm).isEqualTo(diaMm, within(1e-9));
    }

    /** A drill as long as the hole is deep: its point and the break-out go further, and the holder must not touch. */
    @Test
    void holdersStayAboveTheMouth() {
        for (double depth = 20; depth < 40; depth += 0.5) {
            for (Task t : way(hole(Purpose.CLEARANCE, 5.8, depth, true)).tasks())
                assertThat(t.stickoutMm() + lowestMm(t)).isGreaterThanOrEqualTo(0.5);
        }
    }

    /** 5.8 [S21] and the alloy: where the spindle cannot turn slowly enough for a reamer or drill, the hole is milled round. */
    @Test
    void fastSpindlesDoNotReamWhatWouldBurn() {
        Mill router = MillRack.standard().byId("bench-router-300");
        double most = Trial.ALLOY.machinability().reamMPerMin().high();
        for (double d : new double[] {2.005, 3.005, 4.006, 5.006, 6.006, 8.0075}) {
            for (Task t : way(hole(Purpose.PIN, d, 8, true), Double.POSITIVE_INFINITY, router, RACK)
                    .tasks()) {
                if (t.phase() != Phase.REAM) continue;
                double mPerMin = Math.PI * t.cutter().diaMm().value() * t.speedRpm() / 1000;
                assertThat(mPerMin).isLessThanOrEqualTo(1.001 * most);
            }
        }
    }

    static Stream<Hole> holes() {
        Random random = new Random(8734);
        List<Hole> all = new ArrayList<>();
        double[] pins = {2.005, 3.005, 4.006, 5.006, 6.006};
        for (int i = 0; i < 40; i++) {
            Purpose use = List.of(
                            Purpose.DOWEL_HELD,
                            Purpose.DOWEL_SLIDING,
                            Purpose.CLEARANCE,
                            Purpose.COUNTERBORE,
                            Purpose.THREAD,
                            Purpose.PIN,
                            Purpose.PIN_RELIEF)
                    .get(i % 7);
            double dia =
                    switch (use) {
                        case PIN -> pins[random.nextInt(pins.length)];
                        case DOWEL_HELD, DOWEL_SLIDING -> 2 + 8 * random.nextDouble();
                        default -> 1.5 + 14 * random.nextDouble();
                    };
            all.add(hole(use, dia, Math.min(24, (1 + 3 * random.nextDouble()) * dia), random.nextBoolean()));
        }
        return all.stream();
    }

    /** Begins and ends at the safe height; below it goes sideways only over the hole; the holder stays above the mouth. */
    @ParameterizedTest
    @MethodSource("holes")
    void pathsKeepToTheirHole(Hole hole) {
        HoleWay way = way(hole);
        assertThat(way.tasks().isEmpty()).isEqualTo(way.byHand().contains("bench"));
        for (Task t : way.tasks()) {
            List<Step> steps = Trial.steps(t);
            assertThat(steps.getLast().to().z()).isEqualTo(Trial.CLEAR_MM, within(1e-9));
            double r = radiusMm(t), allowedMm = Math.max(0, hole.diameterMm() / 2 - r) + 1e-9;
            for (Step s : steps) {
                Vec3 a = s.from(), b = s.to();
                boolean sideways = a.xy().distance(b.xy()) > 1e-9 || s instanceof Arc;
                if (sideways && Math.min(a.z(), b.z()) < Trial.CLEAR_MM - 1e-9) {
                    for (int k = 0; k <= 32; k++)
                        assertThat(s.at(k / 32.0).xy().distance(hole.atMm())).isLessThanOrEqualTo(allowedMm);
                    if (s instanceof Rapid) assertThat(Math.min(a.z(), b.z())).isGreaterThan(0);
                }
                if (s instanceof Feed f) assertThat(f.feedMmPerMin()).isPositive();
            }
            assertThat(t.stickoutMm() + lowestMm(t)).isGreaterThanOrEqualTo(0.5);
        }
        if (hole.through()) return;
        for (Task t : way.tasks()) assertThat(lowestMm(t)).isGreaterThan(hole.endZMm() - 8);
    }

    /** The hole in a block, from its moves and from the metal that is gone: a cylinder, under a drill's point its cone. */
    @ParameterizedTest
    @MethodSource("holes")
    void aBlockHasTheHoleAfterwards(Hole hole) {
        HoleWay way = way(hole);
        if (way.tasks().isEmpty()) return;
        double d = hole.diameterMm(), depth = hole.depthMm(), half = d / 2 + 1.5;
        double bottomMm = hole.through() ? -depth : -depth - 8;
        Box3 stock =
                new Box3(new Vec3(AT.x() - half, AT.y() - half, bottomMm), new Vec3(AT.x() + half, AT.y() + half, 0));
        Task last = way.tasks().getLast();
        double made = last.phase() == Phase.BORE ? d : last.cutter().diaMm().value();
        double low = way.tasks().stream()
                .mapToDouble(HolePlannerTest::lowestMm)
                .min()
                .orElseThrow();
        Proof p = Trial.proof(
                way.tasks(),
                stock,
                0.03,
                List.of(new shotwright.machining.proof.Hole(
                        "hole",
                        AT,
                        made,
                        0,
                        hole.through() ? -depth : hole.endZMm(),
                        hole.through() ? low : -depth - 8)),
                List.of(),
                null);
        assertThat(p.faults()).isEmpty();
        double expected = Math.PI * made * made / 4 * depth;
        if (!hole.through() && last.phase() != Phase.BORE) {
            Task drill = way.tasks().get(1);
            double dd = drill.cutter().diaMm().value(), point = pointMm(drill.cutter());
            double lead = last.phase() == Phase.REAM ? 1 : 0;
            expected += Math.PI * made * made / 4 * lead + Math.PI * dd * dd / 12 * point;
            // reamed no deeper than drilled: nothing of the cone is widened
            assertThat(lowestMm(last)).isGreaterThanOrEqualTo(lowestMm(drill));
        }
        Task spot = way.tasks().getFirst();
        if (spot.phase() == Phase.SPOT) {
            double r = made / 2, flat = spot.cutter().diaMm().value() / 2, deep = -lowestMm(spot), wide = flat + deep;
            if (wide > r)
                expected += Math.PI * (wide - r) / 3 * (wide * wide + wide * r + r * r) - Math.PI * r * r * (wide - r);
        }
        assertThat(p.removedMm3()).isEqualTo(expected, within(0.004 * expected));
        // fitted holes lie within 0.005 mm of their circle; a reamer sold as H7 is drawn at its nominal size
        double fits = hole.isFitted()
                ? 0.01
                : hole.use() == Purpose.CLEARANCE || hole.use() == Purpose.PIN_RELIEF ? 0.5 : 0.1;
        assertThat(made).isEqualTo(d, within(fits + 1e-9));
    }
}
