package shotwright.brep;

import shotwright.geom.Vec3;

/**
 * Size of a solid from its exact surfaces.
 *
 * @param volumeMm3 volume
 * @param areaMm2 surface
 * @param centroidMm centre of volume
 */
public record ExactMass(double volumeMm3, double areaMm2, Vec3 centroidMm) {}
