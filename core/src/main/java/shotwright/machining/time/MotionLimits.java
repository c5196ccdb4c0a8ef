package shotwright.machining.time;

import shotwright.mill.Mill;

/**
 * What a mill's motion is held by.
 *
 * @param accelerationMmPerS2 acceleration of one axis
 * @param junctionMm how far the path may round a corner
 * @param maxFeedMmPerMin fastest feed
 * @param rapidMmPerMin rapid of one axis
 * @param blocksPerS lines of a program its control works through in a second
 */
public record MotionLimits(
        double accelerationMmPerS2,
        double junctionMm,
        double maxFeedMmPerMin,
        double rapidMmPerMin,
        double blocksPerS) {
    /** Lines in a second of small controls, from 200 to 1000 (common practice). */
    private static final double SMALL_CONTROL_PER_S = 500;

    public MotionLimits {
        if (!(accelerationMmPerS2 > 0 && junctionMm >= 0 && maxFeedMmPerMin > 0 && rapidMmPerMin > 0 && blocksPerS > 0))
            throw new IllegalArgumentException("motion limits: every one must be above zero");
    }

    /** Of a mill on the rack. */
    public static MotionLimits of(Mill mill) {
        return new MotionLimits(
                mill.accelerationMmPerS2().value(),
                mill.junctionMm().value(),
                mill.maxFeedMmPerMin().value(),
                mill.rapidMmPerMin().value(),
                SMALL_CONTROL_PER_S);
    }
}
