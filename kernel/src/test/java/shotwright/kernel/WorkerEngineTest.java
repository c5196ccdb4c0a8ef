package shotwright.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import shotwright.brep.ExactFace;
import shotwright.brep.ExactFailure;
import shotwright.brep.ExactShapes;
import shotwright.brep.FacedMesh;
import shotwright.brep.Outline;
import shotwright.brep.Solid;
import shotwright.brep.SolidCheck;
import shotwright.brep.StepShapes;
import shotwright.geom.Box3;
import shotwright.geom.Transform;
import shotwright.geom.Vec3;
import shotwright.mesh.Edges;
import shotwright.mesh.MassProperties;
import shotwright.progress.Progress;

/** Closed forms of solid geometry through the whole chain: facade, wire, process, script, kernel and back. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class WorkerEngineTest {
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

    private ExactShapes shapes() {
        return new ExactShapes(engine, Progress.SILENT);
    }

    @Test
    void blockWithHole() throws ExactFailure {
        try (ExactShapes x = shapes()) {
            Solid block = x.block(new Box3(Vec3.ZERO, new Vec3(10, 20, 30)));
            Solid drill = x.cylinder(new Vec3(5, 5, -1), Vec3.Z, 2, 50);
            List<Solid> left = x.cut(List.of(block), List.of(drill));
            assertThat(left).hasSize(1);
            Solid s = left.getFirst();
            assertThat(x.measure(s).volumeMm3()).isCloseTo(6000 - Math.PI * 4 * 30, within(1e-6));
            assertThat(x.measure(s).areaMm2()).isCloseTo(2200 - 2 * Math.PI * 4 + Math.PI * 4 * 30, within(1e-6));
            assertThat(x.check(s)).isEqualTo(new SolidCheck(true, 1, 1, 7, 0));
            ExactFace wall = x.faces(s).stream()
                    .filter(f -> f.kind() == ExactFace.Kind.CYLINDER)
                    .findFirst()
                    .orElseThrow();
            assertThat(wall.radiusMm()).isCloseTo(2, within(1e-12));
            assertThat(wall.axis().cross(Vec3.Z).length()).isLessThan(1e-12);
            assertThat(wall.areaMm2()).isCloseTo(2 * Math.PI * 2 * 30, within(1e-6));
        }
    }

    @Test
    void coneByTurning() throws ExactFailure {
        try (ExactShapes x = shapes()) {
            Outline half = Outline.from(Vec3.ZERO)
                    .line(new Vec3(3, 0, 0))
                    .line(new Vec3(1, 0, 5))
                    .line(new Vec3(0, 0, 5))
                    .line(Vec3.ZERO);
            Solid s = x.revolve(half, Vec3.ZERO, Vec3.Z);
            assertThat(x.measure(s).volumeMm3()).isCloseTo(Math.PI * 5 / 3 * (9 + 3 + 1), within(1e-6));
            ExactFace side = x.faces(s).stream()
                    .filter(f -> f.kind() == ExactFace.Kind.CONE)
                    .findFirst()
                    .orElseThrow();
            assertThat(Math.abs(side.halfAngleRad())).isCloseTo(Math.atan2(2, 5), within(1e-9));
        }
    }

    @Test
    void torusByTurning() throws ExactFailure {
        try (ExactShapes x = shapes()) {
            Outline circle = Outline.from(new Vec3(12, 0, 0))
                    .arc(new Vec3(10, 0, 2), new Vec3(8, 0, 0))
                    .arc(new Vec3(10, 0, -2), new Vec3(12, 0, 0));
            Solid s = x.revolve(circle, Vec3.ZERO, Vec3.Z);
            assertThat(x.measure(s).volumeMm3()).isCloseTo(2 * Math.PI * Math.PI * 10 * 4, within(1e-4));
            ExactFace skin = x.faces(s).getFirst();
            assertThat(skin.kind()).isEqualTo(ExactFace.Kind.TORUS);
            assertThat(skin.radiusMm()).isCloseTo(10, within(1e-9));
            assertThat(skin.tubeRadiusMm()).isCloseTo(2, within(1e-9));
        }
    }

    @Test
    void meshIsClosedAndKnowsItsFaces() throws ExactFailure {
        try (ExactShapes x = shapes()) {
            Solid ball =
                    x.place(x.sphere(Vec3.ZERO, 5), Transform.scale(2, 2, 2).then(Transform.translate(Vec3.X)));
            FacedMesh m = x.mesh(ball, 0.01, 0.2);
            assertThat(Edges.of(m.mesh()).isClosed()).isTrue();
            double exact = 4.0 / 3 * Math.PI * 1000;
            assertThat(MassProperties.of(m.mesh()).volumeMm3()).isBetween(0.99 * exact, exact);
            for (int f = 0; f < m.mesh().facetCount(); f++) {
                for (int k = 0; k < 3; k++) {
                    Vec3 out = m.mesh().cornerPoint(f, k).minus(Vec3.X).unit();
                    int i = 9 * f + 3 * k;
                    Vec3 n = new Vec3(m.normals()[i], m.normals()[i + 1], m.normals()[i + 2]);
                    assertThat(n.dot(out)).isGreaterThan(1 - 1e-6);
                }
            }
        }
    }

    @Test
    void stepAndBack() throws ExactFailure {
        try (ExactShapes x = shapes()) {
            Solid pin = x.cylinder(new Vec3(1, 2, 3), new Vec3(0, 1, 0), 1.5, 8);
            Solid plate = x.prism(
                    Outline.polygon(List.of(Vec3.ZERO, new Vec3(9, 0, 0), new Vec3(9, 4, 0))), new Vec3(0, 0, 2));
            StepShapes back = x.readStep(x.writeStep("pin and plate", List.of(pin, plate)));
            assertThat(back.solids()).hasSize(2);
            assertThat(back.loose()).isEmpty();
            assertThat(x.measure(back.solids().get(0)).volumeMm3()).isCloseTo(Math.PI * 2.25 * 8, within(1e-6));
            assertThat(x.measure(back.solids().get(1)).volumeMm3()).isCloseTo(36, within(1e-6));
            assertThat(x.box(back.solids().get(1)).max().distance(new Vec3(9, 4, 2)))
                    .isLessThan(1e-6);
        }
    }

    @Test
    void wedgeOfFlatFacesPartedByAPlate() throws ExactFailure {
        try (ExactShapes x = shapes()) {
            List<Vec3> c = List.of(
                    Vec3.ZERO,
                    new Vec3(6, 0, 0),
                    new Vec3(6, 4, 0),
                    new Vec3(0, 4, 0),
                    new Vec3(0, 0, 3),
                    new Vec3(0, 4, 3));
            Solid wedge = x.polyhedron(
                    c,
                    List.of(
                            new int[] {0, 1, 2, 3},
                            new int[] {0, 1, 4},
                            new int[] {3, 2, 5},
                            new int[] {0, 3, 5, 4},
                            new int[] {1, 2, 5, 4}));
            assertThat(x.measure(wedge).volumeMm3()).isCloseTo(36, within(1e-9));
            assertThat(x.check(wedge).isOneClosedSolid()).isTrue();
            Solid plate = x.plate(Outline.polygon(
                    List.of(new Vec3(-9, -9, 1), new Vec3(9, -9, 1), new Vec3(9, 9, 1), new Vec3(-9, 9, 1))));
            List<Solid> parts = x.split(List.of(wedge), List.of(plate), ExactShapes.SAME_MM);
            // above the plate a third as high is (2/3)² of the section
            assertThat(parts).hasSize(2);
            double small = Math.min(
                    x.measure(parts.get(0)).volumeMm3(), x.measure(parts.get(1)).volumeMm3());
            assertThat(small).isCloseTo(36 * 4 / 9.0, within(1e-6));
            List<Solid> again = x.fuse(parts.subList(0, 1), parts.subList(1, 2));
            assertThat(again).hasSize(1);
            assertThat(x.check(x.tidy(again.getFirst())).faces()).isEqualTo(5);
        }
    }

    @Test
    void nonsenseIsRefusedAndTheEngineGoesOn() throws ExactFailure {
        try (ExactShapes x = shapes()) {
            assertThatThrownBy(() -> x.readStep("not a part".getBytes(java.nio.charset.StandardCharsets.UTF_8)))
                    .isInstanceOfSatisfying(
                            ExactFailure.class, f -> assertThat(f.why()).isEqualTo(ExactFailure.Why.REFUSED));
            assertThatThrownBy(() -> x.measure(new Solid(999_999)))
                    .isInstanceOfSatisfying(
                            ExactFailure.class, f -> assertThat(f.why()).isEqualTo(ExactFailure.Why.REFUSED));
            assertThat(x.measure(x.sphere(Vec3.ZERO, 1)).volumeMm3()).isCloseTo(4.0 / 3 * Math.PI, within(1e-6));
        }
    }

    @Test
    void aKilledEngineIsSaidAndStartedAnew() throws ExactFailure {
        try (WorkerEngine own = new WorkerEngine(WorkerEngine.Allowance.USUAL);
                ExactShapes x = new ExactShapes(own, Progress.SILENT)) {
            Solid s = x.sphere(Vec3.ZERO, 1);
            ProcessHandle h = ProcessHandle.of(own.pid().orElseThrow()).orElseThrow();
            h.destroyForcibly();
            h.onExit().join();
            assertThatThrownBy(() -> x.measure(s)).isInstanceOf(ExactFailure.class);
            assertThat(x.measure(x.sphere(Vec3.ZERO, 2)).volumeMm3()).isCloseTo(32.0 / 3 * Math.PI, within(1e-6));
        }
    }

    @Test
    void stoppingEndsTheEngineAtOnce() throws ExactFailure {
        try (WorkerEngine own = new WorkerEngine(WorkerEngine.Allowance.USUAL)) {
            Progress stop = (doing, share) -> {
                throw new Progress.Cancelled();
            };
            assertThatThrownBy(() -> new ExactShapes(own, stop).sphere(Vec3.ZERO, 1))
                    .isInstanceOf(Progress.Cancelled.class);
            assertThat(own.pid()).isEmpty();
        }
    }

    @Test
    void aHungEngineIsEndedAndStartedAnew() throws Exception {
        try (WorkerEngine own = new WorkerEngine(new WorkerEngine.Allowance(Duration.ofSeconds(12), 512));
                ExactShapes x = new ExactShapes(own, Progress.SILENT)) {
            Solid s = x.sphere(Vec3.ZERO, 1);
            Freeze.process(own.pid().orElseThrow());
            assertThatThrownBy(() -> x.measure(s))
                    .isInstanceOfSatisfying(
                            ExactFailure.class, f -> assertThat(f.why()).isEqualTo(ExactFailure.Why.ENDED))
                    .hasMessageContaining("took longer than 12 s");
            assertThat(x.measure(x.sphere(Vec3.ZERO, 2)).volumeMm3()).isCloseTo(32.0 / 3 * Math.PI, within(1e-6));
        }
    }

    @Test
    void stoppingDoesNotWaitForAHungEngine() throws Exception {
        AtomicBoolean asked = new AtomicBoolean();
        Progress stop = (doing, share) -> {
            if (asked.get()) throw new Progress.Cancelled();
        };
        try (WorkerEngine own = new WorkerEngine(WorkerEngine.Allowance.USUAL);
                ExactShapes x = new ExactShapes(own, stop)) {
            Solid s = x.sphere(Vec3.ZERO, 1);
            long pid = own.pid().orElseThrow();
            Freeze.process(pid);
            asked.set(true);
            long start = System.nanoTime();
            assertThatThrownBy(() -> x.measure(s)).isInstanceOf(Progress.Cancelled.class);
            assertThat(Duration.ofNanos(System.nanoTime() - start)).isLessThan(Duration.ofSeconds(1));
            assertThat(ProcessHandle.of(pid).filter(ProcessHandle::isAlive)).isEmpty();
        }
    }

    @Test
    void outOfMemoryIsSaidAndTheEngineStartedAnew() throws ExactFailure {
        try (WorkerEngine own = new WorkerEngine(new WorkerEngine.Allowance(Duration.ofSeconds(60), 320));
                ExactShapes x = new ExactShapes(own, Progress.SILENT)) {
            Solid s = x.sphere(Vec3.ZERO, 10);
            assertThatThrownBy(() -> x.mesh(s, 1e-5, 0.5)) // some ten million triangles
                    .isInstanceOfSatisfying(
                            ExactFailure.class, f -> assertThat(f.why()).isEqualTo(ExactFailure.Why.ENDED))
                    .hasMessageContaining("out of memory");
            assertThat(x.measure(x.sphere(Vec3.ZERO, 2)).volumeMm3()).isCloseTo(32.0 / 3 * Math.PI, within(1e-6));
        }
    }

    /** A watcher that has enough may throw what it likes; the answer that is still to come must not be taken for the next one. */
    @Test
    void aWatcherThatThrowsLeavesNoAnswerBehind() throws ExactFailure {
        AtomicBoolean enough = new AtomicBoolean();
        Progress watch = (doing, share) -> {
            if (enough.get()) throw new IllegalStateException("enough");
        };
        try (WorkerEngine own = new WorkerEngine(WorkerEngine.Allowance.USUAL);
                ExactShapes x = new ExactShapes(own, watch)) {
            Solid s = x.sphere(Vec3.ZERO, 10);
            enough.set(true);
            assertThatThrownBy(() -> x.mesh(s, 1e-3, 0.5)).hasMessage("enough");
            enough.set(false);
            assertThat(x.measure(x.sphere(Vec3.ZERO, 1)).volumeMm3()).isCloseTo(4.0 / 3 * Math.PI, within(1e-6));
        }
    }

    /** The nineteenth field of a thread's {@code stat} is its niceness (Linux, proc_pid_stat(5)). */
    @Test
    void compilersOfTheEngineGiveWayAndItsOwnThreadDoesNot() throws Exception {
        assumeTrue(Files.isDirectory(Path.of("/proc/self/task")));
        try (ExactShapes x = shapes()) {
            x.measure(x.sphere(Vec3.ZERO, 1));
        }
        Path threads = Path.of("/proc", Long.toString(engine.pid().orElseThrow()), "task");
        long until = System.nanoTime() + Duration.ofSeconds(10).toNanos();
        int own = Collections.max(niceness(threads, "(kernel)"));
        while (Collections.min(niceness(threads, "(V8 ")) <= own && System.nanoTime() < until) Thread.sleep(50);
        assertThat(niceness(threads, "(V8 ")).allMatch(n -> n > own);
        assertThat(niceness(Path.of("/proc/self/task"), "(")).contains(own);
    }

    private static Set<Integer> niceness(Path threads, String name) throws IOException {
        Set<Integer> found = new HashSet<>();
        try (Stream<Path> all = Files.list(threads)) {
            for (Path thread : all.toList()) {
                String stat = Files.readString(thread.resolve("stat"));
                String[] afterName = stat.substring(stat.lastIndexOf(')') + 2).split(" ");
                if (stat.contains(name)) found.add(Integer.parseInt(afterName[16]));
            }
        }
        return found;
    }

    @Test
    void overTimeIsSaid() {
        try (WorkerEngine own = new WorkerEngine(new WorkerEngine.Allowance(Duration.ofMillis(60), 512))) {
            assertThatThrownBy(() -> new ExactShapes(own, Progress.SILENT).sphere(Vec3.ZERO, 1))
                    .isInstanceOfSatisfying(
                            ExactFailure.class, f -> assertThat(f.why()).isEqualTo(ExactFailure.Why.ENDED))
                    .hasMessageContaining("took longer");
        }
    }
}
