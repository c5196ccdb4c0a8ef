package shotwright.layout;

import shotwright.geom.Vec2;

/**
 * A screw that holds the halves together or a half to the press.
 *
 * @param screw id on the rack
 * @param atMm centre, mold frame
 * @param headHalf the half the head sits in
 * @param clearanceMm diameter of the through hole in the head's half
 * @param counterboreMm diameter of the counterbore for the head
 * @param counterboreDepthMm its depth
 * @param threadDrillMm diameter of the hole to be tapped in the other half
 * @param threadDepthMm depth of that hole
 */
public record ScrewPlace(
        String screw,
        Vec2 atMm,
        Half headHalf,
        double clearanceMm,
        double counterboreMm,
        double counterboreDepthMm,
        double threadDrillMm,
        double threadDepthMm) {}
