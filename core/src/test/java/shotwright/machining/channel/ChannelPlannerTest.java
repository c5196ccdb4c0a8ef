package shotwright.machining.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import shotwright.cutter.Cutter;
import shotwright.cutter.CutterRack;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;
import shotwright.machining.Trial;
import shotwright.machining.path.Feed;
import shotwright.machining.path.Step;
import shotwright.machining.proof.Level;
import shotwright.machining.proof.Proof;
import shotwright.machining.workpiece.Channel;
import shotwright.machining.workpiece.Phase;
import shotwright.machining.workpiece.Task;
import shotwright.mold.Purpose;

/** Channels against the closed forms of their sections, by the removal of stock. */
class ChannelPlannerTest {
    private static final double CELL_MM = 0.025;
    private static final Box3 STOCK = new Box3(new Vec3(-12, -6, -10), new Vec3(12, 6, 0));

    private static ChannelWay way(Channel channel) {
        return new ChannelPlanner(Trial.shop(CutterRack.standard().all(), Trial.MILL)).plan(channel);
    }

    /** Error of the midpoint rule where a section rises upright at both sides: |ζ(−½)| √(2 r) h^1.5 each, over the length. */
    private static double gridMm3(double diaMm) {
        return 24 * 2 * 0.2079 * Math.sqrt(diaMm) * Math.pow(CELL_MM, 1.5);
    }

    private static Proof cut(ChannelWay way, Level... flats) {
        return Trial.proof(way.tasks(), STOCK, CELL_MM, List.of(), List.of(flats), null);
    }

    /** Half round along x from edge to edge, both ends open. */
    private static Channel round(double fromDiaMm, double toDiaMm) {
        return new Channel(
                "runner",
                Purpose.RUNNER,
                new Vec3(-12, 0.313, 0),
                new Vec3(12, 0.313, 0),
                true,
                fromDiaMm,
                toDiaMm,
                fromDiaMm / 2,
                toDiaMm / 2,
                0,
                true,
                true,
                0.5,
                0.5);
    }

    private static Channel flat(Purpose kind, double widthMm, double toWidthMm, double depthMm, double leanDeg) {
        return new Channel(
                kind == Purpose.VENT_CHANNEL ? "vent" : "runner",
                kind,
                new Vec3(-12, -0.287, 0),
                new Vec3(12, -0.287, 0),
                false,
                widthMm,
                toWidthMm,
                depthMm,
                depthMm,
                leanDeg,
                true,
                true,
                0.5,
                0.5);
    }

    /** Handbook 5.7: half round by a ball of the runner's width in one track; metal gone is π r²/2 L. */
    @ParameterizedTest
    @CsvSource({"3", "4", "6", "1"})
    void aBallOfTheRunnersWidthLeavesTheHalfRound(double diaMm) {
        ChannelWay way = way(round(diaMm, diaMm));
        Task task = way.tasks().getFirst();
        assertThat(task.phase()).isEqualTo(Phase.FEED);
        assertThat(task.cutter().shape()).isEqualTo(Cutter.Shape.BALL);
        assertThat(task.cutter().diaMm().value()).isEqualTo(diaMm, within(0.011));
        for (Step s : Trial.steps(task))
            if (s instanceof Feed) assertThat(s.to().y()).isEqualTo(0.313, within(1e-9));
        Proof p = cut(way);
        assertThat(p.faults()).isEmpty();
        assertThat(p.removedMm3()).isEqualTo(Math.PI * diaMm * diaMm / 8 * 24, within(gridMm3(diaMm)));
    }

    /** A runner that has no ball of its own width, or grows: section after section is the circle, to ridge and grid. */
    @ParameterizedTest
    @CsvSource({"5,5", "4,6", "6,4", "3.2,4.4", "7,9"})
    void roundRunnersInTracksAreRoundAtEveryStation(double fromMm, double toMm) {
        ChannelWay way = way(round(fromMm, toMm));
        Proof p = cut(way);
        assertThat(p.faults()).isEmpty();
        var grid = p.stock().grid();
        double slope = (toMm - fromMm) / 2 / 24, worstLeft = 0, worstCut = 0;
        for (int c = 0; c < grid.count(); c++) {
            double x = grid.x(c % grid.nx()),
                    y = grid.y(c / grid.nx()) - 0.313,
                    z = p.stock().topMm(c);
            if (Math.abs(x) > 11.9 || Math.abs(y) > 6) continue;
            double r = (fromMm + (toMm - fromMm) * (x + 12) / 24) / 2;
            // distance of what is left from the cone, along its normal
            double left = (r - Math.hypot(y, z)) / Math.hypot(1, slope);
            if (z < -1e-6) worstCut = Math.max(worstCut, -left);
            if (Math.abs(y) < r - 0.02) worstLeft = Math.max(worstLeft, left);
        }
        assertThat(worstCut).isLessThan(0.002);
        assertThat(worstLeft).isLessThan(0.004 + 0.002);
    }

    /** Handbook 5.7: a trapezoid by a tapered cutter; section (w − d tan a) d, its floor as wide as w − 2 d tan a. */
    @ParameterizedTest
    @CsvSource({"4,3,5", "6,2.5,5", "3,2,3", "5,2,2"})
    void taperedCuttersLeaveTheTrapezoid(double widthMm, double depthMm, double leanDeg) {
        ChannelWay way = way(flat(Purpose.RUNNER, widthMm, widthMm, depthMm, leanDeg));
        Task task = way.tasks().getFirst();
        assertThat(task.cutter().shape()).isEqualTo(Cutter.Shape.TAPER);
        assertThat(task.cutter().taperDeg().value()).isEqualTo(leanDeg, within(1e-9));
        Proof p = cut(way);
        assertThat(p.faults()).isEmpty();
        double section = (widthMm - depthMm * Math.tan(Math.toRadians(leanDeg))) * depthMm;
        assertThat(p.removedMm3()).isEqualTo(24 * section, within(24 * depthMm * CELL_MM));
        widths(p, -0.287, widthMm, depthMm, leanDeg);
    }

    private static void widths(Proof p, double middle, double widthMm, double depthMm, double leanDeg) {
        var grid = p.stock().grid();
        double lean = Math.tan(Math.toRadians(leanDeg));
        for (int c = 0; c < grid.count(); c++) {
            double x = grid.x(c % grid.nx()),
                    y = Math.abs(grid.y(c / grid.nx()) - middle),
                    z = p.stock().topMm(c);
            if (Math.abs(x) > 11.9) continue;
            double floor = widthMm / 2 - depthMm * lean;
            double want = y <= floor ? -depthMm : y >= widthMm / 2 ? 0 : lean == 0 ? 0 : -(widthMm / 2 - y) / lean;
            double off = (z - want) * (y <= floor || y >= widthMm / 2 ? 1 : lean / Math.hypot(1, lean));
            if (Math.abs(y - widthMm / 2) > 0.012 && Math.abs(y - floor) > 0.012)
                assertThat(off).isEqualTo(0, within(0.003));
        }
    }

    /** Lean that is not on the rack: upright walls about a floor of the right width, said in words, and never beyond the channel. */
    @Test
    void aLeanThatIsNotOnTheRackGetsUprightWalls() {
        ChannelWay way = way(flat(Purpose.RUNNER, 5, 5, 2, 10));
        assertThat(way.notes()).anyMatch(n -> n.contains("10.0°") && n.contains("upright"));
        Proof p = cut(way);
        assertThat(p.faults()).isEmpty();
        double floor = 5 - 2 * 2 * Math.tan(Math.toRadians(10));
        assertThat(p.removedMm3()).isEqualTo(24 * floor * 2, within(24 * 2 * CELL_MM));
    }

    /** Vents of handbook 5.7 (ABS 0.025 to 0.038, PP 0.013 to 0.030): depth to 0.005 by their level, one level deep. */
    @ParameterizedTest
    @CsvSource({"0.01,3", "0.02,5", "0.03,4", "0.05,6", "0.5,8"})
    void ventsHaveTheirDepth(double depthMm, double widthMm) {
        ChannelWay way = way(flat(Purpose.VENT_CHANNEL, widthMm, widthMm, depthMm, 0));
        Task task = way.tasks().getFirst();
        assertThat(task.phase()).isEqualTo(Phase.VENT);
        double low = Trial.steps(task).stream()
                .mapToDouble(s -> s.box().min().z())
                .min()
                .orElseThrow();
        assertThat(low).isEqualTo(-depthMm, within(1e-9));
        Proof p = cut(way);
        assertThat(p.faults()).isEmpty();
        assertThat(p.removedMm3()).isEqualTo(24 * widthMm * depthMm, within(24 * depthMm * CELL_MM));
    }

    /** A vent that widens keeps its floor level and its outline straight. */
    @Test
    void wideningVents() {
        Proof p = cut(way(flat(Purpose.VENT_CHANNEL, 3, 6, 0.02, 0)));
        assertThat(p.faults()).isEmpty();
        assertThat(p.removedMm3()).isEqualTo(24 * 4.5 * 0.02, within(24 * 0.02 * CELL_MM));
    }

    static Stream<Channel> pockets() {
        Random random = new Random(5);
        List<Channel> all = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            double w = 2.5 + 4 * random.nextDouble(), d = 0.5 + 3 * random.nextDouble();
            boolean open = random.nextBoolean();
            double turn = random.nextDouble() * 2 * Math.PI, l = 8;
            Vec3 from = open ? new Vec3(-12, 1, 0) : new Vec3(-l / 2 * Math.cos(turn), -l / 2 * Math.sin(turn) / 3, 0);
            Vec3 to = open ? new Vec3(-3, 1, 0) : new Vec3(l / 2 * Math.cos(turn), l / 2 * Math.sin(turn) / 3, 0);
            all.add(new Channel("pry pocket", Purpose.PRY_POCKET, from, to, false, w, w, d, d, 0, open, false, 0, 0));
        }
        return all.stream();
    }

    /** Pockets, closed at one end or both: nothing at the rapid in the metal, depth right, nothing cut beside them but a round end of the cutter. */
    @ParameterizedTest
    @MethodSource("pockets")
    void pocketsStayInTheirOutline(Channel c) {
        ChannelWay way = way(c);
        Task task = way.tasks().getFirst();
        double r = task.cutter().diaMm().value() / 2, low = 0;
        Proof p = cut(way);
        assertThat(p.faults()).isEmpty();
        Vec3 along = c.toMm().minus(c.fromMm()).unit();
        var grid = p.stock().grid();
        for (int cell = 0; cell < grid.count(); cell++) {
            double z = p.stock().topMm(cell);
            Vec3 at = new Vec3(grid.x(cell % grid.nx()), grid.y(cell / grid.nx()), 0).minus(c.fromMm());
            double s = at.dot(along), side = Math.abs(at.minus(along.times(s)).length());
            low = Math.min(low, z);
            if (z > -1e-6) continue;
            assertThat(side).isLessThan(c.fromWidthMm() / 2 + 0.001);
            if (!c.openBefore()) assertThat(s).isGreaterThan(-r - 0.001);
            assertThat(s).isLessThan(c.lengthMm() + r + 0.001);
        }
        assertThat(low).isEqualTo(-c.fromDepthMm(), within(1e-5));
    }

    @Test
    void channelsTooSlimForTheRackAreSaidInWords() {
        ChannelWay way = way(flat(Purpose.RUNNER, 0.3, 0.3, 3, 0));
        assertThat(way.tasks()).isEmpty();
        assertThat(way.notes()).anyMatch(n -> n.contains("0.30 mm wide") && n.contains("3.000 mm deep"));
    }
}
