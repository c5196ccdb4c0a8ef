package shotwright.layout;

import shotwright.geom.Vec2;

/**
 * A shallow pocket at the block's edge where a brass or aluminium bar opens the halves, off the sealing land.
 *
 * @param minMm lower left corner on the parting plane, mold frame
 * @param maxMm upper right corner
 * @param half the half it is cut into
 * @param depthMm depth
 */
public record PryRelief(Vec2 minMm, Vec2 maxMm, Half half, double depthMm) {}
