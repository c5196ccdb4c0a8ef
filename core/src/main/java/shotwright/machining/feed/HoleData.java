package shotwright.machining.feed;

import shotwright.cutter.Cutter;
import shotwright.mill.Mill;
import shotwright.stock.Machinability;
import shotwright.stock.MoldMaterial;

/**
 * How a hole is drilled, spotted or reamed.
 *
 * @param speedRpm spindle speed
 * @param surfaceMPerMin speed of the edge
 * @param feedPerTurnMm feed for each turn
 * @param feedMmPerMin feed
 * @param firstPeckMm depth of the first peck; the whole hole when it needs none
 * @param nextPeckMm depth of the pecks after it
 * @param tooFast the spindle cannot turn slowly enough; another way to make the hole is needed
 */
public record HoleData(
        double speedRpm,
        double surfaceMPerMin,
        double feedPerTurnMm,
        double feedMmPerMin,
        double firstPeckMm,
        double nextPeckMm,
        boolean tooFast) {
    /** Carbide drills run at twice the speed of high-speed steel (key DRILLS). */
    private static final double CARBIDE_FACTOR = 2;

    /** Reamers run at half to two thirds of the speed of the drill in a small shop (common practice). */
    private static final double REAM_SPEED_SHARE = 0.6;

    private static final double TINY_DRILL_MM = 2;
    private static final double FIRST_PECK_FACTOR = 1.5;
    private static final double NEXT_PECK_FACTOR = 0.75;
    private static final double TINY_PECK_FACTOR = 0.4;

    /** Holes no deeper than this many diameters are drilled in one. */
    private static final double NO_PECK_RATIO = 2;

    /**
     * Drilling and spotting. Speed and feed fall with depth over diameter; pecks of 1.5, then 0.75 diameters, below 2 mm 0.4 (common practice).
     *
     * @param diaMm diameter of the hole the drill or spot drill makes
     * @param depthMm depth of the full diameter
     */
    public static HoleData drill(
            Cutter drill, double diaMm, double depthMm, MoldMaterial alloy, Mill mill, FeedTable table) {
        Machinability m = alloy.machinability();
        double factor = drill.material() == Cutter.Material.CARBIDE ? CARBIDE_FACTOR : 1;
        double ratio = depthMm / diaMm;
        boolean deep = ratio >= table.drillDepth().aspectRatio().getFirst();
        double speedShare = deep
                ? FeedTable.interpolate(
                        table.drillDepth().aspectRatio(), table.drillDepth().speedShare(), ratio)
                : 1;
        double feedShare = deep
                ? FeedTable.interpolate(
                        table.drillDepth().aspectRatio(), table.drillDepth().feedShare(), ratio)
                : 1;
        double feedMm = feedShare * perTurnMm(diaMm, table);
        double wish = FeedRate.speedRpm(speedShare * factor * m.drillMPerMin().low(), diaMm);
        double first = ratio <= NO_PECK_RATIO ? depthMm : FIRST_PECK_FACTOR * diaMm;
        double next = (diaMm < TINY_DRILL_MM ? TINY_PECK_FACTOR : NEXT_PECK_FACTOR) * diaMm;
        return run(drill, diaMm, wish, factor * m.drillMPerMin().high(), feedMm, first, next, mill);
    }

    /** Reaming in one pass without a dwell: feed 2.5 times that of the drill. */
    public static HoleData ream(Cutter reamer, double depthMm, MoldMaterial alloy, Mill mill, FeedTable table) {
        Machinability m = alloy.machinability();
        double diaMm = reamer.diaMm().value();
        double wish = FeedRate.speedRpm(REAM_SPEED_SHARE * m.drillMPerMin().low(), diaMm);
        double feedMm = table.reamFeedFactor().mid() * perTurnMm(diaMm, table);
        return run(reamer, diaMm, wish, m.reamMPerMin().high(), feedMm, depthMm, depthMm, mill);
    }

    private static double perTurnMm(double diaMm, FeedTable table) {
        return FeedTable.interpolate(table.drill().diaMm(), table.drill().feedMm(), diaMm);
    }

    private static HoleData run(
            Cutter cutter,
            double diaMm,
            double wishRpm,
            double fastestMPerMin,
            double feedMm,
            double first,
            double next,
            Mill mill) {
        var top = cutter.maxRpm();
        double most = Math.min(mill.maxRpm().value(), top == null ? Double.POSITIVE_INFINITY : top.value());
        double rpm = Math.min(most, Math.max(mill.minRpm().value(), wishRpm));
        double surface = FeedRate.surfaceMPerMin(rpm, diaMm);
        boolean tooFast =
                surface > 1.001 * fastestMPerMin || rpm < mill.minRpm().value();
        double perTurn = Math.min(feedMm, mill.maxFeedMmPerMin().value() / rpm);
        return new HoleData(rpm, surface, perTurn, perTurn * rpm, first, next, tooFast);
    }

    /** Height of a drill's point: D/(2·tan(P/2)). */
    public static double pointMm(double diaMm, double pointRad) {
        return diaMm / 2 / Math.tan(pointRad / 2);
    }

    /** True when a drill leaves a reamer what it should take off. */
    public static boolean leavesEnoughToReam(double leftMm, double reamedMm, FeedTable table) {
        FeedTable.ReamStock stock = table.reamStock();
        return leftMm >= FeedTable.interpolate(stock.diaMm(), stock.lowMm(), reamedMm) - 1e-9
                && leftMm <= FeedTable.interpolate(stock.diaMm(), stock.highMm(), reamedMm) + 1e-9;
    }

    /** Drill size that leaves a reamer what it should take off: the middle of the usual stock on the diameter. */
    public static double drillBeforeReamMm(double reamedMm, FeedTable table) {
        FeedTable.ReamStock stock = table.reamStock();
        double low = FeedTable.interpolate(stock.diaMm(), stock.lowMm(), reamedMm);
        double high = FeedTable.interpolate(stock.diaMm(), stock.highMm(), reamedMm);
        return reamedMm - (low + high) / 2;
    }
}
