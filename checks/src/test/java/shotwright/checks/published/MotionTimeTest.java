package shotwright.checks.published;

import static shotwright.checks.published.Published.Mark.COMMON_PRACTICE;
import static shotwright.checks.published.Published.Mark.DERIVED;
import static shotwright.checks.published.Published.Mark.PUBLISHED;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.path.Arc;
import shotwright.machining.path.Line;
import shotwright.machining.path.Step;
import shotwright.machining.time.Motion;
import shotwright.machining.time.MotionLimits;
import shotwright.machining.time.StepTimes;

/** How long moves take. */
class MotionTimeTest {
    private static final String PRINTED = "printed digits";

    @Published(id = "C20", source = "JDEV", where = "junction deviation", mark = DERIVED)
    void corner() {
        double v = Motion.cornerMmPerS(300, .01, Math.PI / 2);
        Check.relative("90° corner, 300 mm/s², 0.01 mm", 161.5, 60 * v, 1e-3, "mm/min", PRINTED);
    }

    @Published(
            id = {"X5", "X6"},
            source = "closed form",
            where = "constant acceleration from rest to rest",
            mark = DERIVED)
    void restToRest() {
        Check.absolute(
                "100 mm at 1000 mm/min, 300 mm/s²",
                6.0556,
                Motion.timeS(100, 1000 / 60.0, 300, 0, 0),
                5e-5,
                "s",
                PRINTED);
        Check.absolute("0.5 mm the same", .08165, Motion.timeS(.5, 1000 / 60.0, 300, 0, 0), 5e-6, "s", PRINTED);
        double whole = total(List.of(new Line(Vec3.ZERO, new Vec3(100, 0, 0), 1000)), limits(300, .01));
        Check.absolute("as a program", 6.0556, whole, 5e-5, "s", PRINTED);
        double arc = Motion.arcMmPerS(300, 1);
        Check.relative("arc of 1 mm at 300 mm/s²", 1039, 60 * arc, 1e-3, "mm/min", PRINTED);
    }

    @Published(
            id = "MX-RASTER",
            source = "closed form",
            where = "60 × 40 mm raster, step 0.137, 1200 mm/min",
            mark = DERIVED)
    void raster() {
        List<Step> path = new ArrayList<>();
        Vec3 at = Vec3.ZERO;
        for (int i = 0; i < 293; i++) {
            Vec3 end = new Vec3(i % 2 == 0 ? 60 : 0, at.y(), 0), next = new Vec3(end.x(), at.y() + .137, 0);
            path.add(new Line(at, end, 1200));
            path.add(new Line(end, next, 1200));
            at = next;
        }
        double lengthMm = path.stream().mapToDouble(Step::lengthMm).sum();
        Check.absolute("length over feed", 881, lengthMm / 20, 1, "s", PRINTED);
        Check.relative(
                "with stops at line ends", 901, total(path, limits(300, .01)), .01, "s", "links not quite at rest");
    }

    /** 954 short moves of which only the length is known; we lay them as a random polyline of that length. */
    @Published(id = "M-C12", source = "CHSE", where = "table 7: measured and constant-feed times", mark = PUBLISHED)
    void measuredAgainstLengthOverFeed() {
        double lengthMm = 212.5 * 1000 / 60;
        Check.relative("constant-feed time at 3000 mm/min", 71, 60 * lengthMm / 3000, .01, "s", PRINTED);
        double[][] ratio = new double[2][2];
        for (int f = 0; f < 2; f++)
            for (int p = 0; p < 2; p++) {
                double feed = f == 0 ? 1000 : 3000, deviation = p == 0 ? .01 : .1;
                List<Step> path = polyline(954, lengthMm, feed);
                ratio[f][p] = total(path, limits(300, deviation)) / (60 * lengthMm / feed);
            }
        Check.trend(
                "our time exceeds length over feed at 1000 and 3000 mm/min", ratio[0][0] > 1.02 && ratio[1][1] > 1.02);
        Check.trend("it exceeds it by more at the higher feed", ratio[1][0] > ratio[0][0]);
        Check.trend("it exceeds it by less with the wider path tolerance", ratio[1][1] < ratio[1][0]);
    }

    private static List<Step> polyline(int n, double lengthMm, double feed) {
        SplittableRandom random = new SplittableRandom(954);
        List<Step> out = new ArrayList<>();
        Vec3 at = Vec3.ZERO;
        double heading = 0;
        for (int i = 0; i < n; i++) {
            heading += random.nextDouble(-1, 1);
            Vec3 to = at.plus(new Vec3(Math.cos(heading), Math.sin(heading), 0).times(lengthMm / n));
            out.add(new Line(at, to, feed));
            at = to;
        }
        return out;
    }

    @Published(
            id = "M-C13",
            source = "CHSE",
            where = "tables 2 and 3: trochoidal pocket is the worst for length over feed",
            mark = PUBLISHED)
    void loopsLoseMost() {
        List<Step> loops = new ArrayList<>();
        Vec3 at = Vec3.ZERO;
        for (int i = 0; i < 40; i++) {
            loops.add(new Arc(at, at, new Vec2(at.x() + 1, 0), true, 3000));
            Vec3 next = new Vec3(at.x() + .3, 0, 0);
            loops.add(new Line(at, next, 3000));
            at = next;
        }
        double lengthMm = loops.stream().mapToDouble(Step::lengthMm).sum();
        double ring = 4 * 60;
        List<Step> square = List.of(
                new Line(Vec3.ZERO, new Vec3(60, 0, 0), 3000),
                new Line(new Vec3(60, 0, 0), new Vec3(60, 60, 0), 3000),
                new Line(new Vec3(60, 60, 0), new Vec3(0, 60, 0), 3000),
                new Line(new Vec3(0, 60, 0), Vec3.ZERO, 3000));
        double looped = total(loops, limits(1000, .01)) / (lengthMm / 50),
                straight = total(square, limits(1000, .01)) / (ring / 50);
        Check.trend(
                "loops of 1 mm lose more to acceleration than a ring of straight lines",
                looped > straight && looped > 1.4);
    }

    @Published(
            id = "MX-BLOCK",
            source = "common practice",
            where = "lines a second of small controls",
            mark = COMMON_PRACTICE)
    void blockRate() {
        List<Step> fine = new ArrayList<>();
        for (int i = 0; i < 30_000; i++)
            fine.add(new Line(new Vec3(i * .001, 0, 0), new Vec3((i + 1) * .001, 0, 0), 1000));
        double s = total(fine, new MotionLimits(300, .01, 1000, 3000, 500));
        Check.relative("30 mm in steps of 0.001 mm at 500 lines a second", 60, s, 1e-3, "s", PRINTED);
    }

    private static MotionLimits limits(double acceleration, double deviation) {
        return new MotionLimits(acceleration, deviation, 5000, 5000, 1e6);
    }

    private static double total(List<Step> path, MotionLimits limits) {
        return Arrays.stream(StepTimes.ofS(path, limits)).sum();
    }
}
