package shotwright.machining.hole;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import shotwright.cutter.Cutter;
import shotwright.machining.feed.Entry;
import shotwright.machining.feed.FeedTable;
import shotwright.machining.feed.HoleData;
import shotwright.stock.Fit;
import shotwright.stock.HoleLimits;

/** How a hole with limits is made. */
public sealed interface FittedHole {
    /** Reamers sold in inches cut from their size to so much over it (common practice). */
    double INCH_REAMER_OVER_MM = 0.005;

    /**
     * Drilled and reamed.
     *
     * @param drill what is drilled with first
     * @param reamer what brings it to size
     */
    record Reamed(Cutter drill, Cutter reamer) implements FittedHole {}

    /**
     * Bored on a helix.
     *
     * @param cutter the end mill
     * @param steps the passes
     */
    record Bored(Cutter cutter, BoreSteps steps) implements FittedHole {}

    /**
     * Not possible with these cutters.
     *
     * @param why in words, and what to buy
     */
    record NotPossible(String why) implements FittedHole {}

    /** Holes a reamer makes: H7 of its size when sold in millimetres, its size to 0.005 mm over it when sold in inches. */
    static HoleLimits reamedBy(Cutter reamer) {
        double dia = reamer.diaMm().value();
        return reamer.soldIn() == Cutter.SoldIn.MM
                ? HoleLimits.of(Fit.H7, dia)
                : new HoleLimits(dia, dia + INCH_REAMER_OVER_MM);
    }

    /**
     * A reamer whose every hole is within the limits, with a drill that leaves it what it should take; else the thickest end mill that bores the
     * hole on a helix and reaches its bottom.
     */
    static FittedHole of(HoleLimits hole, double depthMm, List<Cutter> cutters, FeedTable table) {
        Optional<Cutter> reamer = cutters.stream()
                .filter(c -> c.shape() == Cutter.Shape.REAMER)
                .filter(c -> hole.takes(reamedBy(c)) && c.reachMm().value() >= depthMm)
                .findFirst();
        if (reamer.isPresent()) {
            Optional<Cutter> drill = drillFor(reamer.get(), depthMm, cutters, table);
            if (drill.isPresent()) return new Reamed(drill.get(), reamer.get());
        }
        Optional<Cutter> mill = cutters.stream()
                .filter(c -> c.shape() == Cutter.Shape.FLAT && c.reachMm().value() >= depthMm)
                .filter(c -> hole.lowMm()
                        >= Entry.NARROWEST_HELIX_HOLE_FACTOR * c.diaMm().value())
                .filter(c -> hole.highMm()
                        <= Entry.WIDEST_HELIX_HOLE_FACTOR * c.diaMm().value())
                .max(Comparator.comparingDouble(c -> c.diaMm().value()));
        if (mill.isPresent())
            return new Bored(mill.get(), new BoreSteps(hole, mill.get().diaMm().value()));
        return new NotPossible(String.format(
                Locale.ROOT,
                "No reamer and no end mill of these makes a hole from %.3f to %.3f mm, %.1f mm deep; buy a reamer for it or an end mill of %.1f to %.1f mm that reaches its bottom.",
                hole.lowMm(),
                hole.highMm(),
                depthMm,
                hole.lowMm() / Entry.WIDEST_HELIX_HOLE_FACTOR,
                hole.lowMm() / Entry.NARROWEST_HELIX_HOLE_FACTOR));
    }

    private static Optional<Cutter> drillFor(Cutter reamer, double depthMm, List<Cutter> cutters, FeedTable table) {
        double reamed = reamer.diaMm().value(), wish = HoleData.drillBeforeReamMm(reamed, table);
        return cutters.stream()
                .filter(c -> c.shape() == Cutter.Shape.DRILL && c.reachMm().value() >= depthMm)
                .filter(c -> HoleData.leavesEnoughToReam(reamed - c.diaMm().value(), reamed, table))
                .min(Comparator.comparingDouble(c -> Math.abs(c.diaMm().value() - wish)));
    }
}
