package shotwright.cool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import shotwright.fill.Plans;
import shotwright.finding.Finding;
import shotwright.mesh.Bvh;
import shotwright.mesh.WallThickness;
import shotwright.press.PressRack;
import shotwright.progress.Progress;
import shotwright.resin.Resin;
import shotwright.resin.ResinRack;
import shotwright.stock.StockRack;

class FirstOrderCoolTest {
    private static CoolInput input(String resin, String press, double wall, double shotG) {
        Resin r = ResinRack.standard().byId(resin);
        WallThickness walls = WallThickness.of(Bvh.of(Plans.plateMesh(wall)), 800, 7, Progress.SILENT);
        return new CoolInput(
                r,
                r.settings().nozzleC().value(),
                PressRack.standard().byId(press),
                StockRack.materials().byId("6061-t6"),
                Plans.plate(wall, 1, 1),
                walls,
                120 * 80 * 40,
                shotG,
                1,
                2,
                22);
    }

    @Test
    void usualWallIsTheClosedFormAtTheMoldsOwnTemperature() {
        CoolInput in = input("abs", "electric-10t", 2, 3);
        CoolResult r = FirstOrderCool.cool(in);
        double moldC = r.moldByShotC().getLast();
        double closed = PlateCooling.centreTimeS(
                2,
                in.resin().diffusivityMm2PerS().mid(),
                in.meltC(),
                r.moldSteadyC(),
                in.resin().ejectC().mid());
        assertThat(moldC).isCloseTo(r.moldSteadyC(), within(0.2));
        assertThat(r.coolingTimeS()).isCloseTo(closed, within(0.15 * closed));
        assertThat(r.coolingBandS().low()).isCloseTo(0.75 * r.coolingTimeS(), within(1e-9));
        double sum =
                r.cycle().stream().mapToDouble(CoolResult.CyclePiece::timeS).sum();
        assertThat(r.cycleTimeS()).isCloseTo(sum, within(1e-9));
        assertThat(r.cycleTimeS())
                .isGreaterThan(r.coolingTimeS() + in.press().handlingS().value());
    }

    @Test
    void thickerIsSlowerAndBiggerShotsWarmMore() {
        CoolResult thin = FirstOrderCool.cool(input("abs", "electric-10t", 1.5, 3));
        CoolResult thick = FirstOrderCool.cool(input("abs", "electric-10t", 3, 3));
        assertThat(thick.coolingTimeS()).isGreaterThan(2 * thin.coolingTimeS());
        CoolResult big = FirstOrderCool.cool(input("abs", "electric-10t", 1.5, 9));
        assertThat(big.moldSteadyC()).isGreaterThan(thin.moldSteadyC());
    }

    @Test
    void resinThatWantsAHotMoldSaysHowMuchHeat() {
        CoolResult r = FirstOrderCool.cool(input("pc", "hand-lever-2t", 2, 1));
        assertThat(r.findings()).extracting(Finding::code).contains("mold-wants-heat", "hot-mold");
        Finding f = r.findings().stream()
                .filter(x -> x.code().equals("mold-wants-heat"))
                .findFirst()
                .orElseThrow();
        assertThat(f.remedy()).matches(".*about \\d+ W.*");
        assertThat(r.warmUpShots()).isZero();
    }

    @Test
    void pausesKeepTheMoldAtItsLimit() {
        CoolInput in = input("petg", "electric-screw-20t", 2, 25);
        CoolResult r = FirstOrderCool.cool(in);
        assertThat(r.moldSteadyC()).isGreaterThan(in.resin().moldC().high());
        assertThat(r.pauseS()).isGreaterThan(0);
        assertThat(r.moldByShotC()).allMatch(t -> t <= in.resin().moldC().high() + 0.01);
        assertThat(r.cycle()).extracting(CoolResult.CyclePiece::name).contains("pause for the mold");
    }
}
