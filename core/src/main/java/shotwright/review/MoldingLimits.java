package shotwright.review;

import shotwright.measure.QuantityRange;
import shotwright.measure.Source;
import shotwright.resin.Resin;

/**
 * What the resin asks of the part's shape.
 *
 * @param resin its name, as said at the bench
 * @param leastDraftDeg least draft on smooth walls deeper than 6 mm
 * @param lowShrinkDraftDeg draft to add because it hardly shrinks off the cavity; 0 for most
 * @param draftSource where these two come from
 * @param leastWallMm thinnest wall it fills
 * @param mostWallMm thickest wall that cools sound
 * @param wallSource where these two come from
 * @param crystalline true when it shrinks much and sinks or tears open inside where thick
 * @param leastStripPercent how far it may surely be stretched when stripped off an undercut
 * @param mostStripPercent how far at the very most
 * @param stripSource where these two come from
 */
public record MoldingLimits(
        String resin,
        double leastDraftDeg,
        double lowShrinkDraftDeg,
        Source draftSource,
        double leastWallMm,
        double mostWallMm,
        Source wallSource,
        boolean crystalline,
        double leastStripPercent,
        double mostStripPercent,
        Source stripSource) {

    private static final double LOW_SHRINK_DRAFT_DEG = 0.5;

    /** For a resin not yet chosen: what most resins share. */
    public static final MoldingLimits ANY = new MoldingLimits(
            "resin not chosen",
            0.5,
            0,
            Source.commonPractice("most resins"),
            1.0,
            3.0,
            Source.commonPractice("range that most resins share"),
            true,
            1,
            2,
            Source.commonPractice("stiff resins"));

    /** From the rack: the low end of its least draft, its wall range, and half a degree more for PC, PMMA and glass-filled resins. */
    public static MoldingLimits of(Resin resin) {
        QuantityRange strip = resin.stripStrainPercent();
        return new MoldingLimits(
                resin.name(),
                resin.minDraftDeg().low(),
                holdsOn(resin.id()) ? LOW_SHRINK_DRAFT_DEG : 0,
                resin.minDraftDeg().source(),
                resin.wallMm().low(),
                resin.wallMm().high(),
                resin.wallMm().source(),
                resin.kind() == Resin.Kind.CRYSTALLINE,
                strip == null ? 0 : strip.low(),
                strip == null ? 0 : strip.high(),
                strip == null ? Source.commonPractice("too stiff to be stripped off an undercut") : strip.source());
    }

    /** Families that hardly shrink off the cavity. */
    private static boolean holdsOn(String id) {
        return id.startsWith("pc") || id.startsWith("pmma") || id.contains("gf");
    }

    /** Thick over thin that still cools evenly: 1.25 for crystalline resins, 1.5 for others (common practice). */
    public double stepLimitRatio() {
        return crystalline ? 1.25 : 1.5;
    }
}
