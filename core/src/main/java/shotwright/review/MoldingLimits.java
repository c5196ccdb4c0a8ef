package shotwright.review;

import shotwright.measure.Source;

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

    /** Thick over thin that still cools evenly: 1.25 for crystalline resins, 1.5 for others (common practice). */
    public double stepLimitRatio() {
        return crystalline ? 1.25 : 1.5;
    }
}
