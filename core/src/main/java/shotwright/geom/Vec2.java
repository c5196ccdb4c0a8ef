package shotwright.geom;

/** A point or direction in the plane; millimetres when it is a place. */
public record Vec2(double x, double y) {
    public static final Vec2 ZERO = new Vec2(0, 0);

    public Vec2 plus(Vec2 o) {
        return new Vec2(x + o.x, y + o.y);
    }

    public Vec2 minus(Vec2 o) {
        return new Vec2(x - o.x, y - o.y);
    }

    public Vec2 times(double f) {
        return new Vec2(x * f, y * f);
    }

    public double dot(Vec2 o) {
        return x * o.x + y * o.y;
    }

    /** The third component of the product in space: above zero when the other lies to the left. */
    public double cross(Vec2 o) {
        return x * o.y - y * o.x;
    }

    public double length() {
        return Math.hypot(x, y);
    }

    public double distance(Vec2 o) {
        return Math.hypot(x - o.x, y - o.y);
    }

    public Vec2 unit() {
        double l = length();
        if (!(l > 0)) throw new IllegalArgumentException("vector: " + this + " has no direction");
        return times(1 / l);
    }

    /** Turned a quarter to the left. */
    public Vec2 left() {
        return new Vec2(-y, x);
    }

    public Vec3 atZ(double z) {
        return new Vec3(x, y, z);
    }
}
