package shotwright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import shotwright.finding.Severity;
import shotwright.mesh.SharedParts;
import shotwright.progress.Progress;

/** Real files beside the repository, against the volumes and areas their list states (measured by other programs). */
class SharedPartsIntakeTest {
    private static List<List<String>> manifest() throws IOException {
        List<List<String>> rows = new ArrayList<>();
        for (String line : Files.readAllLines(SharedParts.path("MANIFEST.csv"))) rows.add(split(line));
        return rows.subList(1, rows.size());
    }

    private static List<String> split(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (char c : line.toCharArray()) {
            if (c == '"') quoted = !quoted;
            else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else cell.append(c);
        }
        cells.add(cell.toString());
        return cells;
    }

    private static IntakeResult read(String name, Mend... mends) {
        Path file = SharedParts.path(name);
        return Intake.read(file, IntakeOptions.usual().withMends(mends), Progress.SILENT);
    }

    @TestFactory
    Stream<DynamicTest> volumeAndAreaAreThoseOfTheList() throws IOException {
        return manifest().stream()
                .filter(c -> !c.get(2).equals("STEP") && !c.get(24).isEmpty())
                .filter(c -> !c.getFirst().matches("(bad_|nonmanifold_|self_intersecting_).*|feature_block_inch.3mf"))
                .map(c -> DynamicTest.dynamicTest(c.getFirst(), () -> {
                    IntakeResult r = read(c.getFirst());
                    double v = Double.parseDouble(c.get(24)), a = Double.parseDouble(c.get(25));
                    assertThat(r.facts().volumeMm3()).isCloseTo(v, within(1e-5 * v));
                    assertThat(r.facts().surfaceAreaMm2()).isCloseTo(a, within(1e-5 * a));
                    assertThat(r.facts().openEdges()).isZero();
                    assertThat(r.facts().bodies()).isEqualTo(Integer.parseInt(c.get(19)));
                    assertThat(r.part()).isNotNull();
                }));
    }

    @TestFactory
    Stream<DynamicTest> badFilesEndInAPlainMessage() throws IOException {
        return manifest().stream()
                .map(List::getFirst)
                .filter(n -> n.matches("(bad_|nonmanifold_|self_intersecting_).*"))
                .map(n -> DynamicTest.dynamicTest(n, () -> {
                    long start = System.nanoTime();
                    try {
                        IntakeResult r = read(n);
                        assertThat(r.findings()).anyMatch(f -> f.severity() != Severity.NOTE);
                    } catch (IntakeException e) {
                        assertThat(e.getMessage()).startsWith(n).doesNotContain("\n");
                    }
                    assertThat((System.nanoTime() - start) * 1e-9).isLessThan(10);
                }));
    }

    @Test
    void theInchBlockIsRefusedButMeasured() {
        IntakeResult r = read("feature_block_inch.3mf");
        assertThat(r.part()).isNull();
        assertThat(r.facts().openEdges()).isEqualTo(18);
        assertThat(Samples.box(r).size().x()).isCloseTo(127, within(1e-9));
    }

    @Test
    void mendsBringTheWholePartBack() {
        Assumptions.assumeTrue(SharedParts.path("panel_hinge_half.stl") != null);
        assertThat(Samples.part(read("bad_mixed_winding.stl", Mend.WINDING))
                        .mass()
                        .volumeMm3())
                .isCloseTo(Samples.part(read("panel_hinge_half.stl")).mass().volumeMm3(), within(1e-9));
        assertThat(Samples.part(read("bad_inside_out.stl", Mend.FLIP)).mass().volumeMm3())
                .isCloseTo(Samples.part(read("lobed_thumb_nut.stl")).mass().volumeMm3(), within(1e-9));
    }
}
