package shotwright.checks.exact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import shotwright.brep.ExactFailure;
import shotwright.brep.Outline;
import shotwright.brep.Solid;
import shotwright.checks.Repository;
import shotwright.geom.Box3;
import shotwright.geom.Transform;
import shotwright.geom.Vec3;
import shotwright.kernel.WorkerEngine;
import shotwright.review.FaceReview;
import shotwright.review.FaceReview.FormedBy;
import shotwright.review.FaceReview.Need;
import shotwright.review.ReviewResult;

/** Draft, names and halves of exact faces against closed forms of plane geometry. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FaceReviewTest {
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

    private ReviewResult review(StepJobs.Made made) throws ExactFailure, IOException {
        return Objects.requireNonNull(
                new StepJobs(engine, folder).alongZ(made, "").review());
    }

    private static FaceReview named(ReviewResult r, String name) {
        List<FaceReview> found =
                r.faces().stream().filter(f -> f.name().equals(name)).toList();
        assertThat(found)
                .as(r.faces().stream().map(FaceReview::name).toList() + " have " + name)
                .hasSize(1);
        return found.getFirst();
    }

    private static void leans(FaceReview f, double leastDeg, double mostDeg) {
        assertThat(f.leastDraftDeg()).as(f.called()).isCloseTo(leastDeg, within(1e-5));
        assertThat(f.mostDraftDeg()).as(f.called()).isCloseTo(mostDeg, within(1e-5));
    }

    @Test
    void plateWithHoleAndBoss() throws ExactFailure, IOException {
        ReviewResult r = review(x -> {
            Solid plate = x.block(new Box3(Vec3.ZERO, new Vec3(40, 30, 6)));
            Solid drill = x.cylinder(new Vec3(10, 15, -1), Vec3.Z, 3.1, 20);
            Solid boss = x.cylinder(new Vec3(28, 15, 4), Vec3.Z, 6, 7);
            return x.fuse(x.cut(List.of(plate), List.of(drill)), List.of(boss)).getFirst();
        });
        assertThat(r.faces().stream().mapToInt(FaceReview::number))
                .containsExactlyElementsOf(IntStream.rangeClosed(1, 9).boxed().toList());
        FaceReview hole = named(r, "inside wall of the 6.2 mm hole"), boss = named(r, "outside of the 12 mm boss");
        assertThat(hole.areaMm2()).isCloseTo(Math.PI * 6.2 * 6, within(1e-4));
        assertThat(hole.size().words()).isEqualTo("Ø6.2 × 6 mm");
        assertThat(boss.areaMm2()).isCloseTo(Math.PI * 12 * 5, within(1e-4));
        assertThat(boss.formedBy()).isEqualTo(FormedBy.A);
        for (FaceReview wall :
                List.of(hole, boss, named(r, "outer wall facing +x"), named(r, "outer wall facing −y"))) {
            leans(wall, 0, 0);
            assertThat(wall.need()).isEqualTo(Need.LACKS);
        }
        leans(named(r, "top face"), 90, 90);
        leans(named(r, "bottom face"), 90, 90);
        FaceReview shoulder = named(r, "level face 5 mm below the top");
        assertThat(shoulder.need()).isEqualTo(Need.NO_WALL);
        assertThat(shoulder.areaMm2()).isCloseTo(40 * 30 - Math.PI * (3.1 * 3.1 + 36), within(1e-3));
        assertThat(r.findings())
                .anyMatch(f -> f.text().contains("inside wall of the 6.2 mm hole (face " + hole.number() + ")"));
        assertThat(hole.finding()).isPositive();
        assertThat(boss.finding()).isPositive();
    }

    /** Normals of a cone of half angle α whose axis leans β off the pull lean from α − β to α + β. */
    @Test
    void leaningCone() throws ExactFailure, IOException {
        double alpha = Math.toRadians(10), beta = Math.toRadians(6);
        ReviewResult r = review(x -> {
            Outline half = Outline.polygon(List.of(
                    Vec3.ZERO, new Vec3(9, 0, 0), new Vec3(9 - 12 * Math.tan(alpha), 0, 12), new Vec3(0, 0, 12)));
            return x.place(x.revolve(half, Vec3.ZERO, Vec3.Z), Transform.turn(Vec3.Y, beta));
        });
        FaceReview side = r.faces().stream()
                .filter(f -> f.kind() == shotwright.brep.ExactFace.Kind.CONE)
                .findFirst()
                .orElseThrow();
        assertThat(side.formedBy()).isEqualTo(FormedBy.A);
        leans(side, 4, 16);
    }

    /** A hole across the pull has every lean there is: each half makes its side of it, and nothing added changes that. */
    @Test
    void crossHole() throws ExactFailure, IOException {
        ReviewResult r = review(x -> {
            Solid block = x.block(new Box3(Vec3.ZERO, new Vec3(20, 16, 12)));
            Solid drill = x.cylinder(new Vec3(10, -1, 6), Vec3.Y, 2, 30);
            return x.cut(List.of(block), List.of(drill)).getFirst();
        });
        FaceReview hole = named(r, "inside wall of the 4 mm cross hole");
        assertThat(hole.need()).isEqualTo(Need.CANNOT_HELP);
        assertThat(hole.formedBy()).isEqualTo(FormedBy.NEITHER);
        assertThat(Math.max(-hole.leastDraftDeg(), hole.mostDraftDeg())).isCloseTo(90, within(1e-5));
    }

    /** A quarter round along the top edge starts at the wall with no draft and ends level. */
    @Test
    void roundedEdge() throws ExactFailure, IOException {
        double k = 2 * Math.sqrt(0.5);
        ReviewResult r = review(x -> x.prism(
                Outline.from(Vec3.ZERO)
                        .line(new Vec3(20, 0, 0))
                        .line(new Vec3(20, 0, 8))
                        .arc(new Vec3(18 + k, 0, 8 + k), new Vec3(18, 0, 10))
                        .line(new Vec3(0, 0, 10))
                        .line(Vec3.ZERO),
                new Vec3(0, 15, 0)));
        FaceReview edge = named(r, "rounded edge, 2 mm radius");
        leans(edge, 0, 90);
        assertThat(edge.need()).isEqualTo(Need.GOES_ALONG);
        assertThat(edge.leastAtMm().distance(new Vec3(20, edge.leastAtMm().y(), 8)))
                .isLessThan(1e-5);
        assertThat(edge.mostAtMm().distance(new Vec3(18, edge.mostAtMm().y(), 10)))
                .isLessThan(1e-5);
    }

    /** Every face is there once, and their areas add up to the part's. */
    @Test
    void realPart() throws IOException {
        ReviewResult r = Objects.requireNonNull(new StepJobs(engine, folder)
                .of(Repository.sharedPart("cable_strain_relief_half.step"), "")
                .review());
        assertThat(r.faces()).hasSize(110);
        assertThat(r.faces().stream().mapToDouble(FaceReview::areaMm2).sum())
                .isCloseTo(r.pulled().part().mass().surfaceAreaMm2(), within(0.01));
        // three round channels along y lie across the pull
        assertThat(r.faces().stream().filter(f -> f.need() == Need.CANNOT_HELP).map(FaceReview::name))
                .containsExactlyInAnyOrder(
                        "channel lying across the pull, 3.5 mm radius",
                        "channel lying across the pull, 4.13 mm radius",
                        "channel lying across the pull, 3.5 mm radius");
    }
}
