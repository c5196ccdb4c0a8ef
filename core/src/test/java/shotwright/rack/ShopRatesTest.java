package shotwright.rack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shotwright.job.Shop;
import shotwright.quote.Rates;

/** The shop's own rates: a rack file like any other, of which there is one. */
class ShopRatesTest {
    private final Path folder;

    ShopRatesTest(@TempDir Path folder) throws IOException {
        this.folder = folder;
        Files.createDirectories(folder.resolve("rates"));
    }

    private Rates rates(String name, String text) throws IOException {
        Files.writeString(folder.resolve("rates").resolve(name), text);
        return Shop.standard().withFolder(folder).rates();
    }

    @Test
    void ownRatesReplaceTheTypicalOnes() throws IOException {
        Rates typical = Shop.standard().rates();
        assertThat(typical.typical()).containsExactly("labour", "mill", "design", "dryer");
        Rates own = rates("shop.json", """
                {"like": "shop", "name": "Bench by the canal", "currency": "EUR",
                 "labourRatePerH": {"value": 52, "unit": "unit/h", "source": "your own entry"},
                 "millRatePerH": {"value": 31, "unit": "unit/h", "source": "worked out: price of the mill over its hours"},
                 "designRatePerH": {"value": 70, "unit": "unit/h", "source": "your own entry"}}""");
        assertThat(own.labourRatePerH().value()).isEqualTo(52);
        assertThat(own.currency()).isEqualTo("EUR");
        assertThat(own.marginShare()).isEqualTo(typical.marginShare());
        assertThat(own.typical()).isEqualTo(List.of("dryer"));
        assertThat(own.whose()).contains("Bench by the canal").contains("dryer");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"labourRatePerH\": 52 | labourRatePerH",
                "\"labourRatePerH\": {\"value\": 52, \"unit\": \"unit/h\"} | labourRatePerH has no source",
                "\"labourRatePerH\": {\"value\": 52, \"unit\": \"h\", \"source\": \"your own entry\"} | write it in unit/h",
                "\"labourRatePerH\": {\"value\": -1, \"unit\": \"unit/h\", \"source\": \"your own entry\"} | labourRatePerH: -1.0 is not between",
                "\"marginShare\": {\"value\": 20, \"unit\": \"1\", \"source\": \"your own entry\"} | shop.json: marginShare: 20.0 is not between 0.0 and 0.9",
                "\"labour\": 52 | labour is not a key of this file",
            })
    void aWrongFileIsRefusedWithFileAndKey(String entry, String message) {
        assertThatThrownBy(() -> rates("shop.json", "{\"like\": \"shop\", " + entry + "}"))
                .isInstanceOf(RackException.class)
                .hasMessageContaining("shop.json")
                .hasMessageContaining(message);
    }

    @Test
    void aFileThatWouldNeverBeReadIsRefused() {
        assertThatThrownBy(() -> rates("mine.json", "{\"like\": \"shop\"}"))
                .isInstanceOf(RackException.class)
                .hasMessageContaining("mine")
                .hasMessageContaining("call its file shop.json");
    }
}
