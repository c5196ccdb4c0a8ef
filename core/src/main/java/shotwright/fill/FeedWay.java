package shotwright.fill;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shotwright.layout.FeedSegment;
import shotwright.layout.LayoutResult;
import shotwright.layout.Section;
import shotwright.resin.ChannelFlow;
import shotwright.resin.ChannelFlow.CrossSection;
import shotwright.solve.ErrorFunction;

/**
 * The way from the nozzle to one cavity: which pieces, what share of the flow each carries, and the pressure it takes. Each piece is narrowed
 * on all sides by the skin that freezes while melt passes (no deeper than fresh melt lets it grow), and its melt is taken as a power law
 * about the shear rate it has there. Pieces: tube F25, taper F27, other sections by Kozicki; entrance loss F32 at the gate (MEN, from
 * memory).
 */
final class FeedWay {
    /** Entrance loss of a gate in wall shear stresses, low end of the 3 to 8 in circulation. */
    private static final double BAGLEY_FACTOR = 3;

    private final List<FeedSegment> way;
    private final Map<Integer, Double> flowShare = new HashMap<>();

    private FeedWay(List<FeedSegment> way) {
        this.way = way;
    }

    static FeedWay to(int cavity, LayoutResult layout) {
        Map<Integer, FeedSegment> byNumber = new HashMap<>();
        for (FeedSegment s : layout.feed()) byNumber.put(s.number(), s);
        Map<Integer, Set<Integer>> serves = new HashMap<>();
        for (FeedSegment s : layout.feed()) {
            if (s.cavity() == 0 || !flows(s)) continue;
            for (FeedSegment up = s; up != null; up = byNumber.get(up.parent()))
                serves.computeIfAbsent(up.number(), k -> new HashSet<>()).add(s.cavity());
        }
        FeedSegment last = null;
        for (FeedSegment s : layout.feed()) {
            if (s.cavity() == cavity && flows(s)) last = s;
        }
        List<FeedSegment> way = new ArrayList<>();
        for (FeedSegment s = last; s != null; s = byNumber.get(s.parent())) way.addFirst(s);
        FeedWay feed = new FeedWay(way);
        int cavities = Math.max(1, layout.cavities().size());
        for (FeedSegment s : way)
            feed.flowShare.put(
                    s.number(), serves.getOrDefault(s.number(), Set.of(cavity)).size() / (double) cavities);
        return feed;
    }

    private static boolean flows(FeedSegment s) {
        return s.kind() != FeedSegment.Kind.COLD_SLUG && s.kind() != FeedSegment.Kind.PULLER;
    }

    double lengthMm() {
        return way.stream().mapToDouble(FeedSegment::lengthMm).sum();
    }

    /** Pieces of the way with their pressure, nozzle first. */
    List<FillResult.PressureStep> steps(FillTry at, double totalFlowMm3PerS) {
        List<FillResult.PressureStep> out = new ArrayList<>();
        double before = 0;
        for (FeedSegment s : way) {
            double flow = totalFlowMm3PerS * flowShare.getOrDefault(s.number(), 1.0);
            out.add(step(s, at, flow, before + s.lengthMm() / 2));
            before += s.lengthMm();
        }
        return out;
    }

    private static FillResult.PressureStep step(FeedSegment s, FillTry at, double flowMm3PerS, double fromNozzleMm) {
        Section from = at.sized(s, s.from()), to = at.sized(s, s.to());
        Melt melt = at.melt();
        double rate = Math.max(rate(from, flowMm3PerS), rate(to, flowMm3PerS));
        double skin = skinMm(at, fromNozzleMm, Math.min(rate(from, flowMm3PerS), rate(to, flowMm3PerS)));
        double n = melt.viscosity().indexRatio(rate, melt.meltC());
        double eta = at.viscosityFactor() * melt.viscosity().paS(rate, melt.meltC());
        double m = eta * Math.pow(rate, 1 - n);
        double drop;
        if (narrow(from, skin) <= 0 || narrow(to, skin) <= 0) drop = Double.POSITIVE_INFINITY;
        else drop = dropPa(s, from, to, skin, m, n, flowMm3PerS * 1e-9);
        double stress = eta * rate * 1e-6;
        if (s.kind() == FeedSegment.Kind.GATE) drop += ChannelFlow.entranceLossPa(BAGLEY_FACTOR, stress * 1e6);
        return new FillResult.PressureStep(name(s), s.lengthMm(), drop * 1e-6, rate, stress);
    }

    private static double dropPa(
            FeedSegment s, Section from, Section to, double skin, double m, double n, double flowM3PerS) {
        double length = s.lengthMm() * 1e-3;
        if (from.shape() == Section.Shape.ROUND && to.shape() == Section.Shape.ROUND) {
            double r1 = (from.widthMm() / 2 - skin) * 1e-3, r2 = (to.widthMm() / 2 - skin) * 1e-3;
            return ChannelFlow.taperDropPa(m, n, length, r1, r2, flowM3PerS);
        }
        // a section that changes is cut into pieces of like section
        int pieces = from.equals(to) ? 1 : 8;
        double sum = 0;
        for (int k = 0; k < pieces; k++) {
            double share = (k + 0.5) / pieces;
            Section mid = between(from, to, share, skin);
            CrossSection shape =
                    switch (mid.shape()) {
                        case ROUND -> CrossSection.ROUND;
                        case HALF_ROUND -> CrossSection.HALF_ROUND;
                        case TRAPEZOID, RECTANGLE ->
                            CrossSection.rectangle(mid.areaMm2() / mid.depthMm(), mid.depthMm());
                    };
            sum += ChannelFlow.channelDropPa(
                    shape, m, n, length / pieces, mid.areaMm2() * 1e-6, mid.perimeterMm() * 1e-3, flowM3PerS);
        }
        return sum;
    }

    private static Section between(Section a, Section b, double share, double skin) {
        double width = a.widthMm() + (b.widthMm() - a.widthMm()) * share - 2 * skin;
        double depth = a.depthMm() + (b.depthMm() - a.depthMm()) * share;
        double less = a.shape() == Section.Shape.ROUND || a.shape() == Section.Shape.HALF_ROUND ? skin : 2 * skin;
        return new Section(a.shape(), width, depth - less, a.wallDraftDeg());
    }

    private static double narrow(Section s, double skin) {
        double opening = s.shape() == Section.Shape.ROUND ? s.widthMm() : Math.min(s.widthMm(), s.depthMm());
        return opening - 2.2 * skin;
    }

    /** Apparent shear rate at the wall, 1/s. */
    static double rate(Section s, double flowMm3PerS) {
        return switch (s.shape()) {
            case ROUND -> ChannelFlow.roundShearRatePerS(flowMm3PerS, s.widthMm() / 2);
            case RECTANGLE ->
                ChannelFlow.slotShearRatePerS(
                        flowMm3PerS, Math.max(s.widthMm(), s.depthMm()), Math.min(s.widthMm(), s.depthMm()));
            case HALF_ROUND, TRAPEZOID -> 8 * flowMm3PerS * s.perimeterMm() / (4 * s.areaMm2() * s.areaMm2());
        };
    }

    private static double skinMm(FillTry at, double fromNozzleMm, double ratePerS) {
        Melt melt = at.melt();
        double layer = at.slit().layerMm(at.timeS(), fromNozzleMm, ratePerS);
        return layer * ErrorFunction.inverse((melt.noFlowC() - melt.moldC()) / (melt.meltC() - melt.moldC()));
    }

    private static String name(FeedSegment s) {
        return switch (s.kind()) {
            case SPRUE -> "sprue";
            case RUNNER -> "runner";
            case GATE -> "gate";
            case COLD_SLUG -> "cold slug well";
            case PULLER -> "sprue puller";
        };
    }
}
