package shotwright.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class FitTest {
    /** The lower deviation of a hole is the upper one of the shaft of the same letter with the other sign, ISO 286-1. */
    @Test
    void holesMirrorShafts() {
        SplittableRandom random = new SplittableRandom(16);
        for (int i = 0; i < 2000; i++) {
            double d = random.nextDouble(1, 50);
            assertThat(Fit.G7.lowUm(d)).isEqualTo(-Fit.G6_PIN.highUm(d));
            assertThat(Fit.H7.lowUm(d)).isEqualTo(-Fit.H6_PIN.highUm(d));
        }
    }

    /** One grade has one width whatever the letter, ISO 286-1. */
    @Test
    void aGradeHasOneWidth() {
        for (double d = 1; d <= 50; d += 0.5)
            for (Fit f : new Fit[] {Fit.G7, Fit.F7, Fit.N7, Fit.K7, Fit.M7, Fit.P7, Fit.H7_PIN})
                assertThat(f.highUm(d) - f.lowUm(d)).as("%s at %s", f, d).isEqualTo(Fit.H7.highUm(d));
    }

    @Test
    void aPressHoleIsTighterThanItsPin() {
        for (Dowel d : StockRack.dowels().all()) {
            assertThat(d.pressHole().middleMm()).as(d.id()).isLessThan(d.leastMm());
            assertThat(d.slipHole().lowMm()).as(d.id()).isGreaterThan(d.greatestMm() - 0.0021);
            assertThat(d.slipHole().middleMm()).as(d.id()).isGreaterThan(d.greatestMm());
        }
    }

    @Test
    void gaugePinsHaveARange() {
        assertThatThrownBy(() -> GaugeClass.X.goMm(new HoleLimits(25, 25.02)))
                .hasMessageContaining("outside 0.254 … 20.96 mm");
    }
}
