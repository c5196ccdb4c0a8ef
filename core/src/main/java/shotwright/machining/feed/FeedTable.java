package shotwright.machining.feed;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.cutter.Cutter;
import shotwright.measure.Quantity;
import shotwright.measure.QuantityRange;
import shotwright.measure.Source;
import shotwright.rack.Rack;

/**
 * Chip loads, depths and what long reach takes away, for one family of alloys. Start values: what the shop finds better belongs in its own
 * file.
 *
 * @param id id on the rack
 * @param name name shown
 * @param chips chip load of carbide cutters by diameter, in blocks of one source, diameters rising
 * @param hssShare share of it for high-speed steel
 * @param reach shares by length over diameter
 * @param depths depth and width by kind of cut, smaller diameters first
 * @param engraveUm chip load of engravers
 * @param engraveRpm speed of engravers
 * @param drill feed of drills by diameter
 * @param drillDepth shares of drill speed and feed by depth over diameter
 * @param reamStock what a reamer takes off, on the diameter
 * @param reamFeedFactor feed of a reamer over that of a drill
 */
public record FeedTable(
        String id,
        String name,
        List<ChipRow> chips,
        Quantity hssShare,
        Reach reach,
        List<Depth> depths,
        QuantityRange engraveUm,
        QuantityRange engraveRpm,
        DrillFeed drill,
        DrillDepth drillDepth,
        ReamStock reamStock,
        QuantityRange reamFeedFactor)
        implements Rack.Entry {
    private static final Rack<FeedTable> STANDARD = Rack.shipped("feed-table", FeedTable.class);

    /**
     * Chip loads.
     *
     * @param diaMm rising diameters
     * @param chipUm feed for each tooth
     * @param source where they come from
     */
    public record ChipRow(List<Double> diaMm, List<Double> chipUm, Source source) {
        public ChipRow {
            diaMm = List.copyOf(diaMm);
            chipUm = List.copyOf(chipUm);
            rising("diaMm", diaMm, chipUm);
        }
    }

    /**
     * What long reach leaves of feed and depth.
     *
     * @param aspectRatio rising length over diameter; beyond the last a cutter is not used
     * @param feedShare share of the chip load
     * @param depthShare share of the depth
     * @param tinyDepthShare share of the depth for cutters up to 0.8 mm
     * @param source where they come from
     */
    public record Reach(
            List<Double> aspectRatio,
            List<Double> feedShare,
            List<Double> depthShare,
            List<Double> tinyDepthShare,
            Source source) {
        public Reach {
            aspectRatio = List.copyOf(aspectRatio);
            feedShare = List.copyOf(feedShare);
            depthShare = List.copyOf(depthShare);
            tinyDepthShare = List.copyOf(tinyDepthShare);
            rising("aspectRatio", aspectRatio, feedShare);
            rising("aspectRatio", aspectRatio, depthShare);
            rising("aspectRatio", aspectRatio, tinyDepthShare);
        }

        /** The longest length over diameter there is a row for. */
        public double longestRatio() {
            return aspectRatio.getLast();
        }

        /** Length over diameter at which high-speed steel bends as carbide does at the next row: the table shifted by one row. */
        double asCarbide(double ratio) {
            List<Double> next = aspectRatio.subList(1, aspectRatio.size());
            List<Double> own = aspectRatio.subList(0, aspectRatio.size() - 1);
            return ratio > own.getLast() ? Double.POSITIVE_INFINITY : interpolate(own, next, ratio);
        }
    }

    /**
     * Usual depth and width of a kind of cut.
     *
     * @param kind the kind
     * @param fromDiaMm smallest diameter the row is for
     * @param depthShare depth over diameter; null when given in mm
     * @param depthMm depth; null when given over diameter
     * @param widthShare width over diameter; null when given in mm
     * @param widthMm width; null when given over diameter
     */
    public record Depth(
            CutKind kind,
            Quantity fromDiaMm,
            @Nullable QuantityRange depthShare,
            @Nullable QuantityRange depthMm,
            @Nullable QuantityRange widthShare,
            @Nullable QuantityRange widthMm) {
        public Depth {
            if ((depthShare == null) == (depthMm == null))
                throw new IllegalArgumentException("depthShare, depthMm: give one of them");
            if ((widthShare == null) == (widthMm == null))
                throw new IllegalArgumentException("widthShare, widthMm: give one of them");
        }

        /** Middle of the usual depth for a diameter. */
        public double depthOfMm(double diaMm) {
            return middle(depthShare, depthMm, diaMm);
        }

        /** Middle of the usual width for a diameter. */
        public double widthOfMm(double diaMm) {
            return middle(widthShare, widthMm, diaMm);
        }

        private static double middle(@Nullable QuantityRange share, @Nullable QuantityRange mm, double diaMm) {
            if (share != null) return share.mid() * diaMm;
            return mm == null ? diaMm : mm.mid();
        }
    }

    /**
     * Feed of drills.
     *
     * @param diaMm rising diameters
     * @param feedMm feed for each turn
     * @param source where they come from
     */
    public record DrillFeed(List<Double> diaMm, List<Double> feedMm, Source source) {
        public DrillFeed {
            diaMm = List.copyOf(diaMm);
            feedMm = List.copyOf(feedMm);
            rising("diaMm", diaMm, feedMm);
        }
    }

    /**
     * What deep holes leave of a drill's speed and feed; shallower than the first row they keep all.
     *
     * @param aspectRatio rising depth over diameter
     * @param speedShare share of the speed
     * @param feedShare share of the feed
     * @param source where they come from
     */
    public record DrillDepth(List<Double> aspectRatio, List<Double> speedShare, List<Double> feedShare, Source source) {
        public DrillDepth {
            aspectRatio = List.copyOf(aspectRatio);
            speedShare = List.copyOf(speedShare);
            feedShare = List.copyOf(feedShare);
            rising("aspectRatio", aspectRatio, speedShare);
            rising("aspectRatio", aspectRatio, feedShare);
        }
    }

    /**
     * Metal left for the reamer.
     *
     * @param diaMm rising diameters
     * @param lowMm least, on the diameter
     * @param highMm most, on the diameter
     * @param source where they come from
     */
    public record ReamStock(List<Double> diaMm, List<Double> lowMm, List<Double> highMm, Source source) {
        public ReamStock {
            diaMm = List.copyOf(diaMm);
            lowMm = List.copyOf(lowMm);
            highMm = List.copyOf(highMm);
            rising("diaMm", diaMm, lowMm);
            rising("diaMm", diaMm, highMm);
        }
    }

    public FeedTable {
        chips = List.copyOf(chips);
        depths = List.copyOf(depths);
        if (chips.isEmpty()) throw new IllegalArgumentException("chips: none");
    }

    /** The tables that ship with the program. */
    public static Rack<FeedTable> standard() {
        return STANDARD;
    }

    /**
     * Chip load of a sharp, short cutter, mm for each tooth: between the rows along a straight line, below the first in proportion to the
     * diameter, above the last as the last.
     */
    public double chipMm(double diaMm, Cutter.Material material) {
        List<Double> dias = chips.stream().flatMap(r -> r.diaMm.stream()).toList();
        List<Double> ums = chips.stream().flatMap(r -> r.chipUm.stream()).toList();
        double um = interpolate(dias, ums, diaMm) * Math.min(1, diaMm / dias.getFirst());
        return um / 1000 * (material == Cutter.Material.HSS ? hssShare.value() : 1);
    }

    /** The row for a kind of cut and a diameter. */
    public Depth depth(CutKind kind, double diaMm) {
        return depths.stream()
                .filter(d -> d.kind == kind && d.fromDiaMm.value() <= diaMm)
                .reduce((a, b) -> b)
                .orElseThrow(() -> new IllegalStateException(
                        "feed table " + id + " has no depth for " + kind.words() + " with Ø" + diaMm + " mm"));
    }

    /** Along straight lines between points, beyond the ends as at the ends. */
    static double interpolate(List<Double> x, List<Double> y, double at) {
        if (at <= x.getFirst()) return y.getFirst();
        for (int i = 1; i < x.size(); i++) {
            if (at <= x.get(i)) {
                double t = (at - x.get(i - 1)) / (x.get(i) - x.get(i - 1));
                return y.get(i - 1) + t * (y.get(i) - y.get(i - 1));
            }
        }
        return y.getLast();
    }

    private static void rising(String what, List<Double> x, List<Double> y) {
        if (x.isEmpty() || x.size() != y.size())
            throw new IllegalArgumentException(what + ": " + x.size() + " numbers beside " + y.size());
        for (int i = 1; i < x.size(); i++)
            if (!(x.get(i) > x.get(i - 1))) throw new IllegalArgumentException(what + ": must rise");
    }
}
