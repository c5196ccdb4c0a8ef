package shotwright.brep;

import shotwright.geom.Vec3;

/**
 * A face to be leaned about the line in which a plane across the draw cuts it.
 *
 * @param face its number in the solid's own order
 * @param angleRad lean afterwards: the angle between the face and the draw, above zero where it looks along the draw
 * @param draw the way the metal leaves, of length one
 * @param neutralPointMm a point of the plane
 */
public record LeanedFace(int face, double angleRad, Vec3 draw, Vec3 neutralPointMm) {}
