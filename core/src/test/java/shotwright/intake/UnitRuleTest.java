package shotwright.intake;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import shotwright.finding.Severity;
import shotwright.geom.Vec3;
import shotwright.measure.LengthUnit;

class UnitRuleTest {
    @Test
    void likelySizesAreMillimetresWithoutAQuestion() {
        for (double longest : new double[] {6, 24, 127, 600}) {
            UnitRule.Taken t = UnitRule.take(null, null, new Vec3(1, longest, 2));
            assertThat(t.unit()).isEqualTo(LengthUnit.MM);
            assertThat(t.findings()).isEmpty();
            assertThat(t.readings()).hasSize(4);
        }
    }

    @Test
    void smallNumbersAreAskedAboutWithAllReadings() {
        UnitRule.Taken t = UnitRule.take(null, null, new Vec3(5, 2.5, 1.375));
        assertThat(t.unit()).isEqualTo(LengthUnit.MM);
        assertThat(t.findings()).singleElement().satisfies(f -> {
            assertThat(f.severity()).isEqualTo(Severity.ASK);
            assertThat(f.text())
                    .contains("5 × 2.5 × 1.375 mm if the numbers are millimetres")
                    .contains("50 × 25 × 13.75 mm if the numbers are centimetres")
                    .contains("5000 × 2500 × 1375 mm if the numbers are metres")
                    .contains("127 × 63.5 × 34.93 mm if the numbers are inches");
        });
    }

    @Test
    void impossibleSizesTakeTheOneLikelyReading() {
        assertThat(UnitRule.take(null, null, new Vec3(0.024, 0.048, 0.0048)).unit())
                .isEqualTo(LengthUnit.M);
        assertThat(UnitRule.take(null, null, new Vec3(0.5, 0.1, 0.1)).unit()).isEqualTo(LengthUnit.MM);
        assertThat(UnitRule.take(null, null, new Vec3(24000, 100, 100)).unit()).isEqualTo(LengthUnit.MM);
        assertThat(UnitRule.take(null, null, new Vec3(24000, 100, 100)).findings())
                .singleElement()
                .satisfies(f -> assertThat(f.remedy()).contains("um"));
    }

    @Test
    void theOwnersWordAndTheFilesWordStand() {
        assertThat(UnitRule.take(null, LengthUnit.IN, new Vec3(5, 2, 1)).findings())
                .isEmpty();
        assertThat(UnitRule.take(LengthUnit.CM, LengthUnit.IN, new Vec3(5, 2, 1))
                        .unit())
                .isEqualTo(LengthUnit.CM);
        assertThat(UnitRule.take(LengthUnit.MM, null, new Vec3(0.05, 0.02, 0.01))
                        .findings())
                .hasSize(1);
        assertThat(UnitRule.take(null, null, null).readings()).isEmpty();
    }

    @Test
    void numbersReadWell() {
        assertThat(UnitRule.number(0.0048)).isEqualTo("0.0048");
        assertThat(UnitRule.number(1375)).isEqualTo("1375");
        assertThat(UnitRule.number(34.925)).isEqualTo("34.93");
        assertThat(UnitRule.number(-643.98)).isEqualTo("−644");
        assertThat(UnitRule.number(20_000_000)).isEqualTo("20\u202f000\u202f000");
    }
}
