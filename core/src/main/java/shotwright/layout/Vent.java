package shotwright.layout;

import shotwright.geom.Vec2;
import shotwright.geom.Vec3;

/**
 * A vent: a shallow land at the cavity's rim, then a deeper channel to the open air.
 *
 * @param atMm where it meets the cavity wall (or runner end), mold frame
 * @param out unit direction away from the cavity in the parting plane
 * @param half the half it is cut into
 * @param widthMm width
 * @param depthMm depth of the land
 * @param landMm length of the land
 * @param channelDepthMm depth of the channel behind the land
 * @param channelLengthMm length of the channel to the block's edge
 * @param reason why it is there
 */
public record Vent(
        Vec3 atMm,
        Vec2 out,
        Half half,
        double widthMm,
        double depthMm,
        double landMm,
        double channelDepthMm,
        double channelLengthMm,
        String reason) {}
