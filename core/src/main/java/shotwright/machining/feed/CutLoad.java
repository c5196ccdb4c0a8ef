package shotwright.machining.feed;

import shotwright.measure.Band;

/**
 * What a cut does. The value in between is by the power law, the limits by the ways that give least and most.
 *
 * @param forceN greatest side force, without run-out
 * @param powerW power at the cutter
 * @param torqueNm mean torque
 * @param deflectionMm how far the tip gives way under the force, spindle and collet included
 * @param stressMpa greatest bending stress, one tooth cutting what run-out leaves it to cut
 */
public record CutLoad(Band forceN, Band powerW, Band torqueNm, Band deflectionMm, Band stressMpa) {}
