package shotwright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shotwright.geom.Vec3;
import shotwright.measure.LengthUnit;
import shotwright.mesh.TriMesh;

class ThreeMfTest {
    @TempDir
    @SuppressWarnings("NullAway.Init")
    Path folder;

    private final String mesh = Samples.meshXml(Samples.block());

    private IntakeResult read(String model) {
        return Samples.read(folder, Samples.package3mf(model, Map.of()));
    }

    private void assertFault(String model, String... words) {
        assertThatExceptionOfType(IntakeException.class)
                .isThrownBy(() -> read(model))
                .satisfies(e -> {
                    for (String w : words) assertThat(e.getMessage()).contains(w);
                });
    }

    @Test
    void unitsAreThoseOfTheSpecification() {
        Object[][] rows = {
            {"micron", LengthUnit.MICRON, 20e3},
            {"millimeter", LengthUnit.MM, 20.0},
            {"centimeter", LengthUnit.CM, 2.0},
            {"inch", LengthUnit.IN, 20 / 25.4},
            {"foot", LengthUnit.FT, 20 / 304.8},
            {"meter", LengthUnit.M, 0.02}
        };
        for (Object[] row : rows) {
            TriMesh m = Samples.scaled(Samples.block(), (Double) row[2] / 20);
            IntakeResult r = Samples.read(folder, Samples.threeMf((String) row[0], m));
            Samples.assertNoStop(r);
            assertThat(r.facts().unitTaken()).isEqualTo(row[1]);
            assertThat(r.facts().volumeMm3()).isCloseTo(6000, within(1e-7));
        }
        assertThat(read(Samples.model("", Samples.object(1, "a", mesh), "<item objectid=\"1\"/>"))
                        .facts()
                        .unitTaken())
                .isEqualTo(LengthUnit.MM);
        assertFault(Samples.model("unit=\"league\"", "", ""), "league");
    }

    @Test
    void aUnitGivenForAFileThatStatesItsOwnIsNoted() {
        byte[] file = Samples.threeMf("millimeter", Samples.block());
        IntakeResult r = Samples.read(folder, file, IntakeOptions.usual().withUnit(LengthUnit.IN));
        assertThat(Samples.only(r, "unit-ignored").text()).contains("millimetres");
        assertThat(r.facts().volumeMm3()).isCloseTo(6000, within(1e-9));
    }

    @Test
    void componentsNestAndMirror() {
        String inner = Samples.object(1, "leaf", mesh);
        // x' = −x, then up by 100
        String middle = Samples.object(
                2, "", "<components><component objectid=\"1\" transform=\"-1 0 0 0 1 0 0 0 1 0 0 100\"/></components>");
        // a quarter turn about z: x' = −y, y' = x
        String outer = Samples.object(
                3,
                "outer",
                "<components><component objectid=\"2\" transform=\"0 1 0 -1 0 0 0 0 1 7 0 0\"/></components>");
        IntakeResult r = read(Samples.model(
                "", inner + middle + outer, "<item objectid=\"3\" transform=\"2 0 0 0 2 0 0 0 2 0 0 0\"/>"));
        Samples.assertNoStop(r);
        assertThat(r.facts().volumeMm3()).isCloseTo(48000, within(1e-6));
        // block −5…15, 2…32, 1…11 → x −15…5, z 101…111 → x' −y+7: −25…5, y' −15…5 → doubled
        assertThat(Samples.box(r).min()).isEqualTo(new Vec3(-50, -30, 202));
        assertThat(Samples.box(r).max()).isEqualTo(new Vec3(10, 10, 222));
        assertThat(r.facts().bodyList().getFirst().name()).isEqualTo("leaf");
    }

    @Test
    void objectsInOtherModelEntriesAreFollowed() {
        String root = Samples.model(
                "unit=\"millimeter\" xmlns:p=\"" + Samples.PRODUCTION + "\" requiredextensions=\"p\"",
                Samples.object(
                        5,
                        "set",
                        "<components><component objectid=\"1\" p:path=\"/3D/other.model\"/>"
                                + "<component objectid=\"1\" p:path=\"/3D/other.model\" transform=\"1 0 0 0 1 0 0 0 1 50 0 0\"/></components>"),
                "<item objectid=\"5\"/>");
        String other = Samples.model(
                "unit=\"centimeter\"",
                Samples.object(1, "cm", Samples.meshXml(Samples.scaled(Samples.block(), 0.1))),
                "");
        IntakeResult r = Samples.read(folder, Samples.package3mf(root, Map.of("3D/other.model", other)));
        Samples.assertNoStop(r);
        assertThat(r.facts().bodies()).isEqualTo(2);
        assertThat(r.facts().volumeMm3()).isCloseTo(12000, within(1e-6));
        assertThat(Samples.box(r).max().x()).isCloseTo(65, within(1e-9));
    }

    @Test
    void bodiesThatTouchStayApart() {
        String two = "<item objectid=\"1\"/><item objectid=\"1\" transform=\"1 0 0 0 1 0 0 0 1 20 0 0\"/>";
        IntakeResult r = read(Samples.model("", Samples.object(1, "twin", mesh), two));
        assertThat(r.facts().bodies()).isEqualTo(2);
        assertThat(r.facts().nonManifoldEdges()).isZero();
    }

    @Test
    void supportsAreLeftOutAndUnbuiltObjectsToo() {
        String objects = Samples.object(1, "a", mesh)
                + Samples.object(2, "b", mesh).replace("type=\"model\"", "type=\"support\"")
                + Samples.object(3, "c", mesh);
        IntakeResult r = read(Samples.model("", objects, "<item objectid=\"1\"/><item objectid=\"2\"/>"));
        assertThat(r.facts().bodies()).isEqualTo(1);
        assertThat(r.facts().notes()).anyMatch(n -> n.contains("supports"));
    }

    @Test
    void entitiesAreNeverResolved() {
        String evil = Samples.model("", Samples.object(1, "a", mesh), "<item objectid=\"1\"/>")
                .replace("<model", "<!DOCTYPE model [<!ENTITY x SYSTEM \"file:///etc/hostname\">]><model");
        assertFault(evil, "3D/part.model, line 1", "entity");
        assertFault(
                evil.replace("SYSTEM \"file:///etc/hostname\"", "\"aaaa\"").replace("<resources>", "<resources>&x;"),
                "entity");
    }

    @Test
    void paddingIsRefusedWithoutFillingTheMemory() {
        String blanks = Samples.model("", " ".repeat(6 << 20) + Samples.object(1, "a", mesh), "<item objectid=\"1\"/>");
        assertFault(blanks, "without a single element");
        String many =
                Samples.model("", "<x/>".repeat(9 << 20) + Samples.object(1, "a", mesh), "<item objectid=\"1\"/>");
        assertFault(many, "200 times its size");
    }

    @Test
    void endlessNestingEnds() {
        String self = Samples.object(1, "a", "<components><component objectid=\"1\"/></components>");
        assertFault(Samples.model("", self, "<item objectid=\"1\"/>"), "nested deeper than 16");
        StringBuilder doubling = new StringBuilder(Samples.object(1, "a", mesh));
        for (int i = 2; i <= 16; i++) {
            String c = "<component objectid=\"" + (i - 1) + "\"/>";
            doubling.append(Samples.object(i, "a", "<components>" + c + c + c + "</components>"));
        }
        assertFault(Samples.model("", doubling.toString(), "<item objectid=\"16\"/>"), "more than 10000 objects");
        assertFault(Samples.model("", "<a>".repeat(5000) + "</a>".repeat(5000), ""), "nested deeper");
    }

    @Test
    void faultsNameEntryAndLine() {
        String good = Samples.model("", "\n" + Samples.object(1, "a", mesh), "<item objectid=\"1\"/>");
        assertFault(good.replaceFirst("v2=\"\\d+\"", "v2=\"8\""), "3D/part.model, line 2", "vertex 8");
        assertFault(good.replaceFirst("v2=\"\\d+\"", "v2=\"-1\""), "no whole number");
        assertFault(good.replaceFirst(" x=\"[^\"]*\"", ""), "no attribute x");
        assertFault(good.replaceFirst(" x=\"[^\"]*\"", " x=\"1,5\""), "no number");
        assertFault(good.replace("<item objectid=\"1\"/>", "<item objectid=\"7\"/>"), "object 7");
        assertFault(good.replace("<item objectid=\"1\"/>", "<item objectid=\"1\" transform=\"1 2 3\"/>"), "twelve");
        assertFault(
                good.replace("<item objectid=\"1\"/>", "<item objectid=\"1\" transform=\"0 0 0 0 1 0 0 0 1 0 0 0\"/>"),
                "flattens");
        assertFault(good.replace("</mesh>", ""), "well-formed");
        assertFault(good.replace(Samples.CORE, "urn:other"), "3MF model");
        assertFault(
                good.replace("<model ", "<model xmlns:q=\"urn:q\" requiredextensions=\"q\" "), "extension", "urn:q");
    }

    @Test
    void namesInTheArchiveNeverLeaveIt() {
        String root = Samples.model(
                "xmlns:p=\"" + Samples.PRODUCTION + "\"",
                "",
                "<item objectid=\"1\" p:path=\"/../../../../etc/hostname\"/>");
        assertFault(root, "does not hold it");
    }

    @Test
    void anArchiveWithoutAModelIsNamed() {
        Map<String, String> letters = new LinkedHashMap<>();
        letters.put("word/document.xml", "<w/>");
        assertThatExceptionOfType(IntakeException.class)
                .isThrownBy(() -> Samples.read(folder, Samples.zip(letters)))
                .withMessageContaining("without a 3MF model");
        letters.put("deep/one.model", Samples.model("", Samples.object(1, "a", mesh), ""));
        IntakeResult r = Samples.read(folder, Samples.zip(letters));
        Samples.assertNoStop(r);
        assertThat(r.facts().notes()).hasSize(3);
        assertThatExceptionOfType(IntakeException.class)
                .isThrownBy(() -> Samples.read(folder, "PK\3\4 and no more".getBytes(StandardCharsets.UTF_8)))
                .withMessageContaining("damaged");
    }
}
