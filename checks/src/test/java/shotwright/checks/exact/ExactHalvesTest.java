package shotwright.checks.exact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shotwright.brep.ExactFace;
import shotwright.brep.ExactFailure;
import shotwright.brep.ExactShapes;
import shotwright.brep.Outline;
import shotwright.brep.Solid;
import shotwright.checks.Repository;
import shotwright.geom.Vec3;
import shotwright.job.JobCard;
import shotwright.job.JobResult;
import shotwright.job.Line;
import shotwright.job.Shop;
import shotwright.job.Station;
import shotwright.kernel.WorkerEngine;
import shotwright.layout.DowelPlace;
import shotwright.layout.FeedSegment;
import shotwright.layout.LayoutResult;
import shotwright.layout.Section;
import shotwright.mold.exact.ExactHalf;
import shotwright.mold.exact.ExactHalves;
import shotwright.mold.exact.ExactMold;
import shotwright.progress.Progress;

/** From a STEP file down the line to halves as exact solids. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ExactHalvesTest {
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

    private JobResult halves(Path step) {
        return new Line(Shop.standard(), engine).run(step, JobCard.empty(), Station.HALVES, null, Progress.SILENT);
    }

    private static double frustum(double r, double s, double height) {
        return Math.PI * height / 3 * (r * r + r * s + s * s);
    }

    /** A cup with drafted walls and a hole through its floor, so that there is a shut-off at another height than the rim. */
    @Test
    void cupWithAHole(@TempDir Path folder) throws IOException, ExactFailure {
        Path step = folder.resolve("cup.step");
        double volume = frustum(12, 11.7, 8) - frustum(10.2, 9.9, 6.5) - frustum(2.2, 2, 1.5);
        try (ExactShapes x = new ExactShapes(engine, Progress.SILENT)) {
            Outline section = Outline.polygon(List.of(
                    new Vec3(12, 0, 0),
                    new Vec3(11.7, 0, 8),
                    new Vec3(2, 0, 8),
                    new Vec3(2.2, 0, 6.5),
                    new Vec3(9.9, 0, 6.5),
                    new Vec3(10.2, 0, 0)));
            Solid cup = x.revolve(section, Vec3.ZERO, Vec3.Z);
            assertThat(x.measure(cup).volumeMm3()).isCloseTo(volume, Percentage.withPercentage(1e-6));
            Files.write(step, x.writeStep("cup", List.of(cup)));
        }
        JobResult job = halves(step);
        LayoutResult layout = Objects.requireNonNull(job.layout());
        ExactMold m = Objects.requireNonNull(job.exactMold());
        assertThat(m.findings()).isEmpty();
        sound(m);
        double shrunk = volume
                / (1 - layout.shrinkX())
                / (1 - layout.shrinkY())
                / (1 - layout.shrinkZ())
                * layout.cavities().size();
        double block = layout.block().widthMm()
                * layout.block().heightMm()
                * (layout.block().thicknessAMm() + layout.block().thicknessBMm());
        double metal = m.halves().stream().mapToDouble(ExactHalf::volumeMm3).sum();
        assertThat(metal + m.cutOutMm3() + shrunk).isCloseTo(block, within(1e-6 * block));
        try (ExactShapes x = new ExactShapes(engine, Progress.SILENT)) {
            for (ExactHalf h : m.halves()) {
                List<Solid> back = x.readStep(h.step()).solids();
                assertThat(back).hasSize(1);
                assertThat(x.measure(back.getFirst()).volumeMm3())
                        .isCloseTo(h.volumeMm3(), Percentage.withPercentage(1e-4));
                List<ExactFace> faces = x.faces(back.getFirst());
                for (DowelPlace d : layout.dowels()) {
                    double hole = h.half() == d.holdHalf() ? d.holdHoleMm() : d.slipHoleMm();
                    assertThat(faces)
                            .anyMatch(f -> f.kind() == ExactFace.Kind.CYLINDER
                                    && Math.abs(2 * f.radiusMm() - hole) < 1e-6
                                    && Math.hypot(
                                                    f.axisPointMm().x()
                                                            - d.atMm().x(),
                                                    f.axisPointMm().y()
                                                            - d.atMm().y())
                                            < 1e-6);
                }
            }
        }
    }

    private static void sound(ExactMold m) {
        assertThat(m.halves()).hasSize(2);
        assertThat(m.balanceError()).isLessThan(ExactHalves.BALANCE);
        assertThat(m.halves()).allMatch(h -> h.check().isOneClosedSolid());
    }

    @ParameterizedTest
    @ValueSource(strings = {"sensor_cover_plate.step", "curved_link_AP242.step", "lever_knob_three_arm.step"})
    void realParts(String file, @TempDir Path folder) throws Exception {
        JobResult job = halves(Repository.sharedPart(file));
        ExactMold m = Objects.requireNonNull(job.exactMold());
        sound(m);
        double parts = Objects.requireNonNull(job.mold()).partVolumeMm3();
        assertThat(m.halves()).allMatch(h -> Math.abs(h.overMeshMm3()) < 1e-3 * parts);
        LayoutResult layout = Objects.requireNonNull(job.layout());
        for (ExactHalf h : m.halves()) {
            runnersAreThere(layout, h);
            Path written = Files.write(folder.resolve("half-" + h.half() + ".step"), h.step());
            Optional<Gmsh> read = Gmsh.of(written);
            if (read.isEmpty()) continue;
            assertThat(read.get().solids()).isEqualTo(1);
            assertThat(read.get().volumeMm3()).isCloseTo(h.volumeMm3(), Percentage.withPercentage(1e-4));
        }
    }

    /** Every runner that is cut into this half is found in its file again: a round one as a cylinder, a trapezoid as floor and leaning sides. */
    private void runnersAreThere(LayoutResult layout, ExactHalf h) throws ExactFailure {
        List<ExactFace> faces;
        try (ExactShapes x = new ExactShapes(engine, Progress.SILENT)) {
            faces = x.faces(x.readStep(h.step()).solids().getFirst());
        }
        for (FeedSegment s : layout.feed()) {
            if (s.kind() != FeedSegment.Kind.RUNNER || (s.half() != null && s.half() != h.half())) continue;
            Vec3 along = s.toMm().minus(s.fromMm()).unit();
            Section section = s.from();
            switch (section.shape()) {
                case ROUND, HALF_ROUND ->
                    assertThat(faces)
                            .anyMatch(f -> f.kind() == ExactFace.Kind.CYLINDER
                                    && Math.abs(2 * f.radiusMm() - section.widthMm()) < 1e-6
                                    && f.axis().cross(along).length() < 1e-9
                                    && f.axisPointMm()
                                                    .minus(s.fromMm())
                                                    .cross(along)
                                                    .length()
                                            < 1e-6);
                case TRAPEZOID, RECTANGLE -> {
                    double draftRad = Math.toRadians(section.wallDraftDeg());
                    assertThat(faces)
                            .as("floor")
                            .anyMatch(f -> f.kind() == ExactFace.Kind.PLANE
                                    && Math.abs(Math.abs(f.axis().z()) - 1) < 1e-12
                                    && Math.abs(f.axisPointMm().z() - h.half().sign() * section.depthMm()) < 1e-6);
                    assertThat(faces)
                            .as("sides")
                            .filteredOn(f -> f.kind() == ExactFace.Kind.PLANE
                                    && Math.abs(f.axis().dot(along)) < 1e-9
                                    && Math.abs(Math.abs(f.axis().z()) - Math.sin(draftRad)) < 1e-9
                                    && Math.abs(Math.abs(f.axisPointMm()
                                                            .minus(s.fromMm())
                                                            .dot(f.axis()))
                                                    - section.widthMm() / 2 * Math.cos(draftRad))
                                            < 1e-6)
                            .hasSizeGreaterThanOrEqualTo(2);
                }
            }
        }
    }
}
