package shotwright.machining.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import shotwright.cutter.CutterProfile;
import shotwright.cutter.MountedCutter;
import shotwright.geom.Box3;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.path.Arc;
import shotwright.machining.path.Coolant;
import shotwright.machining.path.Line;
import shotwright.machining.path.Move;
import shotwright.machining.path.Operation;
import shotwright.machining.path.Program;
import shotwright.machining.path.WorkOffset;
import shotwright.progress.Progress;

/** Metal taken, against closed forms of solid geometry. */
class RemovedVolumeTest {
    /** No multiple of a cell: moves lie between the cells. */
    private static final Vec3 OFF = new Vec3(0.0137, 0.0071, 0);

    static Program program(List<? extends Move> moves, Box3 stock) {
        Operation op = new Operation(1, "cut", 1, "x", 0, 9000, Coolant.OFF, List.copyOf(moves));
        return new Program("test", WorkOffset.G54, stock, stock.max().z() + 20, List.of(op));
    }

    static Proof proof(MountedCutter cutter, List<? extends Move> moves, Box3 stock, double cellMm) {
        ProofTask task = ProofTask.of(program(moves, stock), Map.of(1, cutter));
        return Proveout.run(task, StockHeights.block(stock, cellMm), Progress.SILENT);
    }

    private static Line line(double x0, double y0, double z0, double x1, double y1, double z1) {
        return new Line(new Vec3(x0, y0, z0).plus(OFF), new Vec3(x1, y1, z1).plus(OFF), 500);
    }

    /** A move, its cutter, what it takes and how well a grid of 0.05 mm must know it. */
    record Cut(String name, MountedCutter cutter, Move move, double volumeMm3, double tolerancePercent) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static double frustum(double r1, double r2, double h) {
        return Math.PI * h / 3 * (r1 * r1 + r1 * r2 + r2 * r2);
    }

    static Stream<Cut> cuts() {
        double segment = 9 * Math.acos(1 / 3.0) - Math.sqrt(8), cap = Math.PI * 4 * 7 / 3;
        double v2 = 0.065 + 0.5 * Math.tan(Math.toRadians(15)), t2 = 0.5 + 5 * Math.tan(Math.toRadians(2));
        double c = Math.cos(0.63), s = Math.sin(0.63);
        return Stream.of(
                new Cut("ball straight down", Cutters.ball(6), line(0, 0, 1, 0, 0, -3), 2 * Math.PI * 9, 0.02),
                new Cut("flat slot", Cutters.flat(6), line(-10, 0, -1, 10, 0, -1), 120 + 9 * Math.PI, 0.03),
                new Cut(
                        "ball slot on a slant",
                        Cutters.ball(6),
                        line(-10 * c, -10 * s, -2, 10 * c, 10 * s, -2),
                        20 * segment + cap,
                        0.001),
                new Cut(
                        "V slot",
                        Cutters.taper(0.13, 15, 4, 3),
                        line(-5, 0, -0.5, 5, 0, -0.5),
                        10 * 0.5 * (0.065 + v2) + frustum(0.065, v2, 0.5),
                        0.8),
                new Cut(
                        "taper straight down",
                        Cutters.taper(1, 2, 9, 3),
                        line(0, 0, 1, 0, 0, -5),
                        frustum(0.5, t2, 5),
                        0.06),
                new Cut("flat ramp", Cutters.flat(6), line(-10, 0, 0, 10, 0, -1), 60 + 9 * Math.PI, 0.03));
    }

    @ParameterizedTest
    @MethodSource("cuts")
    void isTheClosedForm(Cut cut) {
        Box3 stock = new Box3(new Vec3(-14, -14, -8), new Vec3(14, 14, 0));
        Proof p = proof(cut.cutter(), List.of(cut.move()), stock, 0.05);
        double off = 100 * Math.abs(p.removedMm3() / cut.volumeMm3() - 1);
        assertThat(off)
                .as("%s: %.5f mm³ against %.5f", cut, p.removedMm3(), cut.volumeMm3())
                .isLessThan(cut.tolerancePercent());
    }

    /** The volumes to the digits the method's measurements give them. */
    @Test
    void theClosedFormsAreThosePrinted() {
        assertThat(cuts().map(c -> Math.round(c.volumeMm3() * 1e4) / 1e4))
                .containsExactly(56.5487, 148.2743, 194.3257, 1.3496, 5.4580, 88.2743);
    }

    /**
     * A level arc of a flat cutter: ring of the path's width by the turned angle, and half a disc at either end; a whole turn has no ends. A
     * helix of the same cutter leaves its last level turn.
     */
    @Test
    void arcsTakeRings() {
        Box3 stock = new Box3(new Vec3(-14, -14, -8), new Vec3(14, 14, 0));
        Vec2 c = new Vec2(0.0137, 0.0071);
        Vec3 a = new Vec3(c.x() + 8, c.y(), -1), b = new Vec3(c.x(), c.y() + 8, -1);
        double quarter = Math.PI / 4 * (81 - 49) + Math.PI, whole = Math.PI * (81 - 49);
        assertThat(proof(Cutters.flat(2), List.of(new Arc(a, b, c, true, 100)), stock, 0.05)
                        .removedMm3())
                .isCloseTo(quarter, within(0.002 * quarter));
        assertThat(proof(Cutters.flat(2), List.of(new Arc(b, a, c, false, 100)), stock, 0.05)
                        .removedMm3())
                .isCloseTo(quarter, within(0.002 * quarter));
        assertThat(proof(Cutters.flat(2), List.of(new Arc(a, b, c, false, 100)), stock, 0.05)
                        .removedMm3())
                .isCloseTo(0.75 * whole + Math.PI, within(0.002 * whole));
        assertThat(proof(Cutters.flat(2), List.of(new Arc(a, a, c, false, 100)), stock, 0.05)
                        .removedMm3())
                .isCloseTo(whole, within(0.002 * whole));
        Vec3 top = new Vec3(a.x(), a.y(), 0);
        List<Move> helix = List.of(new Arc(top, a, c, true, 100), new Arc(a, a, c, true, 100));
        assertThat(proof(Cutters.flat(2), helix, stock, 0.05).removedMm3()).isCloseTo(whole, within(0.002 * whole));
    }

    /** Handbook 13.1: pocket 30 × 20, corners 3, 5 deep, 2° draft, by a tapered cutter along its floor's outline: 2920.13 mm³. */
    @Test
    void aDraftedPocketIsItsClosedForm() {
        double inset = 5 * Math.tan(Math.toRadians(2)), tip = 2;
        List<Move> moves = new ArrayList<>();
        double x = 15 - inset - tip, y = 10 - inset - tip, r = 3 - inset - tip;
        Vec3 at = new Vec3(0, 0, 1).plus(OFF);
        moves.add(new Line(at, at = new Vec3(0, 0, -5).plus(OFF), 100));
        for (double in = 6; in >= 0; in -= 1.5) {
            double w = x - in, h = Math.max(0.3, y - in), corner = in == 0 ? r : 0;
            double[][] loop = {
                {-w + corner, -h},
                {w - corner, -h},
                {w, -h + corner},
                {w, h - corner},
                {w - corner, h},
                {-w + corner, h},
                {-w, h - corner},
                {-w, -h + corner},
                {-w + corner, -h}
            };
            for (int k = 0; k < loop.length; k++) {
                Vec3 to = new Vec3(loop[k][0], loop[k][1], -5).plus(OFF);
                if (k > 0 && k % 2 == 0 && corner > 0) {
                    Vec2 centre = new Vec2(
                            Math.copySign(w - corner, (loop[k][0] + loop[k - 1][0])),
                            Math.copySign(h - corner, (loop[k][1] + loop[k - 1][1])));
                    moves.add(new Arc(at, to, centre.plus(OFF.xy()), true, 100));
                } else if (to.distance(at) > 1e-9) moves.add(new Line(at, to, 100));
                else continue;
                at = moves.getLast().to();
            }
        }
        Box3 stock = new Box3(new Vec3(-20, -15, -8), new Vec3(20, 15, 0));
        Proof p = proof(Cutters.taper(2 * tip, 2, 8, 6), moves, stock, 0.05);
        assertThat(p.removedMm3()).isCloseTo(2920.1286, within(0.002 * 2920.1286));
        assertThat(p.faults()).isEmpty();
    }

    /** The swept height of every shape on sloped moves against the lowest of many single stands of the cutter along the way. */
    @Test
    void sweepsAreTheLowestOfTheirStands() {
        Random random = new Random(5);
        List<CutterProfile> shapes = List.of(
                CutterProfile.flat(2),
                CutterProfile.ball(1.5),
                CutterProfile.bull(3, 0.7),
                CutterProfile.tapered(0.5, Math.toRadians(2), 1.2),
                CutterProfile.tapered(0.065, Math.toRadians(15), 1.4),
                CutterProfile.point(Math.toRadians(118), 2),
                Cutters.taperBall(1, 3, 8, 4).profile());
        for (int n = 0; n < 700; n++) {
            CutterProfile shape = shapes.get(n % shapes.size());
            double steep = n % 3 == 0 ? 0 : Math.exp(4 * random.nextDouble() - 2);
            double way = 3 * random.nextDouble(), turn = 7 * random.nextDouble();
            Vec3 from = new Vec3(random.nextDouble(), random.nextDouble(), -1);
            Vec3 to = from.plus(new Vec3(
                    way * Math.cos(turn), way * Math.sin(turn), (random.nextBoolean() ? 1 : -1) * steep * way));
            Sweep sweep = new LineSweep(shape, from, to);
            for (int k = 0; k < 20; k++) {
                double x = 8 * random.nextDouble() - 4, y = 8 * random.nextDouble() - 4;
                double lowest = Double.POSITIVE_INFINITY;
                int stands = 4000;
                for (int i = 0; i <= stands; i++) {
                    Vec3 tip = from.toward(to, i / (double) stands);
                    lowest = Math.min(lowest, tip.z() + shape.heightMm(Math.hypot(x - tip.x(), y - tip.y())));
                }
                float swept = sweep.over(x, y);
                if (lowest > 1e6) continue;
                double stand = steep * way / stands;
                assertThat((double) swept)
                        .as("%s %s %s", shape, from, to)
                        .isBetween(lowest - stand - 2e-3 * (1 + steep), lowest + 2e-4 * (1 + steep));
            }
        }
    }

    /** P5: the same path backwards leaves the same stock; and one processor or many, run twice, the same to the bit. */
    @Test
    void orderAndDirectionDoNotMatter() {
        Box3 stock = new Box3(new Vec3(-10, -10, -8), new Vec3(10, 10, 0));
        Random random = new Random(11);
        for (MountedCutter cutter :
                List.of(Cutters.flat(3), Cutters.ball(2), Cutters.taper(0.4, 10, 6, 4), Cutters.bull(3, 0.5))) {
            List<Move> moves = new ArrayList<>();
            Vec3 at = new Vec3(0, 0, 1);
            for (int i = 0; i < 60; i++) {
                Vec3 to =
                        new Vec3(16 * random.nextDouble() - 8, 16 * random.nextDouble() - 8, -4 * random.nextDouble());
                moves.add(new Line(at, to, 100));
                at = to;
            }
            Program there = program(moves, stock);
            Program back =
                    there.withOperations(List.of(there.operations().getFirst().reversed()));
            StockHeights a = Proveout.run(
                            ProofTask.of(there, Map.of(1, cutter)), StockHeights.block(stock, 0.1), Progress.SILENT)
                    .stock();
            StockHeights b = Proveout.run(
                            ProofTask.of(back, Map.of(1, cutter)), StockHeights.block(stock, 0.1), Progress.SILENT)
                    .stock();
            StockHeights again = Proveout.run(
                            ProofTask.of(there, Map.of(1, cutter)), StockHeights.block(stock, 0.1), Progress.SILENT)
                    .stock();
            assertThat(again.top()).isEqualTo(a.top());
            int unequal = 0;
            for (int c = 0; c < a.grid().count(); c++) if (Math.abs(a.topMm(c) - b.topMm(c)) > 2e-5) unequal++;
            // a cell whose middle lies on the rim of a cutter may be taken by the one and left by the other
            assertThat(unequal).isLessThan(5);
        }
    }

    @Test
    void memoryIsBounded() {
        Box3 plate = new Box3(new Vec3(0, 0, -20), new Vec3(300, 300, 0));
        assertThatThrownBy(() -> StockHeights.block(plate, 0.01))
                .hasMessageContaining("million cells")
                .hasMessageContaining("take 0.0");
        assertThat(StockHeights.block(plate, 0.2).volumeMm3()).isCloseTo(300 * 300 * 20, within(300 * 300 * 20 * 1e-3));
    }

    @Test
    void canBeStopped() {
        Box3 stock = new Box3(new Vec3(-10, -10, -8), new Vec3(10, 10, 0));
        List<Move> moves = List.of(line(-5, 0, -1, 5, 0, -1));
        ProofTask task = ProofTask.of(program(moves, stock), Map.of(1, Cutters.flat(2)));
        assertThatThrownBy(() -> Proveout.run(task, StockHeights.block(stock, 0.1), (doing, share) -> {
                    throw new Progress.Cancelled();
                }))
                .isInstanceOf(Progress.Cancelled.class);
    }
}
