package shotwright.brep;

import shotwright.geom.Vec3;

/**
 * One face of a solid.
 *
 * @param kind what surface it lies on
 * @param reversed whether the material lies on the side the surface's own normal points to
 * @param areaMm2 its area
 * @param radiusMm cylinder and sphere: the radius; torus: of the middle circle; cone: at {@code axisPointMm}; else 0
 * @param tubeRadiusMm torus: radius of the tube; else 0
 * @param halfAngleRad cone: angle between axis direction and side, above zero where it widens along the axis; else 0
 * @param axisPointMm a point of the axis, the centre of a sphere, a point of a plane
 * @param axis direction of the axis or the normal of a plane; zero for spheres and free forms
 * @param centroidMm centre of its area
 */
public record ExactFace(
        Kind kind,
        boolean reversed,
        double areaMm2,
        double radiusMm,
        double tubeRadiusMm,
        double halfAngleRad,
        Vec3 axisPointMm,
        Vec3 axis,
        Vec3 centroidMm) {
    /** Surfaces with a name; everything else is free form. */
    public enum Kind {
        PLANE,
        CYLINDER,
        CONE,
        SPHERE,
        TORUS,
        FREE_FORM
    }

    /** Numbers the engine sends for each face. */
    static final int NUMBERS = 14;

    static ExactFace of(double[] all, int face) {
        int i = NUMBERS * face;
        Kind kind = Kind.values()[(int) all[i]];
        return new ExactFace(
                kind,
                all[i + 1] < 0,
                all[i + 2],
                all[i + 3],
                kind == Kind.TORUS ? all[i + 4] : 0,
                kind == Kind.CONE ? all[i + 4] : 0,
                new Vec3(all[i + 5], all[i + 6], all[i + 7]),
                new Vec3(all[i + 8], all[i + 9], all[i + 10]),
                new Vec3(all[i + 11], all[i + 12], all[i + 13]));
    }
}
