package shotwright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shotwright.geom.Vec3;
import shotwright.mesh.Solids;
import shotwright.mesh.TriMesh;

class StlTest {
    @TempDir
    @SuppressWarnings("NullAway.Init")
    Path folder;

    private final TriMesh block = Samples.block();

    private void assertBlock(IntakeResult r, String format) {
        assertThat(r.facts().format()).isEqualTo(format);
        Samples.assertNoStop(r);
        assertThat(Samples.part(r).mass().volumeMm3()).isCloseTo(6000, within(1e-9));
    }

    @Test
    void titlesDoNotDecideTheFormat() {
        for (String title :
                new String[] {"solid written binary", "SOLID", "<xml>", "\u00ff\u00e4\u00f6", "PK", "v 1 2 3\nf"})
            assertBlock(Samples.read(folder, Samples.binaryStl(title, 12, block)), "STL, binary");
    }

    @Test
    void aWrongCountIsPutRightWhenTheSizeLeavesOneReading() {
        for (int count : new int[] {0, 3, 999_999, -1}) {
            IntakeResult r = Samples.read(folder, Samples.binaryStl("x", count, block));
            assertBlock(r, "STL, binary");
            assertThat(Samples.only(r, "facet-count").text()).contains("12 whole facets");
        }
    }

    @Test
    void bytesBehindTheLastFacetAreLeftAlone() {
        byte[] longer = Arrays.copyOf(Samples.binaryStl(block), 84 + 600 + 13);
        IntakeResult r = Samples.read(folder, longer);
        assertBlock(r, "STL, binary");
        assertThat(Samples.only(r, "facet-count").text()).contains("13 more bytes");
    }

    @Test
    void aCutFileSaysWhere() {
        byte[] cut = Arrays.copyOf(Samples.binaryStl(block), 84 + 500 + 20);
        assertThatExceptionOfType(IntakeException.class)
                .isThrownBy(() -> Samples.read(folder, cut))
                .withMessageContaining("facet 11, byte 584")
                .withMessageContaining("cut short");
    }

    @Test
    void asciiInAnyDress() {
        String s = Samples.asciiStl(block);
        assertBlock(Samples.read(folder, s.toUpperCase(Locale.ROOT)), "STL, ASCII");
        assertBlock(Samples.read(folder, s.replaceAll("\\R", "\r\n")), "STL, ASCII");
        assertBlock(Samples.read(folder, s.replaceAll("\\R", "\r")), "STL, ASCII");
        assertBlock(Samples.read(folder, "\ufeff  \n" + s.replace(" ", "\t ")), "STL, ASCII");
        assertBlock(Samples.read(folder, s.replace("solid piece", "solid a facet of vertex names")), "STL, ASCII");
    }

    @Test
    void severalSectionsAreOneSurface() {
        TriMesh lower = Facets.keep(block, f -> f % 2 == 0), upper = Facets.keep(block, f -> f % 2 == 1);
        IntakeResult r = Samples.read(folder, Samples.asciiStl(lower, upper));
        assertBlock(r, "STL, ASCII");
        assertThat(r.facts().notes()).anyMatch(n -> n.contains("2 sections"));
    }

    @Test
    void faultsInAsciiNameTheLine() {
        String s = Samples.asciiStl(block);
        String comma = s.replaceFirst("vertex (\\S)\\.", "vertex $1,").replaceFirst("vertex (-?\\d)\\.", "vertex $1,");
        assertThatExceptionOfType(IntakeException.class)
                .isThrownBy(() -> Samples.read(folder, comma))
                .withMessageContaining("line 4")
                .withMessageContaining("decimal point");
        assertThatExceptionOfType(IntakeException.class)
                .isThrownBy(() -> Samples.read(folder, s.replaceFirst("endloop", "endlop")))
                .withMessageContaining("line 7")
                .withMessageContaining("\"endlop\"");
        assertThatExceptionOfType(IntakeException.class)
                .isThrownBy(() -> Samples.read(folder, s.substring(0, s.lastIndexOf("endloop"))))
                .withMessageContaining("inside facet 12");
        IntakeResult r = Samples.read(folder, s.substring(0, s.indexOf("endsolid")));
        Samples.only(r, "end-missing");
    }

    @Test
    void numbersThatAreNoneAreRefusedAndTheRestMeasured() {
        String s = Samples.asciiStl(block).replaceFirst("vertex \\S+", "vertex nan");
        IntakeResult r = Samples.read(folder, s);
        assertThat(r.part()).isNull();
        assertThat(Samples.only(r, "not-finite").text()).contains("line 2");
        assertThat(r.facts().facets()).isEqualTo(11);
        byte[] b = Samples.binaryStl(block);
        Arrays.fill(b, 84 + 50 + 12, 84 + 50 + 16, (byte) 0x7f);
        assertThat(Samples.only(Samples.read(folder, b), "not-finite").text()).contains("facet 2");
    }

    @Test
    void collapsedFacetsAreDroppedAndCounted() {
        String s = Samples.asciiStl(block);
        String thin = "facet normal 0 0 0 outer loop vertex 0 0 0 vertex 0 0 0 vertex 1 1 1 endloop endfacet\n";
        IntakeResult r = Samples.read(folder, s.replace("endsolid", thin + "endsolid"));
        assertBlock(r, "STL, ASCII");
        assertThat(r.facts().facets()).isEqualTo(12);
        assertThat(r.facts().notes()).anyMatch(n -> n.startsWith("Dropped 1 facet"));
    }

    @Test
    void minusZeroIsZero() {
        TriMesh m = Solids.box(Vec3.ZERO, new Vec3(10, 10, 10));
        String s = Samples.asciiStl(m);
        int half = s.length() / 2;
        String mixed = s.substring(0, half) + s.substring(half).replace(" 0.000000000e+00", " -0.0");
        IntakeResult r = Samples.read(folder, mixed);
        Samples.assertNoStop(r);
        assertThat(r.facts().vertices()).isEqualTo(8);
    }

    @Test
    void cornersOneRoundingStepApartAreJoined() {
        TriMesh ball = Solids.sphere(new Vec3(100, 50, 20), 12, 3);
        byte[] b = Samples.binaryStl(ball);
        var buffer = java.nio.ByteBuffer.wrap(b).order(java.nio.ByteOrder.LITTLE_ENDIAN);
        for (int f = 0; f < ball.facetCount(); f += 3) {
            int at = 84 + 50 * f + 12 + 12 * (f % 3);
            buffer.putFloat(at, Math.nextUp(buffer.getFloat(at)));
        }
        IntakeResult r = Samples.read(folder, b);
        Samples.assertNoStop(r);
        assertThat(r.facts().notes()).anyMatch(n -> n.contains("rounding of the file's numbers"));
        assertThat(r.facts().vertices()).isEqualTo(ball.vertexCount());
    }

    @Test
    void aFileOfBlanksOrWordsEndsInAMessage() {
        for (String s : new String[] {"solid", "solid\n", "solid x\nendsolid x\n", "facet", " \n \n"}) {
            try {
                IntakeResult r = Samples.read(folder, s.getBytes(StandardCharsets.UTF_8));
                Samples.only(r, "no-facets");
            } catch (IntakeException e) {
                assertThat(e.remedy()).isNotBlank();
            }
        }
    }
}
