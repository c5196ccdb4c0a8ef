package shotwright.fill;

import java.util.ArrayList;
import java.util.List;
import shotwright.layout.FeedSegment;
import shotwright.layout.Gate;
import shotwright.layout.gate.GateFreeze;
import shotwright.measure.Band;
import shotwright.resin.ChannelFlow;

/**
 * Will it fill, first order: the pressure from the nozzle through sprue, runner and gate and along the part's own way to the last corner, with
 * cold walls; the fill time that needs least; the force that opens the mold.
 *
 * <p>Accuracy without grade data: pressure ±40 % (common practice), widened by the spread of the resin family's viscosity. The pattern of
 * the front is the one of a melt of one temperature; freezing enters the pressure along the way, not the split between branches.
 */
public final class FirstOrderFill {
    /** The press must give this much more than is needed (common practice). */
    static final double MARGIN = 1.2;

    private static final double PRESSURE_BAND_SHARE = 0.4;
    /** Packed cavities stand under this share of the hold pressure (0.7 to 0.9, common practice). */
    private static final double PACKED_SHARE = 0.8;
    /** Stands for the pressure of a melt that freezes on the way: more than any press gives. */
    static final double FROZEN_MPA = 1000;

    private FirstOrderFill() {}

    /** Answers station 60. */
    public static FillResult fill(FillInput in) {
        int cavities = in.layout().cavities().size();
        List<FeedWay> feeds = new ArrayList<>();
        for (int c = 1; c <= cavities; c++) feeds.add(FeedWay.to(c, in.layout()));
        FeedWay hardest = hardest(in, feeds);
        FillScan scan = FillScan.of(in, hardest);
        double timeS = in.fillTimeS() > 0 ? in.fillTimeS() : scan.bestS();
        FillTry.Outcome out = outcome(in, hardest, timeS, 1);
        double peak = out.peakMpa(), available = in.press().meltPressureMpa();
        Band band = band(peak, in.melt());
        double reachable = reachableRatio(in, out);
        FillResult.Verdict verdict = verdict(band, available);
        boolean longWay =
                FlowLengthGuide.judge(in.field().wayRatio() / Math.max(1e-9, reachable)) == FillResult.Verdict.SHORT;
        if ((longWay || !scan.open()) && verdict == FillResult.Verdict.FILLS) verdict = FillResult.Verdict.DOUBTFUL;
        double fillKn = fillForceKn(in, out), holdKn = holdForceKn(in);
        FillResult bare = new FillResult(
                in.melt().resin(),
                timeS,
                window(scan, timeS),
                out.steps().stream().map(FirstOrderFill::finite).toList(),
                finite(peak),
                band,
                available,
                in.field().wayLengthMm(),
                in.field().wayRatio(),
                reachable,
                out.frozenShare(),
                gateSealS(in),
                Math.max(fillKn, holdKn),
                fillKn,
                holdKn,
                warmingK(in.melt(), peak),
                scan.finitePoints(),
                ShortShots.sentences(
                        in.field(), in.cavityVolumeMm3() * cavities * in.melt().densityGPerCm3() / 1000),
                in.field().lastFills(),
                verdict,
                List.of());
        return new FillFindings(in, hardest, feeds, scan, bare, peak, longWay).complete();
    }

    private static double reachableRatio(FillInput in, FillTry.Outcome out) {
        double feed = Double.isFinite(out.peakMpa()) ? out.feedMpa() : 0;
        double left = Math.max(0, in.press().meltPressureMpa() - feed);
        return FlowLengthGuide.reachableRatio(
                in.melt().flowLengthRatio(), in.field().medianWallMm(), left);
    }

    private static double warmingK(Melt m, double peakMpa) {
        return ChannelFlow.shearHeatingK(finite(peakMpa) * 1e6, m.densityGPerCm3() * 1000, m.heatCapacityJPerKgK());
    }

    static FillTry.Outcome outcome(FillInput in, FeedWay feed, double timeS, double viscosityFactor) {
        return FillTry.of(in.melt(), timeS, viscosityFactor)
                .through(
                        feed,
                        in.field(),
                        in.cavityVolumeMm3(),
                        in.layout().cavities().size());
    }

    /** The cavity whose feed takes most at one second. */
    private static FeedWay hardest(FillInput in, List<FeedWay> feeds) {
        FeedWay hardest = feeds.getFirst();
        double most = -1;
        for (FeedWay f : feeds) {
            double p = feedMpa(in, f);
            if (p <= most) continue;
            most = p;
            hardest = f;
        }
        return hardest;
    }

    static double feedMpa(FillInput in, FeedWay feed) {
        double flow = in.cavityVolumeMm3() * in.layout().cavities().size();
        return feed.steps(FillTry.of(in.melt(), 1, 1), flow).stream()
                .mapToDouble(FillResult.PressureStep::dropMpa)
                .sum();
    }

    /** ±40 % of the method and the family's spread of viscosity, taken as independent. */
    private static Band band(double peakMpa, Melt melt) {
        if (!Double.isFinite(peakMpa)) return new Band(FROZEN_MPA, FROZEN_MPA, FROZEN_MPA);
        double share = Math.min(0.9, Math.hypot(PRESSURE_BAND_SHARE, melt.viscositySpreadShare()));
        return Band.plusMinus(peakMpa, share);
    }

    private static FillResult.Verdict verdict(Band needMpa, double availableMpa) {
        if (needMpa.low() > availableMpa) return FillResult.Verdict.SHORT;
        boolean fills = needMpa.high() <= availableMpa && MARGIN * needMpa.nominal() <= availableMpa;
        return fills ? FillResult.Verdict.FILLS : FillResult.Verdict.DOUBTFUL;
    }

    private static Band window(FillScan scan, double timeS) {
        if (!scan.open()) return new Band(timeS, timeS, timeS);
        double low = Math.min(timeS, scan.fastestS()), high = Math.max(timeS, scan.slowestS());
        return new Band(low, timeS, high);
    }

    /** Time until the gate of cavity 1 is frozen through; a direct sprue gate like its round section. */
    private static double gateSealS(FillInput in) {
        if (in.layout().gates().isEmpty()) return 0;
        Gate g = in.layout().gates().getFirst();
        Melt m = in.melt();
        boolean round = g.kind() == Gate.Kind.DIRECT || g.kind() == Gate.Kind.SUBMARINE;
        double depth = Math.min(g.widthMm(), g.depthMm());
        return Math.max(
                0,
                round
                        ? GateFreeze.roundS(depth, m.diffusivityMm2PerS(), m.meltC(), m.moldC(), m.noFlowC())
                        : GateFreeze.slotS(depth, m.diffusivityMm2PerS(), m.meltC(), m.moldC(), m.noFlowC()));
    }

    private static double fillForceKn(FillInput in, FillTry.Outcome out) {
        double part = in.field().meanPressureShare() * finite(out.cavityMpa()) * in.projectedAreaMm2();
        double feed = (finite(out.cavityMpa()) + finite(out.peakMpa())) / 2 * feedAreaMm2(in);
        return (part * in.layout().cavities().size() + feed) / 1000;
    }

    private static double holdForceKn(FillInput in) {
        double area = in.projectedAreaMm2() * in.layout().cavities().size() + feedAreaMm2(in);
        return PACKED_SHARE * in.holdMpa() * area / 1000;
    }

    /** Shadow of the lying pieces of the feed. */
    private static double feedAreaMm2(FillInput in) {
        double area = 0;
        for (FeedSegment s : in.layout().feed()) {
            double lying = s.fromMm().xy().distance(s.toMm().xy());
            area += lying * (s.from().widthMm() + s.to().widthMm()) / 2;
        }
        return area;
    }

    private static FillResult.PressureStep finite(FillResult.PressureStep s) {
        return Double.isFinite(s.dropMpa())
                ? s
                : new FillResult.PressureStep(s.name(), s.lengthMm(), FROZEN_MPA, s.shearRatePerS(), 0);
    }

    static double finite(double v) {
        return Double.isFinite(v) ? v : FROZEN_MPA;
    }
}
