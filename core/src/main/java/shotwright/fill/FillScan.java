package shotwright.fill;

import java.util.ArrayList;
import java.util.List;
import shotwright.layout.LayoutResult;
import shotwright.layout.Vent;
import shotwright.layout.vent.VentFlow;

/**
 * Pressure against fill time from 0.1 to 10 s, and the window between too fast (shear in the feed, air that cannot leave, a ram without the
 * power) and too slow (the melt freezes on the way). Source of the method: common practice
 *
 * @param points the times tried, in rising order
 * @param fastestS lower end of the window
 * @param slowestS upper end; below {@code fastestS} when there is no window
 * @param bestS the time taken: inside the window, with no more than a fifth of the wall frozen where that can be had, the shortest that needs no more
 *     than 5 % (30 % when all freeze more) above the least pressure; with no window the slowest the pressure allows, or the easiest
 * @param fastLimit what sets the lower end, in words
 */
record FillScan(List<FillResult.ScanPoint> points, double fastestS, double slowestS, double bestS, String fastLimit) {
    private static final int POINTS = 21;
    private static final double FROM_S = 0.1;
    private static final double TO_S = 10;
    private static final double NEAR_LEAST = 1.05;

    private static final double SPEND_ON_SPEED = 1.3;
    /** Share of the wall that may freeze while filling before it shows on the part (common practice). */
    private static final double LITTLE_FROZEN = 0.2;
    /** Air pressed together this far pushes itself out of the vents, MPa. */
    private static final double VENT_OVERPRESSURE_MPA = 0.1;

    static FillScan of(FillInput in, FeedWay feed) {
        List<FillResult.ScanPoint> points = new ArrayList<>();
        double flowMm3 = in.cavityVolumeMm3() * in.layout().cavities().size();
        double shearFastest = shearFastestS(in, feed), airFastest = airFastestS(in.layout(), flowMm3);
        double pressFastest = flowMm3 / in.press().flowMm3PerS(), powerFastest = FROM_S;
        for (int i = 0; i < POINTS; i++) {
            double t = FROM_S * Math.pow(TO_S / FROM_S, i / (POINTS - 1.0));
            FillTry.Outcome out = FirstOrderFill.outcome(in, feed, t, 1);
            double p = out.peakMpa();
            points.add(new FillResult.ScanPoint(t, p, out.frozenShare()));
            if (Double.isFinite(p)
                    && p > 0
                    && flowMm3 / t > RamPower.flowMm3PerS(in.press().ramPowerW(), p))
                powerFastest = Math.max(powerFastest, t * 1.01);
        }
        double fastest = Math.max(Math.max(shearFastest, airFastest), Math.max(pressFastest, powerFastest));
        String why = fastest == shearFastest
                ? "shear in the gate and runner"
                : fastest == airFastest
                        ? "air that must leave through the vents"
                        : fastest == pressFastest ? "the flow of the press" : "the power of the press";
        if (fastest <= FROM_S) why = "the fastest time tried";
        double slowest = 0;
        for (FillResult.ScanPoint s : points) {
            if (s.pressureMpa() <= in.press().meltPressureMpa()) slowest = s.timeS();
        }
        double best = best(points, fastest, slowest);
        return new FillScan(List.copyOf(points), fastest, slowest, best, why);
    }

    /** The shortest time near the least pressure, among those that freeze little when there are any. */
    private static double best(List<FillResult.ScanPoint> points, double fastest, double slowest) {
        if (slowest < fastest) return slowest > 0 ? slowest : easiest(points).timeS();
        List<FillResult.ScanPoint> open = points.stream()
                .filter(s -> s.timeS() >= fastest * 0.999 && s.timeS() <= slowest)
                .toList();
        List<FillResult.ScanPoint> fluid =
                open.stream().filter(s -> s.frozenShare() <= LITTLE_FROZEN).toList();
        List<FillResult.ScanPoint> from = fluid.isEmpty() ? open : fluid;
        if (from.isEmpty()) return slowest;
        // when every time freezes more than a fifth, some pressure is spent on filling faster
        double enough =
                (fluid.isEmpty() ? SPEND_ON_SPEED : NEAR_LEAST) * easiest(from).pressureMpa();
        for (FillResult.ScanPoint s : from) if (s.pressureMpa() <= enough) return s.timeS();
        return slowest;
    }

    private static FillResult.ScanPoint easiest(List<FillResult.ScanPoint> points) {
        FillResult.ScanPoint easiest = points.getFirst();
        for (FillResult.ScanPoint s : points) if (s.pressureMpa() < easiest.pressureMpa()) easiest = s;
        return easiest;
    }

    /** Time at which the tightest piece of the feed is at the shear rate the resin stands. */
    private static double shearFastestS(FillInput in, FeedWay feed) {
        int n = in.layout().cavities().size();
        double most = feed.steps(FillTry.of(in.melt(), 1, 1), in.cavityVolumeMm3() * n).stream()
                .mapToDouble(FillResult.PressureStep::shearRatePerS)
                .max()
                .orElse(0);
        return most / in.melt().shearRateLimitPerS();
    }

    /** Time in which the vents pass the air of all cavities; 0 when the layout shows no vents. */
    private static double airFastestS(LayoutResult layout, double volumeMm3) {
        double flow = 0;
        for (Vent v : layout.vents())
            flow += VentFlow.flowMm3PerS(v.widthMm(), v.depthMm(), v.landMm(), VENT_OVERPRESSURE_MPA);
        return flow > 0 ? volumeMm3 / flow : 0;
    }

    /** The times at which the melt did not freeze on the way. */
    List<FillResult.ScanPoint> finitePoints() {
        return points.stream().filter(p -> Double.isFinite(p.pressureMpa())).toList();
    }

    boolean open() {
        return slowestS >= fastestS;
    }
}
