package shotwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shotwright.layout.LayoutResult;
import shotwright.machining.MachiningResult;
import shotwright.machining.MachiningResult.Clamping;
import shotwright.machining.MachiningResult.HalfWork;
import shotwright.machining.gcode.Dialect;
import shotwright.machining.gcode.GcodeReader;
import shotwright.machining.gcode.Listing;
import shotwright.mold.MoldResult;
import shotwright.progress.Progress;
import shotwright.report.JobPapers;
import shotwright.report.SummaryJson;

/** The milling station on a plain drafted block: one pocket in one half, the other half flat. */
class MillingStationTest {
    private static final double LONG_MM = 24, WIDE_MM = 16, HIGH_MM = 5, DRAFT_DEG = 3;

    private static Path part;
    private static Path folder;
    private static JobResult job;

    @BeforeAll
    static void runTheLine(@TempDir Path at) throws IOException {
        part = Files.write(at.resolve("block.stl"), block());
        folder = at.resolve("job");
        JobFolder files = JobFolder.open(folder);
        job = new Line(Shop.standard()).run(part, card(List.of("abs")), Station.SHEET, files, Progress.SILENT);
        JobPapers.write(job, files, Progress.SILENT);
    }

    /** A block whose four sides lean in by the draft from its bottom up. */
    private static byte[] block() {
        double in = HIGH_MM * Math.tan(Math.toRadians(DRAFT_DEG));
        double[][] p = new double[8][];
        for (int k = 0; k < 8; k++) {
            double off = k < 4 ? 0 : in;
            boolean right = k % 4 == 1 || k % 4 == 2, back = k % 4 >= 2;
            p[k] = new double[] {right ? LONG_MM - off : off, back ? WIDE_MM - off : off, k < 4 ? 0 : HIGH_MM};
        }
        int[][] faces = {
            {0, 2, 1}, {0, 3, 2}, {4, 5, 6}, {4, 6, 7}, {0, 1, 5}, {0, 5, 4}, {1, 2, 6}, {1, 6, 5}, {2, 3, 7},
            {2, 7, 6}, {3, 0, 4}, {3, 4, 7}
        };
        ByteBuffer b = ByteBuffer.allocate(84 + 50 * faces.length).order(ByteOrder.LITTLE_ENDIAN);
        b.position(80).putInt(faces.length);
        for (int f = 0; f < faces.length; f++) {
            b.position(84 + 50 * f + 12);
            for (int corner : faces[f]) for (double v : p[corner]) b.putFloat((float) v);
        }
        return b.array();
    }

    private static JobCard card(List<String> resins) {
        return new JobCard(
                JobCard.KIND,
                "Block",
                null,
                "mm",
                Set.of(),
                null,
                List.of(0.0, 0.0, 1.0),
                resins,
                "electric-10t",
                null,
                1,
                List.of(50),
                null,
                List.of(
                        "flat-6.0x25",
                        "flat-4.0x12",
                        "flat-3.0x9",
                        "flat-2.0x6",
                        "ball-3.0x15",
                        "taper-3deg-tip2",
                        "taper-3deg-tip1",
                        "v-90deg-6",
                        "spot-90deg-6",
                        "drill-3.8x30",
                        "drill-4.8x34",
                        "drill-5.8x38",
                        "reamer-4.0h7"),
                null,
                null,
                LayoutCard.EMPTY,
                null,
                null,
                null,
                null);
    }

    private static MachiningResult machining() {
        return Objects.requireNonNull(job.machining());
    }

    private static LayoutResult layout() {
        return Objects.requireNonNull(job.layout());
    }

    private static MoldResult mold() {
        return Objects.requireNonNull(job.mold());
    }

    /** What comes off a half is its sawn block less the half as molded (closed form), but for the step at the jaws and what the bench does. */
    @Test
    void theProgramsTakeOffWhatTheHalfLeaves() {
        for (HalfWork h : machining().halves()) {
            var stock = h.clampings().getFirst().setup().stock().size();
            double blank = stock.x() * stock.y() * stock.z();
            double left = blank
                    - h.clampings().stream().mapToDouble(Clamping::removedMm3).sum();
            double half = (h.half().equals("A") ? mold().a() : mold().b()).volumeMm3();
            assertThat(left).as("half %s", h.half()).isCloseTo(half, within(0.03 * half));
        }
    }

    @Test
    void onlyProvedProgramsLieInTheFolder() throws IOException {
        List<String> given = new ArrayList<>();
        for (Clamping c : machining().clampings()) {
            assertThat(c.clean()).isEqualTo(!c.files().isEmpty());
            c.files().forEach(f -> given.add(f.name()));
            if (!c.clean())
                assertThat(job.findings())
                        .anyMatch(f -> f.code().equals("program-not-proved")
                                && f.text().contains(c.setup().name()));
        }
        assertThat(given).isNotEmpty();
        try (Stream<Path> files = Files.list(folder.resolve("programs"))) {
            assertThat(files.map(f -> f.getFileName().toString())).containsExactlyInAnyOrderElementsOf(given);
        }
        for (Clamping c : machining().clampings()) {
            if (c.files().isEmpty()) continue;
            String text = Files.readString(
                    folder.resolve("programs").resolve(c.files().getFirst().name()));
            Listing read = new GcodeReader(Dialect.DwellUnit.SECONDS)
                    .read("p", text, c.setup().stock(), c.setup().stock().max().z() + 80);
            assertThat(read.program().operations()).hasSameSizeAs(c.operations());
        }
    }

    /** Gouge and contact as the issue of the mold asks: 0.008 mm, none in stock, none touching (handbook, machining 8.2). */
    @Test
    void aCleanProofHoldsItsLimits() {
        for (HalfWork h : machining().halves()) {
            if (!h.proved()) continue;
            assertThat(h.proof().maxGougeMm()).isLessThanOrEqualTo(0.008);
            assertThat(h.proof().rapidInStock() + h.proof().contacts()).isZero();
        }
    }

    /** The keys scripts read, names and kinds as published. */
    @Test
    void theSummaryHoldsThePublishedKeys() {
        JsonNode n = SummaryJson.tree(job).path("machining");
        assertThat(n.path("setups").isInt()).isTrue();
        assertThat(n.path("timeS").isNumber()).isTrue();
        assertThat(n.path("timeBandS").size()).isEqualTo(2);
        assertThat(n.path("timeBandS").get(0).asDouble())
                .isLessThan(n.path("timeS").asDouble());
        assertThat(n.path("timeBandS").get(1).asDouble())
                .isGreaterThan(n.path("timeS").asDouble());
        assertThat(n.path("cutters").get(0).isTextual()).isTrue();
        assertThat(n.path("findings").isArray()).isTrue();
        assertThat(n.path("halves")).hasSize(2);
        for (JsonNode h : n.path("halves")) {
            assertThat(h.path("name").asText()).isIn("A", "B");
            assertThat(h.path("operations").asInt()).isPositive();
            assertThat(h.path("moves").asInt()).isPositive();
            for (String key : List.of("maxGougeMm", "maxLeftoverMm", "leftoverP95Mm", "unreachableMm2"))
                assertThat(h.path("proof").path(key).isNumber()).as(key).isTrue();
            for (String key : List.of("rapidInStock", "contacts"))
                assertThat(h.path("proof").path(key).isInt()).as(key).isTrue();
        }
    }

    @Test
    void aCutterHasOneNumberInTheWholeMold() {
        List<MachiningResult.LoadedCutter> all = machining().cutters();
        assertThat(all.stream().map(MachiningResult.LoadedCutter::id)).doesNotHaveDuplicates();
        assertThat(all.stream().map(MachiningResult.LoadedCutter::number)).doesNotHaveDuplicates();
        for (Clamping c : machining().clampings())
            for (var o : c.operations())
                assertThat(all.stream()
                                .filter(t -> t.number() == o.toolNumber())
                                .map(MachiningResult.LoadedCutter::id))
                        .containsExactly(o.cutterId());
    }

    @Test
    void anotherSecondResinLeavesTheProgramsValid() {
        JobResult again = new Line(Shop.standard())
                .run(part, card(List.of("abs", "pp-copo")), Station.MILLING, JobFolder.open(folder), Progress.SILENT);
        assertThat(again.takenUp()).contains(Station.MILLING).doesNotContain(Station.FILL);
        assertThat(again.machining()).isEqualTo(machining());
    }

    @Test
    void theQuoteTakesTheHoursOfProvedPrograms() {
        boolean estimated = job.findings().stream().anyMatch(f -> f.code().equals("milling-estimated"));
        assertThat(estimated).isEqualTo(!machining().proved());
    }

    @Test
    void theSheetsNameZeroUnitAndEveryCutter() throws IOException {
        String sheets = Files.readString(folder.resolve("setup-sheets.md"));
        String kit = Files.readString(folder.resolve("kit-list.md"));
        assertThat(sheets).contains("millimetres, G21").contains("G54").contains("G55");
        for (Clamping c : machining().clampings())
            for (var o : c.operations())
                assertThat(sheets).contains("| " + o.number() + " | " + o.words() + " | T" + o.toolNumber() + " ");
        for (var t : machining().cutters()) assertThat(kit).contains("| " + t.number() + " | ");
        assertThat(layout().dowels()).isNotEmpty();
        assertThat(kit).contains("× " + layout().dowels().getFirst().dowel());
    }
}
