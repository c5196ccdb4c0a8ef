package shotwright.machining.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import shotwright.geom.Box3;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.path.Arc;
import shotwright.machining.path.Coolant;
import shotwright.machining.path.Dwell;
import shotwright.machining.path.Feed;
import shotwright.machining.path.Line;
import shotwright.machining.path.Move;
import shotwright.machining.path.Operation;
import shotwright.machining.path.Program;
import shotwright.machining.path.Rapid;
import shotwright.machining.path.Step;
import shotwright.machining.path.WorkOffset;
import shotwright.mill.Mill;
import shotwright.mill.MillRack;

class StepTimesTest {
    private static final MotionLimits LIMITS = new MotionLimits(300, 0.01, 3000, 3000, 1e9);

    private static double total(List<? extends Step> path, MotionLimits limits) {
        return Arrays.stream(StepTimes.ofS(List.copyOf(path), limits)).sum();
    }

    private static List<Step> random(SplittableRandom random, int n) {
        List<Step> out = new ArrayList<>();
        Vec3 at = Vec3.ZERO;
        for (int i = 0; i < n; i++) {
            double feed = random.nextDouble(50, 4000), mm = Math.pow(10, random.nextDouble(-2.5, 1.5));
            Vec3 to = at.plus(
                    new Vec3(random.nextDouble(-1, 1), random.nextDouble(-1, 1), random.nextDouble(-1, 1)).times(mm));
            switch (random.nextInt(8)) {
                case 0 -> out.add(new Rapid(at, to));
                case 1 -> {
                    Vec2 centre = at.xy().plus(new Vec2(mm, 0));
                    to = new Vec3(centre.x() + mm * Math.cos(mm), centre.y() + mm * Math.sin(mm), to.z());
                    out.add(new Arc(at, to, centre, random.nextBoolean(), feed));
                }
                case 2 -> {
                    out.add(new Dwell(at, 0.5));
                    to = at;
                }
                default -> out.add(new Line(at, to, feed));
            }
            at = to;
        }
        return out;
    }

    /** More acceleration or more feed never takes longer, and nothing is faster than length over feed. */
    @Test
    void timeFallsWithAccelerationAndFeed() {
        SplittableRandom random = new SplittableRandom(10);
        for (int run = 0; run < 200; run++) {
            List<Step> path = random(random, 60);
            double usual = total(path, LIMITS);
            assertThat(total(path, new MotionLimits(450, 0.01, 3000, 3000, 1e9)))
                    .isLessThanOrEqualTo(usual + 1e-9);
            assertThat(total(path, new MotionLimits(300, 0.03, 3000, 3000, 1e9)))
                    .isLessThanOrEqualTo(usual + 1e-9);
            List<Step> faster = path.stream()
                    .map(s -> s instanceof Feed f ? (Step) f.withFeed(2 * f.feedMmPerMin()) : s)
                    .toList();
            assertThat(total(faster, LIMITS)).isLessThanOrEqualTo(usual + 1e-9);
            double least = 0;
            for (Step s : path)
                least += switch (s) {
                    case Feed f -> 60 * f.lengthMm() / f.feedMmPerMin();
                    case Dwell d -> d.timeS();
                    default -> 0;
                };
            assertThat(usual).isGreaterThanOrEqualTo(least);
        }
    }

    @Test
    void splittingAStraightLineChangesNothing() {
        SplittableRandom random = new SplittableRandom(74);
        for (int run = 0; run < 200; run++) {
            Vec3 end = new Vec3(random.nextDouble(-50, 50), random.nextDouble(-50, 50), random.nextDouble(-5, 5));
            double feed = random.nextDouble(100, 3000);
            List<Step> parts = new ArrayList<>();
            double from = 0;
            while (from < 1) {
                double to = Math.min(1, from + random.nextDouble(0.001, 0.3));
                parts.add(new Line(end.times(from), end.times(to), feed));
                from = to;
            }
            assertThat(total(parts, LIMITS))
                    .isCloseTo(total(List.of(new Line(Vec3.ZERO, end, feed)), LIMITS), within(1e-6));
        }
    }

    @Test
    void aReversedPathTakesAsLong() {
        SplittableRandom random = new SplittableRandom(75);
        for (int run = 0; run < 100; run++) {
            List<Step> path = random(random, 40);
            List<Step> back = path.reversed().stream().map(Step::reversed).toList();
            assertThat(total(back, LIMITS)).isCloseTo(total(path, LIMITS), within(1e-6));
        }
    }

    /** A circle of short lines is run as the circle, not faster: √(a·R). */
    @Test
    void aCircleOfShortLinesRunsAsTheArc() {
        int n = 720;
        List<Step> lines = new ArrayList<>();
        for (int i = 0; i < n; i++) lines.add(new Line(on(i, n), on(i + 1, n), 3000));
        double arc = total(List.of(new Arc(on(0, n), on(0, n), Vec2.ZERO, true, 3000)), LIMITS);
        assertThat(total(lines, LIMITS) / arc).isBetween(0.93, 1.07);
    }

    private static Vec3 on(int i, int n) {
        double a = 2 * Math.PI * (i % n) / n;
        return new Vec3(2 * Math.cos(a), 2 * Math.sin(a), 0);
    }

    /** Times grow with the number of moves, no faster. */
    @Test
    void aLongProgramIsWorkedOutAtOnce() {
        List<Step> path = random(new SplittableRandom(9), 200_000);
        assertThat(total(path, LIMITS)).isPositive();
    }

    @Test
    void aProgramCountsChangesRapidsAndDwells() {
        Mill mill = MillRack.standard().byId("bench-router-300");
        Vec3 a = new Vec3(0, 0, 5), b = new Vec3(60, 0, 5);
        List<Move> moves = List.of(new Rapid(a, b), new Dwell(b, 2), new Line(b, a, 600));
        Program program = new Program(
                "half A, parting face",
                WorkOffset.G54,
                new Box3(new Vec3(0, 0, -20), new Vec3(80, 60, 0)),
                10,
                List.of(op(1, "flat-6.0x18", moves), op(2, "flat-6.0x18", moves), op(3, "flat-3.0x9", moves)));
        ProgramTime t = ProgramTime.of(program, mill);
        double line = 6 + 10.0 / 300, rapid = 60 / 50.0 + 50 / 300.0;
        assertThat(t.cutterChanges()).isEqualTo(2);
        assertThat(t.changeS()).isEqualTo(240);
        assertThat(t.spinUpS()).isEqualTo(8);
        assertThat(t.operations().getFirst().feedS()).isCloseTo(line, within(1e-9));
        assertThat(t.operations().getFirst().rapidS()).isCloseTo(rapid, within(1e-9));
        assertThat(t.operations().getFirst().dwellS()).isEqualTo(2);
        assertThat(t.lengthOverFeedS()).isCloseTo(3 * (6 + 1.2 + 2), within(1e-9));
        assertThat(t.movingS()).isCloseTo(3 * (line + rapid + 2), within(1e-9));
        assertThat(t.byCutterS()).hasSize(2).containsKeys("flat-6.0x18", "flat-3.0x9");
        assertThat(t.allS().high()).isCloseTo(1.15 * t.movingS() + 248, within(1e-6));
        assertThat(ProgramTime.of(program, mill, 1.1).operations().getFirst().feedS())
                .isCloseTo(1.1 * line, within(1e-9));
    }

    private static Operation op(int number, String cutter, List<Move> moves) {
        return new Operation(number, "face", number, cutter, 22, 15_000, Coolant.OFF, moves);
    }
}
