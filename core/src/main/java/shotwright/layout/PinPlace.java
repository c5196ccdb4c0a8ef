package shotwright.layout;

import shotwright.geom.Vec2;

/**
 * An ejector pin or knock-out hole through a half.
 *
 * @param atMm centre, mold frame
 * @param half the half it goes through
 * @param diameterMm pin diameter
 * @param holeMm hole diameter over the guided length
 * @param guideMm guided length below the cavity
 * @param reliefMm diameter of the relieved rest
 */
public record PinPlace(Vec2 atMm, Half half, double diameterMm, double holeMm, double guideMm, double reliefMm) {}
