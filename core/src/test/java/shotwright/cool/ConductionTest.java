package shotwright.cool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ConductionTest {
    /** The one-term formula and the whole series agree once the wall is half cold. */
    @Test
    void oneTermMeetsTheSeries() {
        double wallMm = 2, a = 0.085, melt = 230, mold = 50, eject = 85;
        double tCentre = PlateCooling.centreTimeS(wallMm, a, melt, mold, eject);
        assertThat(SlabSeries.centreShare(a * tCentre / wallMm / wallMm))
                .isCloseTo((eject - mold) / (melt - mold), within(1e-6));
        double tMean = PlateCooling.meanTimeS(wallMm, a, melt, mold, eject);
        assertThat(SlabSeries.meanShare(a * tMean / wallMm / wallMm))
                .isCloseTo((eject - mold) / (melt - mold), within(1e-5));
    }

    @Test
    void hotterMoldCoolsLonger() {
        double last = 0;
        for (double mold = 20; mold < 84; mold += 8) {
            double t = PlateCooling.centreTimeS(2, 0.085, 230, mold, 85);
            assertThat(t).isGreaterThan(last);
            last = t;
        }
    }

    @Test
    void timeGrowsWithTheSquareOfTheWall() {
        double one = PlateCooling.centreTimeS(1, 0.09, 220, 40, 90);
        assertThat(PlateCooling.centreTimeS(3, 0.09, 220, 40, 90)).isCloseTo(9 * one, within(1e-12));
        assertThat(RodCooling.centreTimeS(3, 0.09, 220, 40, 90))
                .isCloseTo(9 * RodCooling.centreTimeS(1, 0.09, 220, 40, 90), within(1e-12));
        assertThat(BallCooling.centreTimeS(2, 0.09, 220, 40, 90))
                .isLessThan(PlateCooling.centreTimeS(2, 0.09, 220, 40, 90));
    }

    @Test
    void moldHotterThanEjectionIsRefused() {
        assertThatThrownBy(() -> PlateCooling.centreTimeS(2, 0.09, 220, 95, 90)).hasMessageContaining("never be cold");
        assertThatThrownBy(() -> RodCooling.meanTimeS(0, 0.09, 220, 40, 90)).hasMessageContaining("diameter");
    }

    @Test
    void lumpedMoldSettlesAndTurnsRound() {
        LumpedMold mold = new LumpedMold(1.2, 896, 2940, 60, 4.48, 22);
        assertThat(mold.afterC(0)).isEqualTo(22);
        assertThat(mold.afterC(1e6)).isCloseTo(mold.steadyC(), within(1e-9));
        int n = mold.shotsToSettle(22, 2);
        assertThat(mold.steadyC() - mold.afterC(n)).isLessThanOrEqualTo(2);
        assertThat(mold.steadyC() - mold.afterC(n - 1)).isGreaterThan(2);
        assertThat(mold.afterC(3, 80)).isLessThan(80);
        LumpedMold slower = new LumpedMold(1.2, 896, 2940, mold.shortestCycleS(30), 4.48, 22);
        assertThat(slower.steadyC()).isCloseTo(30, within(1e-9));
        assertThat(mold.shotsToRise(50)).isInfinite();
    }

    @Test
    void stillAirLiesWhereTheTradeHasIt() {
        assertThat(AirCooling.stillAirWPerM2K(60, 22, 80, 0.1)).isBetween(5.0, 10.0);
        assertThat(AirCooling.stillAirWPerM2K(22, 22, 80, 0.1)).isGreaterThan(0);
    }
}
