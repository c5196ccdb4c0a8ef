package shotwright.checks.faults;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import shotwright.brep.ExactFailure;
import shotwright.kernel.WorkerEngine;

/** The whole program as a process of its own on a STEP file: however it ends, no process and no passing file stays behind. */
class LeftBehindTest {
    private static final Path KILL = Path.of("/bin/kill");
    private static final Duration PATIENCE = Duration.ofMinutes(2);

    /** How far the run is when it is ended. */
    enum Moment {
        ENGINE_STARTED,
        FIRST_RESULT_KEPT,
        PAPERS_BEGUN
    }

    private static Path step = Path.of("");

    @TempDir
    Path folder = Path.of("");

    private Path job = Path.of("");
    private Path temporary = Path.of("");

    @BeforeEach
    void makeFolders() throws IOException {
        job = folder.resolve("job");
        temporary = Files.createDirectory(folder.resolve("temporary"));
    }

    @BeforeAll
    static void makePart(@TempDir Path forAll) throws ExactFailure {
        assumeTrue(Files.isExecutable(KILL), "signals are sent with /bin/kill");
        try (WorkerEngine engine = new WorkerEngine(WorkerEngine.Allowance.USUAL)) {
            assumeTrue(engine.whatIsMissing().isEmpty(), () -> engine.whatIsMissing()
                    .orElse(""));
            step = Cup.write(engine, forAll);
        }
    }

    @ParameterizedTest
    @EnumSource
    void stopped(Moment moment) throws Exception {
        Process run = start();
        List<ProcessHandle> engines = waitUntil(run, moment);
        signal("-INT", run);
        assertThat(run.waitFor(PATIENCE.toSeconds(), TimeUnit.SECONDS)).isTrue();
        assertThat(run.exitValue()).isEqualTo(130);
        assertThat(Files.readString(folder.resolve("said"))).contains("Stopped. Nothing half written was left behind.");
        nothingLeft(engines);
        assertThat(halfWritten()).isEmpty();
        if (moment == Moment.PAPERS_BEGUN) finishes();
    }

    @ParameterizedTest
    @EnumSource
    void killed(Moment moment) throws Exception {
        Process run = start();
        List<ProcessHandle> engines = waitUntil(run, moment);
        signal("-KILL", run);
        run.waitFor();
        nothingLeft(engines);
        if (moment == Moment.PAPERS_BEGUN) finishes();
    }

    /** Once more on the same folder, to the end. */
    private void finishes() throws Exception {
        Process again = start();
        List<ProcessHandle> engines = waitUntil(again, Moment.ENGINE_STARTED);
        assertThat(again.waitFor(PATIENCE.toSeconds(), TimeUnit.SECONDS)).isTrue();
        assertThat(again.exitValue()).isZero();
        nothingLeft(engines);
        assertThat(halfWritten()).isEmpty();
        assertThat(job.resolve("halves/half-A.step")).isNotEmptyFile();
    }

    private Process start() throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:-UsePerfData",
                        "-Djava.io.tmpdir=" + temporary,
                        "--enable-native-access=ALL-UNNAMED",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "shotwright.desk.cli.Main",
                        "halves",
                        step.toString(),
                        "--out",
                        job.toString())
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(folder.resolve("said").toFile())
                .start();
    }

    private List<ProcessHandle> waitUntil(Process run, Moment moment) throws InterruptedException {
        List<ProcessHandle> engines = new ArrayList<>();
        await(run, () -> {
            run.descendants().filter(p -> !engines.contains(p)).forEach(engines::add);
            return !engines.isEmpty();
        });
        if (moment == Moment.FIRST_RESULT_KEPT) await(run, () -> holdsFiles(job.resolve(".line")));
        if (moment == Moment.PAPERS_BEGUN) await(run, () -> holdsFiles(job.resolve("halves")));
        return engines;
    }

    private static void await(Process run, BooleanSupplier there) throws InterruptedException {
        long until = System.nanoTime() + PATIENCE.toNanos();
        while (!there.getAsBoolean()) {
            assertThat(run.isAlive()).isTrue();
            assertThat(System.nanoTime()).isLessThan(until);
            Thread.sleep(5);
        }
    }

    private static boolean holdsFiles(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.findAny().isPresent();
        } catch (IOException notYet) {
            return false;
        }
    }

    private static void signal(String which, Process run) throws IOException, InterruptedException {
        assertThat(new ProcessBuilder(KILL.toString(), which, Long.toString(run.pid()))
                        .start()
                        .waitFor())
                .isZero();
    }

    private void nothingLeft(List<ProcessHandle> engines) throws Exception {
        for (ProcessHandle p : engines) p.onExit().get(PATIENCE.toSeconds(), TimeUnit.SECONDS);
        try (Stream<Path> left = Files.list(temporary)) {
            assertThat(left).isEmpty();
        }
    }

    private List<Path> halfWritten() throws IOException {
        try (Stream<Path> all = Files.walk(job)) {
            return all.filter(p -> p.toString().endsWith(".part")).toList();
        }
    }
}
