package shotwright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import shotwright.geom.Vec3;
import shotwright.mesh.Edges;
import shotwright.mesh.MassProperties;
import shotwright.mesh.Solids;
import shotwright.mesh.TriMesh;
import shotwright.progress.Progress;

/** What holds for every format: the same solid gives the same part, faults give one plain message, limits and cancelling work. */
class ReaderContractTest {
    @TempDir
    @SuppressWarnings("NullAway.Init")
    Path folder;

    /** A format as a way to write a mesh. */
    record Format(String name, Function<TriMesh, byte[]> write) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Format> formats() {
        return Stream.of(
                new Format("STL, binary", Samples::binaryStl),
                new Format("STL, ASCII", m -> Samples.asciiStl(m).getBytes(StandardCharsets.UTF_8)),
                new Format("OBJ", m -> Samples.obj(m).getBytes(StandardCharsets.UTF_8)),
                new Format("3MF", m -> Samples.threeMf("millimeter", m)));
    }

    @ParameterizedTest
    @MethodSource("formats")
    void theSameSolidGivesTheSamePart(Format format) {
        for (TriMesh m : List.of(Samples.block(), Samples.washer(), Solids.sphere(new Vec3(3, 4, 5), 9, 3))) {
            IntakeResult r = Samples.read(folder, format.write().apply(m));
            Samples.assertNoStop(r);
            MassProperties mass = MassProperties.of(m);
            assertThat(r.facts().format()).isEqualTo(format.name());
            assertThat(r.facts().facets()).isEqualTo(m.facetCount());
            assertThat(r.facts().vertices()).isEqualTo(m.vertexCount());
            assertThat(r.facts().openEdges()).isZero();
            assertThat(r.facts().bodies()).isEqualTo(1);
            assertThat(r.facts().volumeMm3()).isCloseTo(mass.volumeMm3(), within(2e-6 * mass.volumeMm3()));
            assertThat(r.facts().surfaceAreaMm2())
                    .isCloseTo(mass.surfaceAreaMm2(), within(2e-6 * mass.surfaceAreaMm2()));
        }
    }

    @ParameterizedTest
    @MethodSource("formats")
    void aMissingFacetIsRefusedWithCountAndPlaceAndStillMeasured(Format format) {
        IntakeResult r = Samples.read(folder, format.write().apply(Samples.without(Samples.block(), 3)));
        assertThat(r.part()).isNull();
        assertThat(Samples.only(r, "open-edges").text())
                .contains("3 open edges")
                .contains("near x");
        assertThat(Samples.only(r, "open-edges").remedy()).contains("--mend holes");
        assertThat(r.facts().openEdges()).isEqualTo(3);
        assertThat(r.facts().unitReadings().getFirst().sizeMm()).isEqualTo(new Vec3(20, 30, 10));
    }

    @ParameterizedTest
    @MethodSource("formats")
    void insideOutIsRefusedAndTurnedOnRequest(Format format) {
        byte[] file = format.write().apply(Samples.block().flip());
        IntakeResult r = Samples.read(folder, file);
        assertThat(r.part()).isNull();
        assertThat(Samples.only(r, "inside-out").remedy()).contains("--mend flip");
        IntakeResult mended = Samples.read(folder, file, IntakeOptions.usual().withMends(Mend.FLIP));
        Samples.assertNoStop(mended);
        assertThat(Samples.part(mended).mass().volumeMm3()).isCloseTo(6000, within(1e-2));
    }

    @ParameterizedTest
    @MethodSource("formats")
    void twoBodiesAreAskedAboutAndCanBeChosen(Format format) {
        TriMesh two = Solids.together(Samples.washer(), Solids.box(new Vec3(40, 0, 0), new Vec3(60, 20, 20)));
        IntakeResult r = Samples.read(folder, format.write().apply(two));
        assertThat(r.facts().bodies()).isEqualTo(2);
        assertThat(Samples.only(r, "several-bodies").text())
                .contains("2 separate solids")
                .contains("8000 mm³");
        assertThat(Samples.part(r).mass().volumeMm3()).isCloseTo(8000, within(0.02));
        IntakeResult second = Samples.read(
                folder, format.write().apply(two), IntakeOptions.usual().withBody(2));
        assertThat(second.findings()).noneMatch(f -> f.code().equals("several-bodies"));
        assertThat(Samples.part(second).mesh().facetCount())
                .isEqualTo(Samples.washer().facetCount());
        IntakeResult third = Samples.read(
                folder, format.write().apply(two), IntakeOptions.usual().withBody(3));
        assertThat(third.part()).isNull();
        Samples.only(third, "no-such-body");
    }

    @ParameterizedTest
    @MethodSource("formats")
    void aClosedHollowIsAskedAboutAndFilled(Format format) {
        TriMesh hollow = Solids.together(
                Samples.block(),
                Solids.box(new Vec3(0, 10, 4), new Vec3(5, 15, 6)).flip());
        IntakeResult r = Samples.read(folder, format.write().apply(hollow));
        assertThat(r.facts().bodies()).isEqualTo(1);
        assertThat(r.facts().bodyList().getFirst().hollows()).isEqualTo(1);
        assertThat(r.facts().volumeMm3()).isCloseTo(5950, within(0.01));
        assertThat(Samples.part(r).mass().volumeMm3()).isCloseTo(6000, within(0.01));
        assertThat(Samples.only(r, "closed-hollow").text()).contains("50 mm³");
    }

    @ParameterizedTest
    @MethodSource("formats")
    void anyCutEndsInAMessageOrAFinding(Format format) {
        byte[] whole = format.write().apply(Samples.block());
        int told = 0;
        for (int n = 0; n < whole.length; n += Math.max(1, whole.length / 150)) {
            byte[] cut = Arrays.copyOf(whole, n);
            try {
                IntakeResult r = Samples.read(folder, cut);
                if (r.part() == null) assertThat(r.findings()).isNotEmpty();
                told++;
            } catch (IntakeException e) {
                assertThat(e.getMessage())
                        .startsWith("sample.bin")
                        .doesNotContain("\n")
                        .doesNotContain("Exception");
                assertThat(e.remedy()).isNotBlank();
                told++;
            }
        }
        assertThat(told).isGreaterThan(100);
    }

    @ParameterizedTest
    @MethodSource("formats")
    void limitsAreNamed(Format format) {
        byte[] file = format.write().apply(Samples.washer());
        Limits u = Limits.USUAL;
        assertThatExceptionOfType(IntakeException.class)
                .isThrownBy(() -> Samples.read(
                        folder,
                        file,
                        IntakeOptions.usual().withLimits(new Limits(1000, 100, 100, 1 << 20, 200, 16, 10, 60))))
                .withMessageContaining("MiB");
        assertThatExceptionOfType(IntakeException.class)
                .isThrownBy(() -> Samples.read(
                        folder,
                        file,
                        IntakeOptions.usual()
                                .withLimits(new Limits(
                                        u.maxByteCount(), 100, 1000, u.maxInflatedByteCount(), 200, 16, 10, 60))))
                .withMessageContaining("more than 100 facets");
        assertThatExceptionOfType(IntakeException.class)
                .isThrownBy(() -> Samples.read(
                        folder,
                        file,
                        IntakeOptions.usual()
                                .withLimits(new Limits(
                                        u.maxByteCount(), 1000, 100, u.maxInflatedByteCount(), 200, 16, 10, 60))))
                .withMessageContaining("more than 100 corner points");
        assertThatExceptionOfType(IntakeException.class)
                .isThrownBy(() -> Samples.read(
                        folder,
                        file,
                        IntakeOptions.usual()
                                .withLimits(new Limits(
                                        u.maxByteCount(), 1000, 1000, u.maxInflatedByteCount(), 200, 16, 10, 1e-9))))
                .withMessageContaining("took longer than");
    }

    @ParameterizedTest
    @MethodSource("formats")
    void aPersonCanStopTheReading(Format format) throws IOException {
        Path file = folder.resolve("part");
        Files.write(file, format.write().apply(Samples.washer()));
        Progress stop = (doing, share) -> {
            if (doing.startsWith("reading") || doing.startsWith("measuring")) throw new Progress.Cancelled();
        };
        assertThatExceptionOfType(Progress.Cancelled.class)
                .isThrownBy(() -> Intake.read(file, IntakeOptions.usual(), stop));
    }

    @Test
    void whatIsNoPartFileIsNamed() {
        assertThatExceptionOfType(IntakeException.class)
                .isThrownBy(() -> Samples.read(folder, "%PDF-1.7 and so on"))
                .withMessageContaining("PDF document");
        assertThatExceptionOfType(IntakeException.class)
                .isThrownBy(() -> Samples.read(folder, "hello there"))
                .withMessageContaining("\"hello there\"");
        assertThatExceptionOfType(IntakeException.class)
                .isThrownBy(() -> Samples.read(folder, new byte[] {1, 2, (byte) 0xfe, 0}))
                .withMessageContaining("01 02 fe 00");
        assertThatExceptionOfType(IntakeException.class)
                .isThrownBy(() -> Samples.read(folder, "ISO-10303-21;\nHEADER;"))
                .withMessageContaining("line 2: the file ends too early; it was cut off");
        assertThatExceptionOfType(IntakeException.class)
                .isThrownBy(() -> Samples.read(folder, new byte[0]))
                .withMessageContaining("0 bytes");
        assertThatExceptionOfType(IntakeException.class)
                .isThrownBy(() -> Intake.read(folder, IntakeOptions.usual(), Progress.SILENT))
                .withMessageContaining("folder");
        assertThatExceptionOfType(IntakeException.class)
                .isThrownBy(() -> Intake.read(folder.resolve("none.stl"), IntakeOptions.usual(), Progress.SILENT))
                .withMessageContaining("no such file");
    }

    @Test
    void mixedWindingIsRefusedAndTurnedOnRequest() {
        TriMesh mixed = Facets.turn(Samples.washer(), f -> f % 5 == 0);
        IntakeResult r = Samples.read(folder, Samples.binaryStl(mixed));
        assertThat(Samples.only(r, "winding-mixed").remedy())
                .contains("--mend winding")
                .contains("77 facets");
        IntakeResult mended = Samples.read(
                folder, Samples.binaryStl(mixed), new IntakeOptions(null, Set.of(Mend.WINDING), null, Limits.USUAL));
        Samples.assertNoStop(mended);
        double v = MassProperties.of(Samples.washer()).volumeMm3();
        assertThat(Samples.part(mended).mass().volumeMm3()).isCloseTo(v, within(1e-5 * v));
    }

    @Test
    void aMissingRingFaceComesBackAsARing() {
        TriMesh washer = Samples.washer();
        TriMesh open = Facets.keep(
                washer,
                f -> washer.centroid(f).z() < 3.99
                        || Math.abs(washer.doubleAreaNormal(f).unit().z()) < 0.9);
        assertThat(open.facetCount()).isEqualTo(washer.facetCount() - 96);
        byte[] file = Samples.binaryStl(open);
        assertThat(Samples.only(Samples.read(folder, file), "open-edges").remedy())
                .contains("96 flat facets");
        IntakeResult r = Samples.read(folder, file, IntakeOptions.usual().withMends(Mend.HOLES));
        Samples.assertNoStop(r);
        double v = MassProperties.of(washer).volumeMm3(),
                a = MassProperties.of(washer).surfaceAreaMm2();
        assertThat(Samples.part(r).mass().volumeMm3()).isCloseTo(v, within(1e-5 * v));
        assertThat(Samples.part(r).mass().surfaceAreaMm2()).isCloseTo(a, within(1e-5 * a));
    }

    @Test
    void aBentHoleIsNotClosedByGuessing() {
        TriMesh ball = Solids.sphere(Vec3.ZERO, 10, 3);
        TriMesh open = Facets.keep(ball, f -> ball.centroid(f).x() < 7);
        IntakeResult r = Samples.read(folder, Samples.binaryStl(open));
        assertThat(Samples.only(r, "open-edges").remedy()).doesNotContain("--mend");
        IntakeResult tried = Samples.read(
                folder, Samples.binaryStl(open), IntakeOptions.usual().withMends(Mend.HOLES));
        assertThat(tried.part()).isNull();
    }

    /** A, B and C in corners of a 2 × 2 checker of posts, each 10 high and 10 wide: A and C touch in a line. */
    private static TriMesh touching(Vec3... corners) {
        Solids.Soup soup = new Solids.Soup();
        for (Vec3 c : corners) {
            TriMesh m = Solids.box(c, c.plus(new Vec3(10, 10, 10)));
            for (int f = 0; f < m.facetCount(); f++)
                soup.add(m.cornerPoint(f, 0), m.cornerPoint(f, 1), m.cornerPoint(f, 2));
        }
        return soup.mesh();
    }

    @Test
    void blocksThatTouchInALineAreTwoBodies() {
        IntakeResult r = Samples.read(folder, Samples.binaryStl(touching(Vec3.ZERO, new Vec3(10, 10, 0))));
        assertThat(r.facts().nonManifoldEdges()).isEqualTo(1);
        assertThat(Samples.only(r, "touching-walls").atMm()).isEqualTo(new Vec3(10, 10, 5));
        assertThat(r.facts().bodies()).isEqualTo(2);
        assertThat(Samples.part(r).mass().volumeMm3()).isCloseTo(1000, within(1e-9));
        assertThat(Edges.of(Samples.part(r).mesh()).nonManifold()).isEmpty();
    }

    @Test
    void aSolidThatTouchesItselfInALineStaysOne() {
        // three quarters of a 20 × 20 × 10 slab round a corner that is bridged above: an arch standing on two posts
        // that touch
        Solids.Soup soup = new Solids.Soup();
        boolean[][][] full = new boolean[4][4][4];
        full[1][1][1] = full[2][2][1] = true;
        for (int x = 1; x <= 2; x++) for (int y = 1; y <= 2; y++) full[x][y][2] = true;
        int[][] steps = {{1, 0, 0}, {-1, 0, 0}, {0, 1, 0}, {0, -1, 0}, {0, 0, 1}, {0, 0, -1}};
        for (int x = 1; x <= 2; x++)
            for (int y = 1; y <= 2; y++)
                for (int z = 1; z <= 2; z++) {
                    if (!full[x][y][z]) continue;
                    TriMesh m = Solids.box(
                            new Vec3(10 * x, 10 * y, 10 * z), new Vec3(10 * x + 10, 10 * y + 10, 10 * z + 10));
                    for (int f = 0; f < 12; f++) {
                        Vec3 n = m.doubleAreaNormal(f).unit();
                        for (int[] s : steps)
                            if (n.equals(new Vec3(s[0], s[1], s[2]).plus(Vec3.ZERO))
                                    && !full[x + s[0]][y + s[1]][z + s[2]])
                                soup.add(m.cornerPoint(f, 0), m.cornerPoint(f, 1), m.cornerPoint(f, 2));
                    }
                }
        IntakeResult r = Samples.read(folder, Samples.binaryStl(soup.mesh()));
        Samples.assertNoStop(r);
        Samples.only(r, "touching-walls");
        assertThat(r.facts().nonManifoldEdges()).isEqualTo(1);
        assertThat(r.facts().bodies()).isEqualTo(1);
        assertThat(r.facts().volumeMm3()).isCloseTo(6000, within(1e-9));
        assertThat(Edges.of(Samples.part(r).mesh()).nonManifold()).isEmpty();
    }

    @Test
    void aFinWithoutThicknessIsRefused() {
        TriMesh block = Samples.block();
        double[] xyz = java.util.Arrays.copyOf(block.copyXyz(), 27);
        xyz[24] = 40;
        int a = block.corner(0, 0), b = block.corner(0, 1);
        int[] tri = java.util.Arrays.copyOf(block.copyTri(), 42);
        System.arraycopy(new int[] {a, b, 8, b, a, 8}, 0, tri, 36, 6);
        IntakeResult r = Samples.read(folder, Samples.binaryStl(new TriMesh(xyz, tri)));
        assertThat(r.part()).isNull();
        assertThat(Samples.only(r, "non-manifold-edges").text()).contains("1 edge is shared");
    }

    @Test
    void aSurfaceThatRunsThroughItselfIsRefused() {
        double[][] ring = {{0, 0}, {20, 0}, {20, 20}, {8, 5}, {12, 5}, {0, 20}};
        Solids.Soup soup = new Solids.Soup();
        for (int i = 0; i < 6; i++) {
            Vec3 p = new Vec3(ring[i][0], ring[i][1], 0), q = new Vec3(ring[(i + 1) % 6][0], ring[(i + 1) % 6][1], 0);
            soup.quad(p, q, new Vec3(q.x(), q.y(), 8), new Vec3(p.x(), p.y(), 8));
            soup.add(new Vec3(10, 1, 8), new Vec3(p.x(), p.y(), 8), new Vec3(q.x(), q.y(), 8));
            soup.add(new Vec3(10, 1, 0), q, p);
        }
        IntakeResult r = Samples.read(folder, Samples.binaryStl(soup.mesh()));
        assertThat(r.facts().openEdges()).isZero();
        assertThat(r.part()).isNull();
        Vec3 at = java.util.Objects.requireNonNull(
                Samples.only(r, "self-crossing").atMm());
        assertThat(at.x()).isCloseTo(10, within(3.0));
        assertThat(at.y()).isCloseTo(7, within(3.0));
    }

    @Test
    void farFromTheOriginSinglePrecisionIsNotTrusted() {
        TriMesh far = Samples.block().transform(shotwright.geom.Transform.translate(new Vec3(2e7, 0, 0)));
        IntakeResult r = Samples.read(folder, Samples.binaryStl(far));
        assertThat(Samples.only(r, "far-from-origin").text()).contains("step by 2 mm");
        assertThat(r.part()).isNull();
        Samples.assertNoStop(Samples.read(folder, Samples.obj(far)));
    }
}
