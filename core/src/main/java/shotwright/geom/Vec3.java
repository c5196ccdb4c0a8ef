package shotwright.geom;

/** A point or direction in space; millimetres when it is a place. */
public record Vec3(double x, double y, double z) {
    public static final Vec3 ZERO = new Vec3(0, 0, 0);
    public static final Vec3 X = new Vec3(1, 0, 0);
    public static final Vec3 Y = new Vec3(0, 1, 0);
    public static final Vec3 Z = new Vec3(0, 0, 1);

    public Vec3 plus(Vec3 o) {
        return new Vec3(x + o.x, y + o.y, z + o.z);
    }

    public Vec3 minus(Vec3 o) {
        return new Vec3(x - o.x, y - o.y, z - o.z);
    }

    public Vec3 times(double f) {
        return new Vec3(x * f, y * f, z * f);
    }

    public Vec3 negate() {
        return new Vec3(-x, -y, -z);
    }

    public double dot(Vec3 o) {
        return x * o.x + y * o.y + z * o.z;
    }

    public Vec3 cross(Vec3 o) {
        return new Vec3(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
    }

    public double length() {
        return Math.sqrt(dot(this));
    }

    public double distance(Vec3 o) {
        return minus(o).length();
    }

    /** Straight between this (0) and the other (1). */
    public Vec3 toward(Vec3 o, double share) {
        return new Vec3(x + (o.x - x) * share, y + (o.y - y) * share, z + (o.z - z) * share);
    }

    /** The same direction at length one; a vector of length zero is refused. */
    public Vec3 unit() {
        double l = length();
        if (!(l > 0) || !Double.isFinite(l))
            throw new IllegalArgumentException("vector: " + this + " has no direction");
        return times(1 / l);
    }

    /** Any direction of length one across this one. */
    public Vec3 across() {
        double ax = Math.abs(x), ay = Math.abs(y), az = Math.abs(z);
        Vec3 least = ax <= ay && ax <= az ? X : ay <= az ? Y : Z;
        return cross(least).unit();
    }

    public Vec2 xy() {
        return new Vec2(x, y);
    }
}
