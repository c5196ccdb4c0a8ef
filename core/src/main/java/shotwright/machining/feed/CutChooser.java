package shotwright.machining.feed;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import shotwright.cutter.Cutter;
import shotwright.measure.Digits;
import shotwright.measure.QuantityRange;
import shotwright.mill.Mill;

/** Chooses how a cut is run. */
final class CutChooser {
    /** Cutters below this start at half the feed (common practice). */
    private static final double TINY_MM = Entry.TINY_MM;

    /** Speed tiny cutters should have at least (common practice). */
    private static final double TINY_RPM = 18_000;

    /** Chips are not made thinner than this share of the table before depth is given up (common practice). */
    private static final double LEAST_CHIP_SHARE = 0.5;

    /** How far a spindle that cannot turn slowly may drive an edge over the published speed (common practice). */
    private static final double MOST_OVERSPEED_FACTOR = 1.5;

    private static final double SHALLOWEST_MM = 0.01;
    private static final double TINY_DEPTH_UP_TO_MM = 0.8;
    private static final double ENGRAVE_FEED_MM_PER_MIN = 300;

    /** Shanks thicker than this many cutting diameters count as rigid beside the slender part. */
    private static final double STEPPED_FACTOR = 1.3;

    private final Cut cut;
    private final Cutter cutter;
    private final Mill mill;
    private final FeedTable table;
    private final CutModel model;
    private final List<String> reasons = new ArrayList<>();

    CutChooser(Cut cut, FeedTable table) {
        this.cut = cut;
        this.cutter = cut.cutter();
        this.mill = cut.mill();
        this.table = table;
        this.model = new CutModel(cut);
    }

    CutChoice choose() {
        double shankMm = cutter.shankMm().value();
        if (shankMm > mill.largestShankMm().value())
            return no(
                    "its shank of %s mm does not fit the mill's collets, which take up to %s mm",
                    shankMm, mill.largestShankMm().value());
        var top = cutter.maxRpm();
        double mostRpm = Math.min(mill.maxRpm().value(), top == null ? Double.POSITIVE_INFINITY : top.value());
        if (mostRpm < mill.minRpm().value())
            return no(
                    "it may turn %s 1/min at most and this spindle turns %s 1/min at least",
                    mostRpm, mill.minRpm().value());
        double ratio = asCarbide(aspectRatio());
        if (ratio > table.reach().longestRatio())
            return no(
                    "it is %s times as long as thick, and beyond %s it bends more than it cuts; widen the place, cut it as an insert or spark it",
                    aspectRatio(), table.reach().longestRatio());
        return cut(ratio, mostRpm);
    }

    private NoCut no(String why, double a, double b) {
        return new NoCut(cutter.name() + ": " + String.format(Locale.ROOT, why, plain(a), plain(b)) + ".");
    }

    /** Length of the slender part over its diameter: to the reach when a thicker shank follows, else to the holder. */
    private double aspectRatio() {
        double endMm = cutter.largestDiaMm();
        boolean stepped = cutter.shankMm().value() > STEPPED_FACTOR * endMm
                || cutter.taperDeg().value() > 0;
        double lengthMm = stepped ? Math.min(cut.stickoutMm(), cutter.reachMm().value()) : cut.stickoutMm();
        return lengthMm / cutter.diaAtMm(cutter.fluteLengthMm().value() / 2);
    }

    private double asCarbide(double ratio) {
        return cutter.material() == Cutter.Material.HSS ? table.reach().asCarbide(ratio) : ratio;
    }

    private CutChoice cut(double ratio, double mostRpm) {
        FeedTable.Reach reach = table.reach();
        double tableDiaMm =
                cutter.diaAtMm(Math.min(cut.depthMm(), cutter.fluteLengthMm().value()) / 2);
        boolean tiny = cutter.diaMm().value() <= TINY_DEPTH_UP_TO_MM;
        double depthShare =
                FeedTable.interpolate(reach.aspectRatio(), tiny ? reach.tinyDepthShare() : reach.depthShare(), ratio);
        double feedShare = FeedTable.interpolate(reach.aspectRatio(), reach.feedShare(), ratio);
        Mill.Frame frame = mill.frame();
        if (frame != null) {
            depthShare *= frame.depthShare().value();
            feedShare *= frame.feedShare().value();
        }
        if (cut.kind().finishes()) depthShare = 1; // what is left must come off; bending says how deep
        FeedTable.Depth row = table.depth(cut.kind(), cutter.diaMm().value());
        double tableDepthMm = row.depthOfMm(tableDiaMm) * depthShare;
        double depthMm = Math.min(
                cut.depthMm(), Math.min(tableDepthMm, cutter.fluteLengthMm().value()));
        if (depthMm < cut.depthMm())
            reasons.add(String.format(
                    Locale.ROOT,
                    "Passes of %s mm: what the table gives this cutter%s.",
                    plain(depthMm),
                    depthShare < 1 ? ", less for its reach and the mill's frame" : ""));
        double cuttingDiaMm = model.cuttingDiaMm(depthMm);
        double widthMm = Math.min(cut.widthMm(), Math.min(row.widthOfMm(tableDiaMm), cuttingDiaMm));
        if (cut.kind() == CutKind.SLOT || cut.kind() == CutKind.ENGRAVE) widthMm = cuttingDiaMm;

        double rpm = speed(depthMm, mostRpm);
        double surface = FeedRate.surfaceMPerMin(rpm, model.fastestDiaMm(depthMm));
        double fastest = surfaceRange().high();
        if (surface > MOST_OVERSPEED_FACTOR * fastest)
            return no(
                    "the spindle turns so fast that its edge runs at %s m/min; the alloy allows about %s m/min; take a smaller cutter",
                    surface, fastest);
        if (surface > fastest * 1.001)
            reasons.add("The slowest speed of the spindle drives the edge at " + plain(surface) + " m/min; "
                    + plain(fastest) + " m/min are usual. It wears sooner.");

        double slotChipMm = chip(tableDiaMm) * feedShare;
        double wishChipMm = slotChipMm * cut.kind().chipShare();
        return fed(wishChipMm, slotChipMm, depthMm, widthMm, rpm, surface);
    }

    private double chip(double diaMm) {
        return cut.kind() == CutKind.ENGRAVE ? table.engraveUm().mid() / 1000 : table.chipMm(diaMm, cutter.material());
    }

    private QuantityRange surfaceRange() {
        var m = cut.alloy().machinability();
        return cutter.material() == Cutter.Material.CARBIDE ? m.carbideMPerMin() : m.hssMPerMin();
    }

    private double speed(double depthMm, double mostRpm) {
        double wishRpm = FeedRate.speedRpm(surfaceRange().mid(), model.fastestDiaMm(depthMm));
        if (cut.kind() == CutKind.ENGRAVE) wishRpm = table.engraveRpm().clamp(wishRpm);
        double rpm = Math.clamp(wishRpm, mill.minRpm().value(), mostRpm);
        if (cutter.diaMm().value() < TINY_MM && rpm < TINY_RPM)
            reasons.add("Cutters this small want " + plain(TINY_RPM) + " 1/min and more; it turns " + plain(rpm)
                    + " 1/min.");
        return rpm;
    }

    private CutChoice fed(
            double wishChipMm, double slotChipMm, double depthMm, double widthMm, double rpm, double surface) {
        int teeth = cutter.flutes();
        double feedCap = Math.min(
                mill.maxFeedMmPerMin().value(),
                cut.kind() == CutKind.ENGRAVE ? ENGRAVE_FEED_MM_PER_MIN : Double.POSITIVE_INFINITY);
        double capMm = feedCap / (teeth * rpm);
        double engagement = Chip.engagementRad(widthMm, model.cuttingDiaMm(depthMm));
        double thinning = Chip.thinningFactor(widthMm, model.cuttingDiaMm(depthMm));
        double thinnestMm = Math.min(CutModel.THINNEST_CHIP_MM, wishChipMm) * thinning;
        double thinnedMm = wishChipMm * Math.min(BallContact.MOST_THINNING_FACTOR, thinning);
        double wishMm = Math.min(
                capMm, cut.kind().finishes() ? Math.max(wishChipMm, Math.min(thinnestMm, thinnedMm)) : thinnedMm);
        Limit limit = wishMm < capMm ? Limit.CHIP_LOAD : Limit.MACHINE_FEED;
        if (wishMm > wishChipMm && cut.kind().finishes()) limit = Limit.THIN_CHIP;

        double passMm = depthMm, leastMm = LEAST_CHIP_SHARE * wishMm;
        double feedMm = model.feedPerToothMm(wishMm, passMm, engagement, rpm);
        if (feedMm < leastMm) {
            double held = leastMm, width = widthMm;
            passMm = CutModel.largest(
                    depthMm,
                    d -> d > 0
                            && model.use(
                                            model.load(held, d, Chip.engagementRad(width, model.cuttingDiaMm(d)), rpm),
                                            rpm)
                                    <= 1);
            if (passMm < SHALLOWEST_MM)
                return no(
                        "even a pass of %s mm bends or loads it beyond what is allowed at a stickout of %s mm; hold it shorter",
                        SHALLOWEST_MM, cut.stickoutMm());
            engagement = Chip.engagementRad(width, model.cuttingDiaMm(passMm));
            feedMm = model.feedPerToothMm(wishMm, passMm, engagement, rpm);
        }
        CutLoad load = model.load(feedMm, passMm, engagement, rpm);
        if (feedMm < wishMm) limit = model.tightest(load, rpm);
        if (passMm < depthMm)
            reasons.add("Passes of " + plain(passMm) + " mm instead of " + plain(depthMm) + " mm: "
                    + model.tightest(load, rpm).words() + ".");
        reasons.add(0, sentence(limit, load, rpm));
        if (cutter.diaMm().value() < TINY_MM)
            reasons.add("A cutter this small starts at half the feed; measure its length, blow the chips away.");
        if (model.runOutMm() > 0.1 * feedMm && cutter.diaMm().value() < 3)
            reasons.add("Run-out of " + Digits.fixed(model.runOutMm(), 3) + " mm is "
                    + Math.round(100 * model.runOutMm() / feedMm)
                    + " % of the feed per tooth and "
                    + Digits.figures(100 * model.runOutMm() / cutter.diaMm().value(), 2)
                    + " % of the diameter; clean the collet.");
        double feed = FeedRate.mmPerMin(feedMm, teeth, rpm);
        double dia = cutter.diaMm().value();
        double slotFeed = Math.min(feed, FeedRate.mmPerMin(slotChipMm * CutKind.SLOT.chipShare(), teeth, rpm));
        return new CutData(
                cut,
                rpm,
                surface,
                feedMm,
                feed,
                passMm,
                widthMm,
                feedMm * Chip.largestShare(engagement),
                CuttingPower.removalCm3PerMin(passMm, widthMm, feed),
                Entry.plunges(cutter) ? Entry.plungeMmPerMin(slotFeed, dia) : 0,
                Entry.rampDeg(dia),
                load,
                limit,
                reasons);
    }

    private String sentence(Limit limit, CutLoad load, double rpm) {
        String feed = "The feed is held by " + limit.words();
        return feed
                + switch (limit) {
                    case POWER ->
                        ": " + plain(load.powerW().nominal()) + " W at the cutter of " + plain(mill.powerAtW(rpm))
                                + " W the motor has at this speed";
                    case BENDING -> ": " + Digits.fixed(load.deflectionMm().nominal(), 3) + " mm";
                    case BREAKAGE -> ": " + plain(load.stressMpa().high()) + " MPa";
                    case MACHINE_FEED -> ": " + plain(mill.maxFeedMmPerMin().value()) + " mm/min";
                    default -> "";
                }
                + ".";
    }

    private static String plain(double v) {
        return Digits.figures(v, v >= 1000 ? 4 : 3);
    }
}
