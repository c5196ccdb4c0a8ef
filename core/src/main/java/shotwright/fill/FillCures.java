package shotwright.fill;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import shotwright.layout.Gate;

/** Looks for the smallest single change after which the pressure leaves a fifth of what the press gives. */
final class FillCures {
    private static final double STEP_MM = 0.05;
    private static final int MOST_STEPS = 40;

    private final FillInput in;
    private final FeedWay feed;
    private final double timeS;

    FillCures(FillInput in, FeedWay feed, double timeS) {
        this.in = in;
        this.feed = feed;
        this.timeS = timeS;
    }

    /** The changes that would do, in a sentence; at least the press that would. */
    String sentence(double peakMpa) {
        List<String> ways = new ArrayList<>();
        addMelt(ways);
        addGate(ways);
        addWall(ways);
        if (Double.isFinite(peakMpa))
            ways.add(String.format(
                    Locale.ROOT, "a press with %.0f MPa in the melt", Math.ceil(FirstOrderFill.MARGIN * peakMpa)));
        ways.add("a resin that flows easier");
        return "Any one of these: " + String.join("; ", ways) + ".";
    }

    private void addMelt(List<String> ways) {
        for (double more : new double[] {10, 20}) {
            double melt = in.melt().meltC() + more;
            if (melt > in.melt().hottestMeltC()) return;
            if (!fits(FillTry.of(in.melt().atMelt(melt), timeS, 1))) continue;
            ways.add(String.format(Locale.ROOT, "melt %.0f K hotter (%.0f °C)", more, melt));
            return;
        }
    }

    private void addGate(List<String> ways) {
        if (in.layout().gates().isEmpty()) return;
        Gate gate = in.layout().gates().getFirst();
        for (int k = 1; k <= MOST_STEPS; k++) {
            double step = k * Math.max(0.05, gate.stepMm());
            double width = Math.min(gate.largestWidthMm(), gate.widthMm() + step);
            double depth = Math.min(gate.largestDepthMm(), gate.depthMm() + step);
            if (!Gate.opens(gate.widthMm(), gate.depthMm(), width, depth)) return;
            if (fits(FillTry.of(in.melt(), timeS, 1).gate(width, depth))) {
                ways.add(String.format(Locale.ROOT, "the gate opened to %.2f × %.2f mm", width, depth));
                return;
            }
            if (width >= gate.largestWidthMm() && depth >= gate.largestDepthMm()) return;
        }
    }

    private void addWall(List<String> ways) {
        double wall = in.field().medianWallMm();
        for (int k = 1; k <= MOST_STEPS; k++) {
            double more = k * STEP_MM;
            if (more > 0.6 * wall) return;
            if (!fits(FillTry.of(in.melt(), timeS, 1).wall(1 + more / wall))) continue;
            ways.add(String.format(Locale.ROOT, "walls %.2f mm thicker all over", more));
            return;
        }
    }

    private boolean fits(FillTry t) {
        double p = t.through(
                        feed,
                        in.field(),
                        in.cavityVolumeMm3(),
                        in.layout().cavities().size())
                .peakMpa();
        return p * FirstOrderFill.MARGIN <= in.press().meltPressureMpa();
    }
}
