package shotwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import shotwright.layout.align.DowelLoad;
import shotwright.layout.gate.GateFreeze;
import shotwright.layout.gate.GateShear;
import shotwright.layout.release.CoreGrip;
import shotwright.layout.strength.PlateUnderPressure;
import shotwright.stock.Fit;

class ShrinkAndFitTest {
    @Test
    void aPercentGivenAsANumberAboveOneIsRefused() {
        assertThatThrownBy(() -> Shrink.moldFactor(0.6)).hasMessageContaining("60.0 %");
    }

    @Test
    void thickCrystallineWallsShrinkMore() {
        assertThat(Shrink.fromRangeShare(0.018, 0.025, 2, true)).isCloseTo(0.0215, offset(1e-12));
        assertThat(Shrink.fromRangeShare(0.018, 0.025, 4, true)).isCloseTo(0.0245, offset(1e-12));
        assertThat(Shrink.fromRangeShare(0.004, 0.007, 4, false)).isCloseTo(0.0055, offset(1e-12));
    }

    @Test
    void smallestGateSizesUndoTheirFormulas() {
        assertThat(GateShear.slotPerS(5000, 2, GateShear.slotDepthMm(5000, 2, 40_000)))
                .isCloseTo(40_000, withPercentage(1e-6));
        assertThat(GateShear.roundPerS(5000, GateShear.roundDiameterMm(5000, 40_000)))
                .isCloseTo(40_000, withPercentage(1e-6));
        double h = GateFreeze.slotDepthMm(1.6, 0.085, 230, 50, 110);
        assertThat(GateFreeze.slotS(h, 0.085, 230, 50, 110)).isCloseTo(1.6, withPercentage(1e-6));
    }

    @Test
    void temperaturesOutOfOrderAreNamed() {
        assertThatThrownBy(() -> GateFreeze.slotS(1, 0.085, 100, 50, 110)).hasMessageContaining("no-flow 110");
    }

    @Test
    void aPinThatStandsTooFarOutJams() {
        assertThat(DowelLoad.noJamMm(0.02, 0.5)).isCloseTo(2.3, offset(0.05));
        assertThat(DowelLoad.pitchMismatchMm(100, 5)).isCloseTo(0.012, offset(0.0005));
    }

    @Test
    void slipAndPressFitsAreOnTheirSideOfZero() {
        for (double d : new double[] {3, 4, 6, 8, 10}) {
            assertThat(Fit.F7.mostClearanceUm(Fit.M6_PIN, d)).isPositive();
            assertThat(Fit.N7.mostClearanceUm(Fit.M6_PIN, d)).isNegative();
            assertThat(Fit.H7.leastClearanceUm(Fit.G6_PIN, d)).isPositive();
        }
    }

    @Test
    void forceIsFreeOfTheRadiusAndFallsWithDraft() {
        double[] force = new double[2];
        for (int i = 0; i < 2; i++) {
            double d = 20 + 20 * i;
            force[i] = CoreGrip.forceN(0.4, CoreGrip.pressureMpa(2, 1800, 0.005, d, 0.35), Math.PI * d * 20);
        }
        assertThat(force[1]).isCloseTo(force[0], withPercentage(1e-9));
        assertThat(CoreGrip.draftFactor(0.4, 1)).isGreaterThan(CoreGrip.draftFactor(0.4, 2));
        assertThat(CoreGrip.draftFactor(0.4, 25)).isZero();
    }

    @Test
    void aSquarePlateIsStifferThanALongOne() {
        double square = PlateUnderPressure.rectangleDeflectionMm(40, 20, 20, 12, 69_000);
        double longOne = PlateUnderPressure.rectangleDeflectionMm(40, 80, 20, 12, 69_000);
        assertThat(longOne / square).isCloseTo(0.0284 / 0.0138, withPercentage(1e-6));
    }
}
