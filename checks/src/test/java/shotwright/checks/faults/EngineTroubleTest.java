package shotwright.checks.faults;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shotwright.brep.ExactFailure;
import shotwright.brep.ExactShapes;
import shotwright.geom.Vec3;
import shotwright.intake.IntakeException;
import shotwright.job.JobCard;
import shotwright.job.JobResult;
import shotwright.job.Line;
import shotwright.job.Shop;
import shotwright.job.Station;
import shotwright.kernel.WorkerEngine;
import shotwright.mold.exact.ExactMold;
import shotwright.progress.Progress;

/** The engine's process is lost in the middle of a job: the job says so, and done once more it comes out whole. */
class EngineTroubleTest {
    private static final String EXACT_HALVES = "making the halves as exact solids";

    private static JobResult halves(WorkerEngine engine, Path step, Progress progress) {
        return new Line(Shop.standard(), engine).run(step, JobCard.empty(), Station.HALVES, null, progress);
    }

    private static WorkerEngine engine() {
        WorkerEngine engine = new WorkerEngine(WorkerEngine.Allowance.USUAL);
        assumeTrue(
                engine.whatIsMissing().isEmpty(), () -> engine.whatIsMissing().orElse(""));
        return engine;
    }

    /** Kills the engine's process the first time a job says that it is doing something. */
    private static Progress killing(WorkerEngine engine, String when) {
        AtomicBoolean done = new AtomicBoolean();
        return (doing, share) -> {
            if (!doing.equals(when) || done.getAndSet(true)) return;
            ProcessHandle worker = ProcessHandle.of(engine.pid().orElseThrow()).orElseThrow();
            worker.destroyForcibly();
            worker.onExit().join();
        };
    }

    @Test
    void killedWhileReading(@TempDir Path folder) throws ExactFailure {
        try (WorkerEngine other = engine();
                WorkerEngine engine = engine()) {
            Path step = Cup.write(other, folder);
            Progress killing = killing(engine, "reading the STEP file");
            assertThatThrownBy(() -> halves(engine, step, killing))
                    .isInstanceOf(IntakeException.class)
                    .hasMessageContaining("its process went away")
                    .hasMessageContaining("Read the file once more");
            whole(halves(engine, step, Progress.SILENT));
        }
    }

    @Test
    void killedWhileMakingHalves(@TempDir Path folder) throws ExactFailure {
        try (WorkerEngine engine = engine()) {
            Path step = Cup.write(engine, folder);
            JobResult job = halves(engine, step, killing(engine, EXACT_HALVES));
            assertThat(job.mold()).isNotNull();
            assertThat(job.hasStop()).isFalse();
            ExactMold exact = Objects.requireNonNull(job.exactMold());
            assertThat(exact.halves()).isEmpty();
            assertThat(exact.findings()).singleElement().satisfies(f -> assertThat(f.text())
                    .contains("its process went away")
                    .contains("can be tried again"));
            whole(halves(engine, step, Progress.SILENT));
        }
    }

    /** A ball so large that its triangles do not fit. */
    @Test
    void outOfMemory(@TempDir Path folder) throws ExactFailure, IOException {
        try (WorkerEngine engine = engine();
                WorkerEngine small = new WorkerEngine(new WorkerEngine.Allowance(Duration.ofSeconds(60), 128))) {
            Path step = folder.resolve("ball.step");
            try (ExactShapes x = new ExactShapes(engine, Progress.SILENT)) {
                Files.write(step, x.writeStep("ball", List.of(x.sphere(Vec3.ZERO, 400))));
            }
            assertThatThrownBy(() -> intake(small, step))
                    .isInstanceOf(IntakeException.class)
                    .hasMessageContaining("out of memory");
            assertThat(intake(engine, step).intake().part()).isNotNull();
            assertThat(intake(small, Cup.write(small, folder)).intake().part()).isNotNull();
        }
    }

    private static JobResult intake(WorkerEngine engine, Path step) {
        return new Line(Shop.standard(), engine).run(step, JobCard.empty(), Station.INTAKE, null, Progress.SILENT);
    }

    private static void whole(JobResult job) {
        assertThat(Objects.requireNonNull(job.exactMold()).halves()).hasSize(2);
    }
}
