package shotwright.geom;

/**
 * A plane n·p = offset with unit normal; points with n·p &lt; offset lie behind it.
 *
 * @param normal unit normal
 * @param offset distance from the origin along the normal, millimetres
 */
public record Plane(Vec3 normal, double offset) {
    public static Plane through(Vec3 point, Vec3 unitNormal) {
        return new Plane(unitNormal, unitNormal.dot(point));
    }

    /** Above zero in front of the plane, below zero behind it. */
    public double signedDistance(Vec3 p) {
        return normal.dot(p) - offset;
    }
}
