package shotwright.checks.exact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shotwright.brep.ExactEngine;
import shotwright.brep.ExactFace;
import shotwright.brep.ExactFailure;
import shotwright.brep.ExactShapes;
import shotwright.brep.Outline;
import shotwright.brep.Solid;
import shotwright.checks.Repository;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;
import shotwright.job.JobException;
import shotwright.job.JobResult;
import shotwright.kernel.WorkerEngine;
import shotwright.progress.Progress;
import shotwright.review.DraftRule;
import shotwright.review.FaceReview.Need;
import shotwright.review.ReviewResult;
import shotwright.review.remedy.DraftRemedy;
import shotwright.review.remedy.LeanedWall;

/** Walls leaned by the engine, against the volumes of prismatoids and cones, and against the surfaces in the file that was written. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DraftRemedyTest {
    private static final String TWO_DEGREES = "\"addDraftDeg\": 2";
    private static final double T = Math.tan(Math.toRadians(2));

    private final WorkerEngine engine = new WorkerEngine(WorkerEngine.Allowance.USUAL);

    @TempDir
    Path folder;

    @BeforeAll
    void onlyWhereThereIsAnEngine() {
        assumeTrue(
                engine.whatIsMissing().isEmpty(), () -> engine.whatIsMissing().orElse(""));
    }

    @AfterAll
    void end() {
        engine.close();
    }

    private DraftRemedy remedy(StepJobs.Made made, String card) throws ExactFailure, IOException {
        return Objects.requireNonNull(
                new StepJobs(engine, folder).alongZ(made, card).draft());
    }

    /** The only solid in the proposal, weighed and looked at through the engine once more. */
    private double volumeMm3(DraftRemedy r) throws ExactFailure {
        try (ExactShapes x = new ExactShapes(engine, Progress.SILENT)) {
            List<Solid> back = x.readStep(r.partStep()).solids();
            assertThat(back).hasSize(1);
            assertThat(x.check(back.getFirst()).isOneClosedSolid()).isTrue();
            return x.measure(back.getFirst()).volumeMm3();
        }
    }

    private static void allAtTwoDegrees(DraftRemedy r) {
        assertThat(r.leaned()).allSatisfy(w -> {
            assertThat(w.afterDeg()).as(w.face().called()).isCloseTo(2, within(1e-4));
            assertThat(w.neutralShiftMm()).as(w.face().called()).isLessThan(1e-6);
        });
    }

    /** A block whose four sides lean in by as much: the prismatoid h/6·(A₀ + 4·A½ + A₁). */
    private static double leaningBlockMm3(double a, double b, double h) {
        double half = h * T, full = 2 * h * T;
        return h / 6 * (a * b + 4 * (a - half) * (b - half) + (a - full) * (b - full));
    }

    private static Solid block(ExactShapes x) throws ExactFailure {
        return x.block(new Box3(Vec3.ZERO, new Vec3(20, 30, 10)));
    }

    @Test
    void blockKeepsItsSizeAtTheParting() throws ExactFailure, IOException {
        DraftRemedy r = remedy(DraftRemedyTest::block, TWO_DEGREES);
        assertThat(r.leaned()).hasSize(4);
        assertThat(r.refused()).isEmpty();
        allAtTwoDegrees(r);
        assertThat(volumeMm3(r)).isCloseTo(leaningBlockMm3(20, 30, 10), within(1e-6));
        assertThat(r.volumeAfterMm3()).isCloseTo(leaningBlockMm3(20, 30, 10), within(1e-6));
        assertThat(r.sizeAfter().distance(new Vec3(20, 30, 10))).isLessThan(1e-6);
        assertThat(r.leaned()).allSatisfy(w -> {
            assertThat(w.neutralMm()).isCloseTo(0, within(1e-6));
            assertThat(w.movesMm()).isCloseTo(-10 * T, within(1e-6));
        });
    }

    @Test
    void blockKeepsItsSizeAtTheOpenEdge() throws ExactFailure, IOException {
        DraftRemedy r = remedy(DraftRemedyTest::block, TWO_DEGREES + ", \"draftNeutral\": \"open-edge\"");
        assertThat(r.leaned()).hasSize(4);
        allAtTwoDegrees(r);
        assertThat(volumeMm3(r)).isCloseTo(leaningBlockMm3(20 + 20 * T, 30 + 20 * T, 10), within(1e-6));
        assertThat(r.sizeAfter().distance(new Vec3(20 + 20 * T, 30 + 20 * T, 10)))
                .isLessThan(1e-6);
    }

    /** A peg becomes the frustum of a cone, a hole in it one that widens towards its mouth: π·h/3·(R² + R·r + r²). */
    @Test
    void pegWithABlindHole() throws ExactFailure, IOException {
        DraftRemedy r = remedy(
                x -> x.cut(
                                List.of(x.cylinder(Vec3.ZERO, Vec3.Z, 8, 12)),
                                List.of(x.cylinder(new Vec3(0, 0, 4), Vec3.Z, 3, 20)))
                        .getFirst(),
                TWO_DEGREES);
        assertThat(r.leaned())
                .extracting(w -> w.face().name())
                .containsExactlyInAnyOrder("round outside, 16 mm across", "inside wall of the 6 mm hole");
        allAtTwoDegrees(r);
        assertThat(volumeMm3(r)).isCloseTo(frustum(8, 8 - 12 * T, 12) - frustum(3, 3 + 8 * T, 8), within(1e-5));
    }

    private static double frustum(double r, double s, double height) {
        return Math.PI * height / 3 * (r * r + r * s + s * s);
    }

    /** A plate with a leg flush with its end: the parting runs through three of the walls, and they lean both ways from it. */
    @Test
    void partingThroughTheWalls() throws ExactFailure, IOException {
        DraftRemedy r = remedy(
                x -> x.prism(
                        Outline.polygon(List.of(
                                new Vec3(0, 0, 4),
                                new Vec3(14, 0, 4),
                                new Vec3(14, 0, -2),
                                new Vec3(20, 0, -2),
                                new Vec3(20, 0, 10),
                                new Vec3(0, 0, 10))),
                        new Vec3(0, 12, 0)),
                TWO_DEGREES);
        assertThat(r.refused()).isEmpty();
        assertThat(r.leaned()).hasSize(5);
        assertThat(r.leaned().stream().filter(LeanedWall::bothWays)).hasSize(3);
        allAtTwoDegrees(r);
        assertThat(volumeMm3(r)).isCloseTo(leaningBlockMm3(20, 12, 6) + leaningBlockMm3(6, 12, 6), within(1e-5));
        assertThat(r.sizeAfter().distance(new Vec3(20, 12, 12))).isLessThan(1e-6);
    }

    /** What the engine cannot lean is listed and keeps nothing else from leaning. */
    @Test
    void aCrossHoleIsListedTheRestLeans() throws ExactFailure, IOException {
        DraftRemedy r = remedy(
                x -> x.cut(List.of(block(x)), List.of(x.cylinder(new Vec3(10, -1, 5), Vec3.Y, 2, 50)))
                        .getFirst(),
                TWO_DEGREES);
        assertThat(r.refused()).extracting(w -> w.face().name()).containsExactly("inside wall of the 4 mm cross hole");
        assertThat(r.leaned()).hasSize(4);
        allAtTwoDegrees(r);
    }

    @Test
    void draftAlreadyThereIsLeftAlone() throws ExactFailure, IOException {
        DraftRemedy r = remedy(
                x -> x.revolve(
                        Outline.polygon(List.of(
                                Vec3.ZERO, new Vec3(9, 0, 0), new Vec3(9 - 6 * T * 2, 0, 6), new Vec3(0, 0, 6))),
                        Vec3.ZERO,
                        Vec3.Z),
                TWO_DEGREES);
        assertThat(r.leaned()).isEmpty();
        assertThat(r.refused()).isEmpty();
        assertThat(r.hasPart()).isFalse();
    }

    /** Steep walls that cross before they meet the top leave no room; nothing is delivered that is not sound. */
    @Test
    void tooMuchIsRefused() throws ExactFailure, IOException {
        DraftRemedy r = remedy(x -> x.block(new Box3(Vec3.ZERO, new Vec3(4, 30, 10))), "\"addDraftDeg\": 15");
        assertThat(r.refused()).isNotEmpty().allSatisfy(w -> {
            assertThat(w.reason()).isNotBlank();
            assertThat(w.remedy()).contains("tapered end mill");
        });
        if (r.hasPart()) volumeMm3(r);
    }

    /** An engine that dies in the middle is started again, and what had been leaned is leaned once more. */
    @Test
    void anEngineThatEndsHalfway() throws ExactFailure, IOException {
        AtomicInteger drafts = new AtomicInteger();
        ExactEngine mortal = new ExactEngine() {
            @Override
            public List<Object> call(Progress watch, String operation, Object... values) throws ExactFailure {
                if (operation.equals("draft") && (drafts.incrementAndGet() == 1 || drafts.get() == 3))
                    ProcessHandle.of(engine.pid().orElseThrow()).ifPresent(p -> {
                        p.destroyForcibly();
                        p.onExit().join();
                    });
                return engine.call(watch, operation, values);
            }

            @Override
            public void close() {}
        };
        DraftRemedy r = Objects.requireNonNull(new StepJobs(mortal, folder)
                .alongZ(DraftRemedyTest::block, TWO_DEGREES)
                .draft());
        assertThat(r.leaned()).hasSize(4);
        assertThat(volumeMm3(r)).isCloseTo(leaningBlockMm3(20, 30, 10), within(1e-6));
    }

    @Test
    void aMeshHasNoFacesToLean() {
        assertThatThrownBy(() -> new StepJobs(engine, folder)
                        .of(Repository.root().resolve("examples/parts/tension-knob.stl"), TWO_DEGREES))
                .isInstanceOf(JobException.class)
                .hasMessageContaining("STEP");
    }

    /** Every wall that lacks it is leaned or listed; walls are measured here from the surfaces of the file that was written. */
    @ParameterizedTest
    @ValueSource(strings = {"sensor_cover_plate.step", "cable_strain_relief_half.step"})
    void realParts(String file) throws IOException, ExactFailure {
        JobResult job = new StepJobs(engine, folder).of(Repository.sharedPart(file), TWO_DEGREES);
        DraftRemedy r = Objects.requireNonNull(job.draft());
        ReviewResult review = Objects.requireNonNull(job.review());
        allAtTwoDegrees(r);
        List<Integer> short2 = review.faces().stream()
                .filter(f -> f.need() == Need.LACKS || f.need() == Need.ENOUGH || f.need() == Need.CANNOT_HELP)
                .filter(f -> f.leastDraftDeg() < 2 - DraftRule.BAND_DEG)
                .map(f -> f.number())
                .toList();
        List<Integer> told = new java.util.ArrayList<>();
        r.leaned().forEach(w -> told.add(w.face().number()));
        r.refused().forEach(w -> told.add(w.face().number()));
        assertThat(told).containsExactlyInAnyOrderElementsOf(short2);
        assertThat(r.refused()).allSatisfy(w -> {
            assertThat(w.reason()).endsWith(".");
            assertThat(w.remedy()).endsWith(".");
        });
        Vec3 pull = review.pulled().pull();
        List<ExactFace> before =
                Objects.requireNonNull(review.pulled().part().exact()).faces();
        try (ExactShapes x = new ExactShapes(engine, Progress.SILENT)) {
            Solid back = x.readStep(r.partStep()).solids().getFirst();
            assertThat(x.check(back).isOneClosedSolid()).isTrue();
            List<ExactFace> after = x.faces(back);
            long measured = r.leaned().stream()
                    .filter(w -> after.stream()
                            .anyMatch(f -> isLeaned(before.get(w.face().number() - 1), f, w, pull)))
                    .count();
            assertThat(measured).isEqualTo(r.leaned().size()).isGreaterThanOrEqualTo(4);
        }
    }

    /** Does this face stand at 2.00 ± 0.02° and keep the size of that wall at its neutral height to 1e-6 mm? */
    private static boolean isLeaned(ExactFace wall, ExactFace f, LeanedWall w, Vec3 pull) {
        if (wall.kind() == ExactFace.Kind.PLANE) {
            if (f.kind() != ExactFace.Kind.PLANE) return false;
            double lean = Math.toDegrees(Math.asin(Math.abs(f.axis().dot(pull))));
            Vec3 along = wall.axis().cross(pull).unit(), c = wall.centroidMm();
            Vec3 on = c.plus(pull.times(w.neutralMm() - c.dot(pull)));
            return Math.abs(lean - 2) < 0.02
                    && Math.abs(along.dot(f.axis())) < 1e-9
                    && Math.abs(on.minus(f.axisPointMm()).dot(f.axis())) < 1e-6;
        }
        if (f.kind() != ExactFace.Kind.CONE) return false;
        Vec3 off = f.axisPointMm().minus(wall.axisPointMm());
        double level = (w.neutralMm() - f.axisPointMm().dot(pull)) / f.axis().dot(pull);
        double radius = f.radiusMm() + level * Math.tan(f.halfAngleRad());
        return Math.abs(Math.toDegrees(Math.abs(f.halfAngleRad())) - 2) < 0.02
                && off.cross(wall.axis()).length() < 1e-6
                && Math.abs(radius - wall.radiusMm()) < 1e-6;
    }
}
