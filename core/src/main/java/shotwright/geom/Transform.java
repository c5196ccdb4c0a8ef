package shotwright.geom;

/**
 * An affine placement: first the 3×3 matrix, then the shift. Rows {@code a}, {@code b}, {@code c} give the new x, y and z.
 *
 * @param a row for x
 * @param b row for y
 * @param c row for z
 * @param shift added after the matrix, millimetres
 */
public record Transform(Vec3 a, Vec3 b, Vec3 c, Vec3 shift) {
    public static final Transform IDENTITY = new Transform(Vec3.X, Vec3.Y, Vec3.Z, Vec3.ZERO);

    public static Transform translate(Vec3 by) {
        return new Transform(Vec3.X, Vec3.Y, Vec3.Z, by);
    }

    public static Transform scale(double sx, double sy, double sz) {
        return new Transform(new Vec3(sx, 0, 0), new Vec3(0, sy, 0), new Vec3(0, 0, sz), Vec3.ZERO);
    }

    /** A turn about the z axis, counter-clockwise seen from above. */
    public static Transform turnZ(double angleRad) {
        double k = Math.cos(angleRad), s = Math.sin(angleRad);
        return new Transform(new Vec3(k, -s, 0), new Vec3(s, k, 0), Vec3.Z, Vec3.ZERO);
    }

    /** A turn by an angle about a unit axis through the origin (Rodrigues). */
    public static Transform turn(Vec3 unitAxis, double angleRad) {
        double k = Math.cos(angleRad), s = Math.sin(angleRad), q = 1 - k;
        double x = unitAxis.x(), y = unitAxis.y(), z = unitAxis.z();
        return new Transform(
                new Vec3(k + x * x * q, x * y * q - z * s, x * z * q + y * s),
                new Vec3(y * x * q + z * s, k + y * y * q, y * z * q - x * s),
                new Vec3(z * x * q - y * s, z * y * q + x * s, k + z * z * q),
                Vec3.ZERO);
    }

    /**
     * The turn that brings a unit direction onto +z. Axis directions give exact permutation matrices, so that axis-parallel faces stay
     * exactly axis-parallel.
     */
    public static Transform bringToZ(Vec3 unitDirection) {
        Vec3 d = unitDirection;
        if (d.equals(Vec3.Z)) return IDENTITY;
        if (Math.abs(d.z()) == 1) return new Transform(Vec3.X, new Vec3(0, -1, 0), new Vec3(0, 0, -1), Vec3.ZERO);
        if (Math.abs(d.x()) == 1) {
            double s = Math.signum(d.x());
            return new Transform(Vec3.Y, new Vec3(0, 0, s), new Vec3(s, 0, 0), Vec3.ZERO);
        }
        if (Math.abs(d.y()) == 1) {
            double s = Math.signum(d.y());
            return new Transform(new Vec3(0, 0, s), Vec3.X, new Vec3(0, s, 0), Vec3.ZERO);
        }
        Vec3 u = d.across(), v = d.cross(u);
        return new Transform(u, v, d, Vec3.ZERO);
    }

    public Vec3 apply(Vec3 p) {
        return new Vec3(a.dot(p) + shift.x(), b.dot(p) + shift.y(), c.dot(p) + shift.z());
    }

    /** Applies the matrix without the shift. */
    public Vec3 applyToDirection(Vec3 d) {
        return new Vec3(a.dot(d), b.dot(d), c.dot(d));
    }

    /** This placement first, then the other. */
    public Transform then(Transform o) {
        return new Transform(o.row(o.a, this), o.row(o.b, this), o.row(o.c, this), o.apply(shift));
    }

    private Vec3 row(Vec3 r, Transform f) {
        return f.a.times(r.x()).plus(f.b.times(r.y())).plus(f.c.times(r.z()));
    }

    /** Does it stretch alike in every direction? Its rows then stand at right angles and are of one length. */
    public boolean isEven() {
        double square = a.dot(a), noise = 1e-9 * square;
        return Math.abs(b.dot(b) - square) < noise
                && Math.abs(c.dot(c) - square) < noise
                && Math.abs(a.dot(b)) < noise
                && Math.abs(b.dot(c)) < noise
                && Math.abs(c.dot(a)) < noise;
    }

    /** Determinant of the matrix: the volume factor; below zero for a mirror. */
    public double determinant() {
        return a.dot(b.cross(c));
    }

    /** The placement that undoes this one. */
    public Transform inverse() {
        double det = determinant();
        if (det == 0) throw new IllegalArgumentException("transform: cannot be undone, its determinant is 0");
        Vec3 bc = b.cross(c).times(1 / det),
                ca = c.cross(a).times(1 / det),
                ab = a.cross(b).times(1 / det);
        Vec3 ra = new Vec3(bc.x(), ca.x(), ab.x());
        Vec3 rb = new Vec3(bc.y(), ca.y(), ab.y());
        Vec3 rc = new Vec3(bc.z(), ca.z(), ab.z());
        return new Transform(ra, rb, rc, new Vec3(-ra.dot(shift), -rb.dot(shift), -rc.dot(shift)));
    }
}
