package shotwright.fill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class FrontTest {
    @Test
    void powerLawComesBackToNewton() {
        DiscFront newton = new DiscFront(2, 2, 100, 1), nearly = new DiscFront(2, 2, 100, 1 - 1e-9);
        assertThat(nearly.pressureMpa(5000, 40)).isCloseTo(newton.pressureMpa(5000, 40), within(1e-6));
        double closed = 6 * 100e-6 * 5000 / (Math.PI * 8) * Math.log(20);
        assertThat(newton.pressureMpa(5000, 40)).isCloseTo(closed, within(1e-12));
        StripFront strip = new StripFront(20, 2, 100, 1);
        assertThat(strip.pressureMpa(5000, 60)).isCloseTo(12 * 100e-6 * 60 * 5000 / (20 * 8), within(1e-12));
        assertThat(strip.placeAtPressureMm(30, 0.05)).isCloseTo(Math.sqrt(30e6 * 4 * 0.05 / 600), within(1e-9));
    }

    @Test
    void thickerIsEasier() {
        double last = Double.POSITIVE_INFINITY;
        for (double gap = 0.5; gap < 4; gap += 0.5) {
            double p = new DiscFront(2, gap, 2.38e4, 0.25).pressureMpa(5000, 40);
            assertThat(p).isLessThan(last);
            last = p;
        }
    }

    @Test
    void constantPressureFrontGrowsWithTime() {
        StripFront strip = new StripFront(20, 2, 2.38e4, 0.25);
        assertThat(strip.placeAtPressureMm(30, 0.1)).isGreaterThan(strip.placeAtPressureMm(30, 0.05));
        assertThatThrownBy(() -> new DiscFront(2, 2, 2.38e4, 0.25).timeAtPressureS(20, 40))
                .hasMessageContaining("n = 1");
    }

    @Test
    void frozenSkinAndGate() {
        assertThat(FrozenLayer.thicknessMm(1, 0.09, 220, 140, 130)).isZero();
        assertThat(FrozenLayer.thicknessMm(4, 0.09, 230, 50, 110))
                .isCloseTo(2 * FrozenLayer.thicknessMm(1, 0.09, 230, 50, 110), within(1e-12));
    }

    @Test
    void flowLengthGuide() {
        assertThat(FlowLengthGuide.reachableRatio(200, 2, 90)).isCloseTo(200, within(1e-12));
        assertThat(FlowLengthGuide.judge(0.7)).isEqualTo(FillResult.Verdict.FILLS);
        assertThat(FlowLengthGuide.judge(0.71)).isEqualTo(FillResult.Verdict.DOUBTFUL);
        assertThat(FlowLengthGuide.judge(1.01)).isEqualTo(FillResult.Verdict.SHORT);
    }
}
