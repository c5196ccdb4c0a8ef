package shotwright.checks.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import shotwright.brep.ExactFace;
import shotwright.brep.ExactFailure;
import shotwright.brep.ExactShapes;
import shotwright.brep.Solid;
import shotwright.brep.StepShapes;
import shotwright.checks.Repository;
import shotwright.demo.TensionKnob;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;
import shotwright.job.JobCard;
import shotwright.job.JobResult;
import shotwright.job.Line;
import shotwright.job.Shop;
import shotwright.job.Station;
import shotwright.kernel.WorkerEngine;
import shotwright.layout.LayoutResult;
import shotwright.mesh.MassProperties;
import shotwright.mesh.TriMesh;
import shotwright.mold.exact.ExactHalf;
import shotwright.mold.exact.ExactMold;
import shotwright.progress.Progress;

/** The demo part, as facets and with its true faces, against the closed forms of its pieces. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DemoPartSolidTest {
    private static final Path FILE = Repository.root().resolve("examples/parts/tension-knob.step");

    /** Radii and distances of the centres of lobe and hollow; two circles touch when the centres are as far apart as both radii. */
    private static final double LOBE = 6, LOBE_AT = 17.5 - LOBE;

    private static final double HOLLOW_AT = hollowAt(), HOLLOW = HOLLOW_AT - 15.1;

    /** Half the angle a lobe's and a hollow's arc takes at its own centre, by the law of sines. */
    private static final double HOLLOW_HALF = Math.asin(LOBE_AT * Math.sin(Math.PI / 6) / (LOBE + HOLLOW));

    private static final double LOBE_HALF = HOLLOW_HALF + Math.PI / 6;
    private static final double LENGTH = 12 * (LOBE * LOBE_HALF + HOLLOW * HOLLOW_HALF);

    /** Twelve triangles between the middle and both centres, lobe sectors added, hollow sectors taken. */
    private static final double AREA = 12
            * (LOBE_AT * HOLLOW_AT * Math.sin(Math.PI / 6) / 2
                    + LOBE * LOBE * LOBE_HALF / 2
                    - HOLLOW * HOLLOW * HOLLOW_HALF / 2);

    private final WorkerEngine engine = new WorkerEngine(WorkerEngine.Allowance.USUAL);

    @BeforeAll
    void onlyWhereThereIsAnEngine() {
        assumeTrue(
                engine.whatIsMissing().isEmpty(), () -> engine.whatIsMissing().orElse(""));
    }

    @AfterAll
    void end() {
        engine.close();
    }

    private static double hollowAt() {
        double lo = 20, hi = 40;
        for (int i = 0; i < 100; i++) {
            double b = (lo + hi) / 2;
            double apart = Math.sqrt(LOBE_AT * LOBE_AT + b * b - 2 * LOBE_AT * b * Math.cos(Math.PI / 6));
            if (apart > LOBE + b - 15.1) lo = b;
            else hi = b;
        }
        return (lo + hi) / 2;
    }

    /** Steiner's formula for a curve moved inward by d. */
    private static double moved(double d) {
        return AREA - LENGTH * d + Math.PI * d * d;
    }

    private static double tan(double deg) {
        return Math.tan(Math.toRadians(deg));
    }

    private static double cap(double ball, double foot) {
        double h = ball - Math.sqrt(ball * ball - foot * foot);
        return Math.PI * h * h * (3 * ball - h) / 3;
    }

    private static double frustum(double r, double s, double height) {
        return Math.PI * height / 3 * (r * r + r * s + s * s);
    }

    private static double simpson(double from, double to, DoubleUnaryOperator f) {
        int n = 400;
        double h = (to - from) / n, sum = f.applyAsDouble(from) + f.applyAsDouble(to);
        for (int i = 1; i < n; i++) sum += (i % 2 == 1 ? 4 : 2) * f.applyAsDouble(from + i * h);
        return sum * h / 3;
    }

    /** What a round of radius r takes off an edge of interior angle θ: r² (cot θ/2 − (π − θ)/2) for each unit of length. */
    private static double round(double r, double angle) {
        return r * r * (1 / Math.tan(angle / 2) - (Math.PI - angle) / 2);
    }

    /** A section of a rib, between boss and wall. */
    private static double rib(double z) {
        double half = 0.65 - (11.6 - z) * tan(0.25), boss = 8.1 + z * tan(0.5), wall = HOLLOW + 2.2 + z * tan(0.5);
        return simpson(-half, half, y -> HOLLOW_AT - Math.sqrt(wall * wall - y * y) - Math.sqrt(boss * boss - y * y));
    }

    /** Band and three-cornered head, less the lean of their sides over the height. */
    private static double arrow() {
        double turn = Math.toRadians(113), head = Math.toRadians(16);
        double tip = 9.6 * Math.cos(head), side = 9.6 * Math.sin(head);
        double area = 9.6 * turn + 1.5 * side;
        double round = 19.2 * turn + 1 + 2 + Math.hypot(11.1 - tip, side) + Math.hypot(8.1 - tip, side);
        return 0.35 * area - 0.35 * 0.35 / 2 * tan(10) * round;
    }

    private static double volume() {
        double shoulder = 14 + Math.sqrt(360 * 360 - 13.2 * 13.2) - Math.sqrt(360 * 360 - 3.2 * 3.2);
        double outer = simpson(0, shoulder, z -> moved(z * tan(1)));
        double edge = round(1.2, Math.toRadians(91)) * (LENGTH - 2 * Math.PI * (shoulder * tan(1) + 0.27));
        double dome = cap(360, 13.2) - cap(360, 3.2);
        double hollow = simpson(0, 11.6, z -> moved(2.2 + z * tan(0.5)));
        double boss = frustum(8.1, 8.1 + 11.6 * tan(0.5), 11.6), mouth = frustum(5.95, 5.95 - 5 * tan(0.5), 5);
        double nut = 10.1 * 10.1 * Math.sqrt(3) / 2 * 5.5, hole = frustum(3.2, 3.2 + 3.5 * tan(1), 3.5);
        double ribs = 6 * simpson(4.6, 11.6, DemoPartSolidTest::rib);
        return outer - edge + dome - hollow + boss - mouth - nut - hole + ribs + arrow();
    }

    @Test
    void theCommittedFileIsMadeAgainByteForByte() throws IOException, ExactFailure {
        assertThat(DrawDemoPart.step(engine)).isEqualTo(Files.readAllBytes(FILE));
    }

    @Test
    void sizesAreThoseOfItsPieces() throws IOException, ExactFailure {
        try (ExactShapes x = new ExactShapes(engine, Progress.SILENT)) {
            StepShapes read = x.readStep(Files.readAllBytes(FILE));
            assertThat(read.loose()).isEmpty();
            assertThat(read.solids()).hasSize(1);
            Solid knob = read.solids().getFirst();
            assertThat(x.check(knob).isOneClosedSolid()).isTrue();
            assertThat(x.measure(knob).volumeMm3()).isCloseTo(volume(), Percentage.withPercentage(0.003));
            List<ExactFace> faces = x.faces(knob);
            double rim = AREA - moved(2.2);
            assertThat(faces).anyMatch(f -> f.kind() == ExactFace.Kind.PLANE && Math.abs(f.areaMm2() / rim - 1) < 1e-6);
            assertThat(cones(faces, 1)).isEqualTo(12 + 1); // contour and hole
            assertThat(cones(faces, 0.5)).isEqualTo(12 + 2); // inner wall, boss, mouth
            assertThat(cones(faces, 10)).isEqualTo(2); // the arrow's band
        }
    }

    private static long cones(List<ExactFace> faces, double halfAngleDeg) {
        return faces.stream()
                .filter(f -> f.kind() == ExactFace.Kind.CONE)
                .filter(f -> Math.abs(Math.abs(Math.toDegrees(f.halfAngleRad())) - halfAngleDeg) < 1e-6)
                .count();
    }

    /** The halves as exact solids: with part and cut-outs they make the block, and the core fills the hollow the part's faces leave. */
    @Test
    void bothHalvesComeOutExact() throws ExactFailure {
        JobResult job =
                new Line(Shop.standard(), engine).run(FILE, JobCard.empty(), Station.HALVES, null, Progress.SILENT);
        ExactMold made = Objects.requireNonNull(job.exactMold());
        LayoutResult layout = Objects.requireNonNull(job.layout());
        assertThat(made.findings()).isEmpty();
        assertThat(made.halves()).hasSize(2).allMatch(h -> h.check().isOneClosedSolid());
        double metal = made.halves().stream().mapToDouble(ExactHalf::volumeMm3).sum();
        double part = volume() / (1 - layout.shrinkX()) / (1 - layout.shrinkY()) / (1 - layout.shrinkZ());
        double block = layout.block().volumeMm3();
        assertThat(metal + made.cutOutMm3() + part * layout.cavities().size()).isCloseTo(block, within(2e-6 * block));
    }

    /** Curves of the facets are true to 0.01 mm, most of them inscribed. */
    @Test
    void facetsAndTrueFacesAgree() throws IOException, ExactFailure {
        TriMesh mesh = TensionKnob.mesh();
        MassProperties facets = MassProperties.of(mesh);
        assertThat(facets.volumeMm3()).isCloseTo(volume(), Percentage.withPercentage(0.05));
        try (ExactShapes x = new ExactShapes(engine, Progress.SILENT)) {
            Solid knob = x.readStep(Files.readAllBytes(FILE)).solids().getFirst();
            assertThat(x.measure(knob).areaMm2()).isCloseTo(facets.surfaceAreaMm2(), Percentage.withPercentage(0.05));
            assertThat(x.measure(knob).centroidMm().distance(facets.centroid())).isLessThan(0.01);
            Box3 box = x.box(knob);
            for (Vec3 d : List.of(
                    box.min().minus(mesh.box().min()),
                    box.max().minus(mesh.box().max()))) {
                assertThat(d.length()).isCloseTo(0, within(0.01));
            }
        }
    }
}
