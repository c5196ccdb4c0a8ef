package shotwright.rack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shotwright.measure.Source;
import shotwright.press.Press;
import shotwright.press.PressRack;
import shotwright.resin.Resin;
import shotwright.resin.ResinRack;

/** The shop's own files: they win by id, may build on another entry, and are refused with file, key and cure when they are wrong. */
class ShopFilesTest {
    private final Path shop;

    ShopFilesTest(@TempDir Path shop) {
        this.shop = shop;
    }

    @BeforeEach
    void folders() throws IOException {
        Files.createDirectories(shop.resolve("resin"));
        Files.createDirectories(shop.resolve("press"));
    }

    private void file(String name, String text) throws IOException {
        Files.writeString(shop.resolve(name), text);
    }

    private Rack<Resin> resins() {
        return ResinRack.standard().withFolder(shop);
    }

    @Test
    void ownResinBuildsOnAFamilyAndWins() throws IOException {
        file("resin/abs.json", """
                {"like": "abs", "name": "ABS as we buy it", "generic": false,
                 "shrinkPercent": {"value": 0.52, "unit": "%", "source": "measured: twelve plaques"}}""");
        Resin own = resins().byId("abs"), shipped = ResinRack.standard().byId("abs");
        assertThat(own.shrinkPercent().mid()).isEqualTo(0.52);
        assertThat(own.shrinkPercent().source()).isEqualTo(Source.measured("twelve plaques"));
        assertThat(own.generic()).isFalse();
        assertThat(own.meltC()).isEqualTo(shipped.meltC());
        assertThat(shipped.shrinkPercent().mid()).isNotEqualTo(0.52);
        assertThat(resins().all()).hasSameSizeAs(ResinRack.standard().all());
    }

    @Test
    void ownPressMayBeWrittenInInchUnits() throws IOException {
        file("press/ours.json", """
                {"like": "hand-lever-2t", "name": "Ours",
                 "clampKn": {"value": 2.5, "unit": "short ton", "source": "measured: flash test"},
                 "maxMeltMpa": {"value": 4500, "unit": "psi", "source": "measured"},
                 "nozzleBoreMm": {"value": 0.125, "unit": "in", "source": "measured"},
                 "maxBarrelC": {"value": 572, "unit": "°F", "source": "measured"}}""");
        Press p = PressRack.standard().withFolder(shop).byId("ours");
        // Exact definitions of 1959: 2000 lbf = 8.896443 kN, 1 psi = 6.894757 kPa, 1 in = 25.4 mm.
        assertThat(Objects.requireNonNull(p.clampKn()).value()).isCloseTo(22.241108, within(1e-6));
        assertThat(p.maxMeltMpa().value()).isCloseTo(31.026408, within(1e-6));
        assertThat(p.nozzleBoreMm().value()).isCloseTo(3.175, within(1e-12));
        assertThat(p.maxBarrelC().value()).isCloseTo(300, within(1e-9));
        assertThat(p.maxMeltMpa().unit()).isEqualTo("MPa");
        assertThat(PressRack.standard().withFolder(shop).all().getLast().id()).isEqualTo("ours");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"shrinkPercent\": {\"value\": 0.5, \"unit\": \"%\"} | shrinkPercent has no source",
                "\"shrinkPercent\": {\"value\": 0.5, \"source\": \"measured\"} | shrinkPercent has no unit",
                "\"shrinkPercent\": {\"value\": 0.5, \"unit\": \"mm\", \"source\": \"measured\"} | write it in %",
                "\"shrinkPercent\": {\"low\": 0.7, \"high\": 0.5, \"unit\": \"%\", \"source\": \"measured\"} | falls from 0.7 to 0.5",
                "\"shrinkPercent\": {\"low\": 0.7, \"value\": 0.5, \"unit\": \"%\", \"source\": \"measured\"} | a value and a range",
                "\"shrinkPercent\": {\"value\": \"0.5\", \"unit\": \"%\", \"source\": \"measured\"} | shrinkPercent.value must be a number",
                "\"shrinkPercent\": 0.5 | with unit and source in braces",
                "\"shrinkPercent\": {\"value\": 0.5, \"unit\": \"%\", \"source\": \"measured\", \"note\": \"x\"} | shrinkPercent.note is not a key",
                "\"shrink\": 0.5 | shrink is not a key of this file",
                "\"kind\": \"metal\" | must be one of [crystalline, amorphous, elastomer]",
                "\"generic\": \"no\" | generic must be true or false",
                "\"hazards\": \"hot\" | hazards must be a list",
                "\"viscosity\": {\"model\": \"guess\"} | viscosity.model is 'guess'",
                "\"name\": \"\" | name must be text",
                "\"name\": null | name is missing",
                "\"name\": \"a\", \"name\": \"b\" | Duplicate",
                "\"name\": | Mend the JSON there",
            })
    void wrongFilesAreRefusedWithFileAndKey(String entry, String message) throws IOException {
        file("resin/own.json", "{\"like\": \"abs\", " + entry + "}");
        assertThatThrownBy(this::resins)
                .isInstanceOf(RackException.class)
                .hasMessageContaining("own.json")
                .hasMessageContaining(message);
    }

    @Test
    void aMissingKeyIsNamed() throws IOException {
        file("resin/own.json", "{\"id\": \"own\", \"name\": \"Own\", \"kind\": \"amorphous\", \"generic\": false}");
        assertThatThrownBy(this::resins)
                .isInstanceOf(RackException.class)
                .hasMessageContaining("solidDensityGPerCm3 is missing");
    }

    @Test
    void idAndFileNameMustAgree() throws IOException {
        file("resin/own.json", "{\"like\": \"abs\", \"id\": \"other\"}");
        assertThatThrownBy(this::resins).isInstanceOf(RackException.class).hasMessageContaining("make them equal");
    }

    @Test
    void unknownBaseAndUnknownIdListWhatThereIs() throws IOException {
        assertThatThrownBy(() -> ResinRack.standard().byId("steel"))
                .isInstanceOf(RackException.class)
                .hasMessageContaining("no resin 'steel'")
                .hasMessageContaining("pom-c, pom-h, abs");
        file("resin/own.json", "{\"like\": \"steel\"}");
        assertThatThrownBy(this::resins).isInstanceOf(RackException.class).hasMessageContaining("'steel'");
    }

    @Test
    void valuesThatCannotBeAreRefused() throws IOException {
        file("press/own.json", "{\"like\": \"hand-lever-2t\", \"clampKn\": null}");
        assertThatThrownBy(() -> PressRack.standard().withFolder(shop))
                .isInstanceOf(RackException.class)
                .hasMessageContaining("own.json")
                .hasMessageContaining("give the clamp");
    }

    @Test
    void hugeAndDeepFilesAreRefused() throws IOException {
        file("resin/own.json", "{\"like\": \"abs\", \"name\": \"" + "x".repeat(1 << 20) + "\"}");
        assertThatThrownBy(this::resins).isInstanceOf(RackException.class).hasMessageContaining("larger than 1 MB");
        file("resin/own.json", "{\"like\": \"abs\", \"tait\": " + "[".repeat(5000) + "]".repeat(5000) + "}");
        assertThatThrownBy(this::resins).isInstanceOf(RackException.class).hasMessageContaining("own.json");
    }

    @Test
    void bytesThatAreNoTextAreRefused() throws IOException {
        Files.write(shop.resolve("resin/own.json"), new byte[] {(byte) 0x89, 'P', 'N', 'G', 0, 1, 2});
        assertThatThrownBy(this::resins).isInstanceOf(RackException.class).hasMessageContaining("own.json");
        Files.write(shop.resolve("resin/own.json"), "[1, 2]".getBytes(StandardCharsets.UTF_8));
        assertThatThrownBy(this::resins).isInstanceOf(RackException.class).hasMessageContaining("one object in braces");
    }

    @Test
    void aShopWithoutFilesIsTheStandardRack() {
        assertThat(ResinRack.standard().withFolder(shop.resolve("nowhere"))).isSameAs(ResinRack.standard());
    }
}
