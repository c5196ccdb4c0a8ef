package shotwright.review;

import shotwright.geom.Vec3;

/**
 * A hole one can look through along the pull: the halves meet in it and shut it off.
 *
 * @param finding number of the finding that speaks of it; 0 when none does
 * @param at middle of the hole, axes of the file
 * @param round true when it is a circle as far as its chords allow
 * @param widthMm its diameter, or its smaller size when it is not round
 * @param lengthMm its larger size
 * @param depthMm how thick the part is round it
 * @param areaMm2 area of the shut-off
 */
public record ThroughHole(
        int finding, Vec3 at, boolean round, double widthMm, double lengthMm, double depthMm, double areaMm2) {}
