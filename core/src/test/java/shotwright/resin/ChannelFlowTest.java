package shotwright.resin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;

class ChannelFlowTest {
    @Test
    void shearRatesOfTheHandbookGates() {
        assertThat(ChannelFlow.slotShearRatePerS(5e-6, 2e-3, 1e-3)).isCloseTo(15_000, withPercentage(1e-6));
        assertThat(ChannelFlow.roundShearRatePerS(5e-6, 0.5e-3)).isCloseTo(50_930, withPercentage(0.01));
        assertThat(15_000 * ChannelFlow.slotTrueShearFactor(0.3)).isCloseTo(26_667, withPercentage(0.01));
    }

    @Test
    void pressureLossOfTheHandbookChannels() {
        assertThat(ChannelFlow.tubeDropPa(100, 1, 0.05, 2e-3, 5e-6)).isCloseTo(3.979e6, withPercentage(0.02));
        assertThat(ChannelFlow.tubeDropPa(2.38e4, 0.25, 0.05, 2e-3, 5e-6)).isCloseTo(7.269e6, withPercentage(0.02));
        assertThat(ChannelFlow.slitDropPa(2.38e4, 0.25, 0.06, 0.02, 2e-3, 5e-6))
                .isCloseTo(7.473e6, withPercentage(0.02));
        assertThat(ChannelFlow.taperDropPa(16e3, 0.3, 0.06, 1.5e-3, 3e-3, 1e-5))
                .isCloseTo(8.963e6, withPercentage(0.05));
    }

    @Test
    void aTaperThatHardlyTapersIsATube() {
        double tube = ChannelFlow.tubeDropPa(2e4, 0.3, 0.06, 2e-3, 5e-6);
        assertThat(ChannelFlow.taperDropPa(2e4, 0.3, 0.06, 2e-3, 2e-3, 5e-6)).isEqualTo(tube);
        assertThat(ChannelFlow.taperDropPa(2e4, 0.3, 0.06, 2e-3, 2.00001e-3, 5e-6))
                .isCloseTo(tube, withPercentage(0.01));
    }

    @Test
    void generalCrossSectionAgreesWithTubeDuctAndSlit() {
        double d = 4e-3;
        double tube = ChannelFlow.tubeDropPa(2e4, 0.3, 0.05, d / 2, 5e-6);
        assertThat(ChannelFlow.channelDropPa(
                        ChannelFlow.CrossSection.ROUND, 2e4, 0.3, 0.05, Math.PI * d * d / 4, Math.PI * d, 5e-6))
                .isCloseTo(tube, withPercentage(1e-9));
        for (double w : new double[] {2e-3, 4e-3, 20e-3}) {
            double newton = ChannelFlow.channelDropPa(
                    ChannelFlow.CrossSection.rectangle(w, 2e-3), 100, 1, 0.05, w * 2e-3, 2 * (w + 2e-3), 5e-6);
            assertThat(newton).isCloseTo(ChannelFlow.ductDropPa(100, 0.05, w, 2e-3, 5e-6), withPercentage(1e-6));
        }
        double slit = ChannelFlow.channelDropPa(
                ChannelFlow.CrossSection.rectangle(2, 2e-3), 2e4, 0.3, 0.05, 4e-3, 4.004, 5e-4);
        assertThat(slit).isCloseTo(ChannelFlow.slitDropPa(2e4, 0.3, 0.05, 2, 2e-3, 5e-4), withPercentage(0.3));
    }

    @Test
    void runnerRadiusUndoesTheTube() {
        double drop = ChannelFlow.tubeDropPa(2.38e4, 0.25, 0.05, 2e-3, 5e-6);
        assertThat(ChannelFlow.runnerRadiusM(2.38e4, 0.25, 0.05, drop, 5e-6)).isCloseTo(2e-3, withPercentage(1e-6));
    }

    @Test
    void aChannelWithoutOpeningIsNamed() {
        assertThatThrownBy(() -> ChannelFlow.roundShearRatePerS(5e-6, 0)).hasMessageContaining("radius: 0.0");
    }
}
