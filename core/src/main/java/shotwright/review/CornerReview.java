package shotwright.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.finding.Finding;
import shotwright.finding.Severity;
import shotwright.geom.Vec3;
import shotwright.measure.Source;
import shotwright.mesh.Grid;
import shotwright.mesh.GreyMorphology;
import shotwright.mesh.GreyMorphology.Element;
import shotwright.part.PulledPart;
import shotwright.progress.Progress;

/**
 * Inside corners and slots of both halves against the end mills owned. The metal surface is closed with each cutter, largest first (grey
 * closing over heights); where metal is left more than {@value #REST_MM} mm above the surface by flat and ball alike, that size does not
 * reach. A place is named by the largest size that clears it.
 */
final class CornerReview {
    static final double REST_MM = 0.05;
    private static final int MOST_CELLS = 600_000;
    private static final double LARGEST_RADIUS = 3;
    private static final double[] LADDER = {3, 1.5, 1, 0.5, 0.4, 0.25, 0.2};
    private static final double SHANK_MM = 3;
    private static final int MOST_ROWS = 24;
    private static final double SMALL_CUTTER_MM = 1;
    private static final Source REACH = Source.measured("closing of the mold surface with each cutter, rest above 0.05 mm");

    private final PulledPart pulled;
    private final RackCutters cutters;

    CornerReview(PulledPart pulled, RackCutters cutters) {
        this.pulled = pulled;
        this.cutters = cutters;
    }

    /** What one size of cutter leaves. */
    private record Level(double radiusMm, List<Spot> spots) {}

    private record Spot(Side side, Vec3 pulledMm, double restMm2, double depthMm, double widthMm, boolean slot) {}

    List<Said<InsideCorner>> review(Progress progress) {
        double[] radii = sizes();
        List<Level> levels = new ArrayList<>();
        for (int k = 0; k < radii.length; k++) {
            progress.at("trying cutters in corners", k / (double) radii.length);
            Level level = new Level(radii[k], left(radii[k]));
            levels.add(level);
            if (level.spots.isEmpty()) break;
        }
        List<InsideCorner> corners = new ArrayList<>();
        for (int k = 0; k < levels.size(); k++) {
            double next = k + 1 < radii.length ? radii[k + 1] : 0;
            List<Spot> finer = k + 1 < levels.size() ? levels.get(k + 1).spots : List.of();
            for (Spot s : levels.get(k).spots)
                if (finer.stream().noneMatch(f -> isSame(f, s, radii[Math.min(levels.size() - 1, 0)]))) corners.add(corner(s, next));
        }
        return told(corners);
    }

    private static boolean isSame(Spot finer, Spot coarse, double reach) {
        return finer.side == coarse.side
                && finer.pulledMm.xy().distance(coarse.pulledMm.xy()) < Math.min(reach, 2 * Math.sqrt(coarse.restMm2) + 0.5);
    }

    /** Radii to try: of those owned, the ones nearest below the usual sizes. */
    private double[] sizes() {
        double[] owned = cutters.radiiMm();
        return Arrays.stream(LADDER)
                .map(want -> Arrays.stream(owned).filter(r -> r <= want + 1e-9).max().orElse(0))
                .filter(r -> r > 0 && r <= LARGEST_RADIUS)
                .distinct()
                .toArray();
    }

    private List<Spot> left(double radius) {
        Vec3 size = pulled.mesh().box().size();
        double margin = 2 * radius + 0.2;
        double area = (size.x() + 2 * margin) * (size.y() + 2 * margin);
        double cell = Math.max(radius / 10, Math.sqrt(area / MOST_CELLS));
        List<Spot> all = new ArrayList<>();
        for (HalfSurface half : HalfSurface.both(pulled, cell, margin)) all.addAll(left(half, radius));
        return all;
    }

    /** Rest of one half after the cutter: marked where flat and ball alike leave metal. */
    static BitSet rest(HalfSurface half, double radius) {
        Grid grid = half.grid();
        float[] z = half.heightMm();
        float[] flat = GreyMorphology.close(z, grid, Element.disc(radius, grid.cell()));
        BitSet rest = new BitSet(grid.count());
        for (int c = 0; c < z.length; c++) if (flat[c] - z[c] > REST_MM) rest.set(c);
        if (rest.isEmpty()) return rest;
        float[] ball = GreyMorphology.close(z, grid, Element.ball(radius, grid.cell()));
        for (int c = rest.nextSetBit(0); c >= 0; c = rest.nextSetBit(c + 1))
            if (ball[c] - z[c] <= REST_MM) rest.clear(c);
        return rest;
    }

    private List<Spot> left(HalfSurface half, double radius) {
        Grid grid = half.grid();
        List<Spot> spots = new ArrayList<>();
        for (GridPatches.Patch p : GridPatches.of(grid, rest(half, radius))) {
            if (!p.isSolid() || p.cells().length < 6) continue;
            int deepest = p.cells()[0];
            for (int c : p.cells()) if (half.heightMm()[c] < half.heightMm()[deepest]) deepest = c;
            double depth = half.highestNear(deepest, SHANK_MM) - half.heightMm()[deepest];
            double width = width(half, deepest, 2.2 * radius);
            spots.add(new Spot(
                    half.side(), half.place(deepest), p.areaMm2(grid), depth, width, width < 2 * radius * 1.02));
        }
        return spots;
    }

    /** Least distance between metal on opposite sides, over four directions; infinite when it is wider than asked. */
    private static double width(HalfSurface half, int cell, double mostMm) {
        Grid g = half.grid();
        double best = Double.POSITIVE_INFINITY;
        int[][] ways = {{1, 0}, {1, 1}, {0, 1}, {-1, 1}};
        for (int[] w : ways) {
            double step = g.cell() * Math.hypot(w[0], w[1]);
            double there = wall(half, cell, w[0], w[1], mostMm / step), back = wall(half, cell, -w[0], -w[1], mostMm / step);
            best = Math.min(best, (there + back - 1) * step);
        }
        return best;
    }

    private static double wall(HalfSurface half, int cell, int di, int dj, double most) {
        Grid g = half.grid();
        int i = cell % g.nx(), j = cell / g.nx();
        for (int n = 1; n <= most; n++) {
            i += di;
            j += dj;
            if (i < 0 || j < 0 || i >= g.nx() || j >= g.ny()) break;
            if (half.heightMm()[g.index(i, j)] > half.heightMm()[cell] + 2 * REST_MM) return n;
        }
        return Double.POSITIVE_INFINITY;
    }

    private InsideCorner corner(Spot s, double nextRadius) {
        String cutter = cutters.ofRadius(nextRadius).stream()
                .filter(t -> t.reachMm() >= s.depthMm)
                .map(RackCutters.Tool::name)
                .findFirst()
                .orElse("");
        return new InsideCorner(
                0,
                pulled.toFile(s.pulledMm),
                s.side,
                s.slot,
                cutter.isEmpty() ? 0 : 2 * nextRadius,
                Double.isFinite(s.widthMm) ? s.widthMm : 0,
                s.depthMm,
                s.restMm2,
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
                List<InsideCorner> mine = alike.stream().filter(c -> c.side() == side).toList();
                Finding f = mine.isEmpty() ? null : finding(mine);
                mine.stream().limit(MOST_ROWS).forEach(c -> said.add(new Said<>(c, f)));
            }
            i = end;
        }
        return said;
    }

    private @Nullable Finding finding(List<InsideCorner> mine) {
        InsideCorner worst = mine.getFirst();
        double needs = worst.needsMm(), area = mine.stream().mapToDouble(InsideCorner::restMm2).sum();
        double deepest = mine.stream().mapToDouble(InsideCorner::depthMm).max().orElse(0);
        if (needs > SMALL_CUTTER_MM + 1e-6) return null;
        long slots = mine.stream().filter(InsideCorner::slot).count();
        String what = slots == mine.size() ? "slot" : slots == 0 ? "inside corner" : "corner and slot";
        String places = mine.size() == 1 ? "One " + what : mine.size() + " " + (what.startsWith("corner and") ? "corners and slots" : what + "s");
        if (needs == 0) return unreachable(mine, places, deepest, area);
        return Finding.of(
                        needs <= 0.6 ? Severity.WATCH : Severity.NOTE,
                        "small-cutter",
                        places + " of " + worst.side().words() + (mine.size() == 1 ? " takes" : " take")
                                + " only a cutter of " + Say.mm(needs, 1) + ", up to " + Say.mm(deepest) + " deep.")
                .at(worst.at())
                .measured(needs, SMALL_CUTTER_MM, "mm", REACH)
                .remedy(
                        "Radius " + Say.mm(SMALL_CUTTER_MM / 2 + 0.1, 1) + " on these edges of the part.",
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
                                + " out of reach of every cutter on the rack: up to " + Say.mm(deepest) + " deep" + narrow + ".")
                .at(worst.at())
                .measured(area, 0, "mm²", REACH)
                .remedy(
                        "Wider or rounder there, or buy a longer cutter, or split the mold there with an insert.",
                        "",
                        "Hand work or spark erosion over " + Say.number(area, area < 10 ? 1 : 0) + " mm².");
    }
}
