package shotwright.machining.feed;

import java.util.List;

/**
 * How a cut is run.
 *
 * @param cut what was asked
 * @param speedRpm spindle speed
 * @param surfaceMPerMin speed of the edge where it runs fastest
 * @param feedPerToothMm feed for each tooth
 * @param feedMmPerMin feed
 * @param depthMm depth of a pass
 * @param widthMm width of a pass
 * @param largestChipMm thickest chip
 * @param removalCm3PerMin metal removed
 * @param plungeMmPerMin feed straight down; 0 for cutters that must not go straight down
 * @param rampDeg angle of a ramp or helix
 * @param load what it does to cutter and spindle
 * @param limit what keeps the feed where it is
 * @param reasons the same and everything else a person should know, in sentences
 */
public record CutData(
        Cut cut,
        double speedRpm,
        double surfaceMPerMin,
        double feedPerToothMm,
        double feedMmPerMin,
        double depthMm,
        double widthMm,
        double largestChipMm,
        double removalCm3PerMin,
        double plungeMmPerMin,
        double rampDeg,
        CutLoad load,
        Limit limit,
        List<String> reasons)
        implements CutChoice {
    public CutData {
        reasons = List.copyOf(reasons);
    }
}
