package shotwright.mold.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shotwright.geom.Box3;
import shotwright.geom.Transform;
import shotwright.geom.Vec3;
import shotwright.intake.Intake;
import shotwright.intake.IntakeOptions;
import shotwright.intake.IntakeResult;
import shotwright.mesh.Edges;
import shotwright.mesh.MassProperties;
import shotwright.mesh.Solids;
import shotwright.mesh.TriMesh;
import shotwright.part.Part;
import shotwright.progress.Progress;

class ExportTest {
    @TempDir
    @SuppressWarnings("NullAway.Init")
    Path folder;

    private final TriMesh washer = Solids.washer(64, 20, 19.5, 8, 8.2, -3, 6);

    private static Part part(IntakeResult r) {
        return Objects.requireNonNull(r.part(), () -> "no part: " + r.findings());
    }

    private static Box3 box(IntakeResult r) {
        return Objects.requireNonNull(r.facts().boxMm());
    }

    private static IntakeResult read(Path file) {
        return Intake.read(file, IntakeOptions.usual(), Progress.SILENT);
    }

    @Test
    void stlComesBackThroughTheReader() throws IOException {
        TriMesh far = washer.transform(Transform.translate(new Vec3(90_000, -40_000, 70_000)));
        Path file = folder.resolve("half.stl");
        StlFile.write(file, far, "solid half A, Ø 40", new Vec3(89_980, -40_020, 69_997), Progress.SILENT);
        IntakeResult r = read(file);
        assertThat(r.facts().format()).isEqualTo("STL, binary");
        assertThat(r.facts().openEdges()).isZero();
        assertThat(part(r).mass().volumeMm3())
                .isCloseTo(MassProperties.of(washer).volumeMm3(), within(1e-2));
        assertThat(box(r).min().distance(Vec3.ZERO)).isLessThan(1e-4);
        byte[] head = Files.readAllBytes(file);
        assertThat(new String(head, 0, 60, java.nio.charset.StandardCharsets.US_ASCII))
                .startsWith("Shotwright, millimetres: solid half A, ? 40");
    }

    @Test
    void threeMfComesBackWithItsNames() throws IOException {
        Path file = folder.resolve("halves.3mf");
        TriMesh block = Solids.box(new Vec3(30, 0, 0), new Vec3(60, 30, 12.345678));
        ThreeMfFile.write(
                file,
                List.of(new ThreeMfFile.Item("half A <&\">", washer), new ThreeMfFile.Item("half B", block)),
                Progress.SILENT);
        IntakeResult r = read(file);
        assertThat(r.facts().bodies()).isEqualTo(2);
        assertThat(r.facts().bodyList()).extracting(b -> b.name()).containsExactly("half B", "half A <&\">");
        assertThat(r.facts().volumeMm3())
                .isCloseTo(MassProperties.of(washer).volumeMm3() + 30 * 30 * 12.345678, within(1e-3));
        assertThat(r.facts().openEdges()).isZero();
    }

    @Test
    void theSameMeshGivesTheSameBytes() throws IOException {
        Path a = folder.resolve("a.3mf"), b = folder.resolve("b.3mf");
        List<ThreeMfFile.Item> items = List.of(new ThreeMfFile.Item("half A", washer));
        ThreeMfFile.write(a, items, Progress.SILENT);
        ThreeMfFile.write(b, items, Progress.SILENT);
        assertThat(a).hasSameBinaryContentAs(b);
    }

    @Test
    void aClosedMeshStaysClosedWhenRoundingCollapsesFacets() {
        TriMesh ball = Solids.sphere(new Vec3(50_000_000, 50_000_000, 50_000_000), 40, 5);
        Rounded r = Rounded.toSinglePrecision(ball, Vec3.ZERO);
        assertThat(r.dropped()).isPositive();
        assertThat(Edges.of(r.mesh()).unmatchedCount()).isZero();
        Rounded kept = Rounded.toSinglePrecision(ball, new Vec3(50_000_000, 50_000_000, 50_000_000));
        assertThat(kept.dropped()).isZero();
        TriMesh tiny = ball.transform(Transform.scale(1e-7, 1e-7, 1e-7));
        assertThat(Rounded.toNanometre(tiny, Vec3.ZERO).dropped()).isPositive();
        assertThat(Edges.of(Rounded.toNanometre(tiny, Vec3.ZERO).mesh()).unmatchedCount())
                .isZero();
    }

    @Test
    void stoppingLeavesTheOldFileAndNothingElse() throws IOException {
        Path file = folder.resolve("half.stl");
        Files.writeString(file, "old");
        Progress stop = (doing, share) -> {
            throw new Progress.Cancelled();
        };
        assertThatExceptionOfType(Progress.Cancelled.class)
                .isThrownBy(() -> StlFile.write(file, washer, "half A", Vec3.ZERO, stop));
        assertThatExceptionOfType(Progress.Cancelled.class)
                .isThrownBy(() -> ThreeMfFile.write(file, List.of(new ThreeMfFile.Item("a", washer)), stop));
        assertThat(file).hasContent("old");
        try (Stream<Path> all = Files.list(folder)) {
            assertThat(all).containsExactly(file);
        }
        assertThatExceptionOfType(IOException.class)
                .isThrownBy(() -> StlFile.write(
                        folder.resolve("none").resolve("half.stl"), washer, "half A", Vec3.ZERO, Progress.SILENT));
    }
}
