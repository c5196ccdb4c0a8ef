package shotwright.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.finding.Finding;
import shotwright.finding.Severity;
import shotwright.measure.InchSentence;
import shotwright.measure.Source;
import shotwright.part.PulledPart;
import shotwright.progress.Progress;

/**
 * Inside corners and slots of both halves against the end mills owned: every place that a large cutter leaves, named by the largest size
 * that clears it and reaches deep enough.
 */
final class CornerReview {
    private static final double[] LADDER = {1.5, 1, 0.5, 0.4, 0.25, 0.2};
    private static final int MOST_ROWS = 24;
    private static final double SMALL_CUTTER_MM = 1;
    private static final Source REACH =
            Source.measured("closing of the mold surface with each cutter, rest above 0.05 mm");

    private final PulledPart pulled;
    private final RackCutters cutters;

    /** What no cutter reaches but is smaller than this is scraped off at the bench, or is a step of the raster. */
    private static final double SCRAPED_MM2 = 0.1;

    CornerReview(PulledPart pulled, RackCutters cutters) {
        this.pulled = pulled;
        this.cutters = cutters;
    }

    List<Said<InsideCorner>> review(Progress progress) {
        double[] radii = sizes();
        if (radii.length == 0) return List.of();
        List<List<CutterReach.Spot>> left = new CutterReach(pulled).review(radii, progress);
        List<InsideCorner> corners = new ArrayList<>();
        for (int k = 0; k < left.size(); k++) {
            double next = k + 1 < radii.length ? radii[k + 1] : 0;
            List<CutterReach.Spot> finer = k + 1 < left.size() ? left.get(k + 1) : List.of();
            // the first size is tried with its flat end alone; what the second clears is of no interest
            for (CutterReach.Spot s : left.get(k)) {
                boolean remains = finer.stream().anyMatch(f -> f.side() == s.side() && isInside(s, f));
                InsideCorner c = corner(s, radii[k], next);
                boolean tick = c.cutter().isEmpty() && c.restMm2() < SCRAPED_MM2;
                if (!remains && !tick && (k > 0 || next == 0)) corners.add(c);
            }
        }
        return told(corners);
    }

    private static boolean isInside(CutterReach.Spot coarse, CutterReach.Spot finer) {
        var w = coarse.window().grow(0.05);
        var p = finer.pulledMm();
        return p.x() >= w.min().x()
                && p.x() <= w.max().x()
                && p.y() >= w.min().y()
                && p.y() <= w.max().y();
    }

    /** Radii to try: of those owned, the ones nearest below the usual sizes. */
    private double[] sizes() {
        double[] owned = cutters.radiiMm();
        return Arrays.stream(LADDER)
                .map(want ->
                        Arrays.stream(owned).filter(r -> r <= want + 1e-9).max().orElse(0))
                .filter(r -> r > 0)
                .distinct()
                .toArray();
    }

    private InsideCorner corner(CutterReach.Spot s, double radius, double nextRadius) {
        String cutter = cutters.ofRadius(nextRadius).stream()
                .filter(t -> t.reachMm() >= s.depthMm())
                .map(RackCutters.Tool::name)
                .findFirst()
                .orElse("");
        return new InsideCorner(
                0,
                pulled.toFile(s.pulledMm()),
                s.side(),
                s.widthMm() < 2 * radius * 1.02,
                cutter.isEmpty() ? 0 : 2 * nextRadius,
                Double.isFinite(s.widthMm()) ? s.widthMm() : 0,
                s.depthMm(),
                s.restMm2(),
                cutter);
    }

    /** Places of one half that need one cutter share a finding. */
    private List<Said<InsideCorner>> told(List<InsideCorner> corners) {
        corners.sort(Comparator.comparingDouble(InsideCorner::needsMm).thenComparing(c -> -c.restMm2()));
        List<Said<InsideCorner>> said = new ArrayList<>();
        for (int i = 0; i < corners.size(); ) {
            InsideCorner first = corners.get(i);
            int end = i;
            List<InsideCorner> alike = new ArrayList<>();
            while (end < corners.size() && corners.get(end).needsMm() == first.needsMm()) alike.add(corners.get(end++));
            for (Side side : Side.values()) {
                List<InsideCorner> mine =
                        alike.stream().filter(c -> c.side() == side).toList();
                Finding f = mine.isEmpty() ? null : finding(mine);
                mine.stream().limit(MOST_ROWS).forEach(c -> said.add(new Said<>(c, f)));
            }
            i = end;
        }
        return said;
    }

    private @Nullable Finding finding(List<InsideCorner> mine) {
        InsideCorner worst = mine.getFirst();
        double needs = worst.needsMm(),
                area = mine.stream().mapToDouble(InsideCorner::restMm2).sum();
        double deepest = mine.stream().mapToDouble(InsideCorner::depthMm).max().orElse(0);
        if (needs > SMALL_CUTTER_MM + 1e-6) return null;
        long slots = mine.stream().filter(InsideCorner::slot).count();
        String what = slots == mine.size() ? "slot" : slots == 0 ? "inside corner" : "corner and slot";
        String places = mine.size() == 1
                ? "One " + what
                : mine.size() + " " + (what.startsWith("corner and") ? "corners and slots" : what + "s");
        if (needs == 0) return unreachable(mine, places, deepest, area);
        return Finding.of(
                        needs <= 0.6 ? Severity.WATCH : Severity.NOTE,
                        "small-cutter",
                        places + " of " + worst.side().words() + (mine.size() == 1 ? " takes" : " take")
                                + " only a cutter of " + InchSentence.name(Say.mm(needs, 1)) + ", up to "
                                + Say.mm(deepest) + " deep.")
                .at(worst.at())
                .measured(needs, SMALL_CUTTER_MM, "mm", REACH)
                .remedy(
                        "Put a radius of " + Say.mm(SMALL_CUTTER_MM / 2 + 0.1, 1) + " on these edges of the part.",
                        "Edges get rounder, sizes stay.",
                        "A cutter change and slow passes over " + Say.number(area, area < 10 ? 1 : 0) + " mm².");
    }

    private Finding unreachable(List<InsideCorner> mine, String places, double deepest, double area) {
        InsideCorner worst = mine.getFirst();
        double width = mine.stream()
                .mapToDouble(InsideCorner::widthMm)
                .filter(w -> w > 0)
                .min()
                .orElse(0);
        String narrow = width > 0 ? ", " + Say.mm(width, 2) + " wide at the narrowest" : "";
        return Finding.ask(
                        "no-cutter",
                        places + " of " + worst.side().words() + (mine.size() == 1 ? " is" : " are")
                                + " out of reach of every cutter on the rack: up to " + Say.mm(deepest) + " deep"
                                + narrow + ".")
                .at(worst.at())
                .measured(area, 0, "mm²", REACH)
                .remedy(
                        "Make it wider or rounder there; or leave the drawing and buy a longer cutter, or split the mold there with an insert.",
                        "",
                        "Hand work or spark erosion over " + Say.number(area, area < 10 ? 1 : 0) + " mm².");
    }
}
