package shotwright.geom;

/** An axis-parallel box, millimetres. */
public record Box3(Vec3 min, Vec3 max) {
    public Box3 {
        if (!(min.x() <= max.x() && min.y() <= max.y() && min.z() <= max.z()))
            throw new IllegalArgumentException("box: " + min + " is not below " + max);
    }

    public Vec3 size() {
        return max.minus(min);
    }

    public Vec3 centre() {
        return min.toward(max, 0.5);
    }

    public double diagonal() {
        return size().length();
    }

    public double volume() {
        Vec3 s = size();
        return s.x() * s.y() * s.z();
    }

    /** The box grown by a margin on every side. */
    public Box3 grow(double margin) {
        Vec3 m = new Vec3(margin, margin, margin);
        return new Box3(min.minus(m), max.plus(m));
    }

    /** The smallest box around both. */
    public Box3 join(Box3 o) {
        return new Box3(
                new Vec3(Math.min(min.x(), o.min.x()), Math.min(min.y(), o.min.y()), Math.min(min.z(), o.min.z())),
                new Vec3(Math.max(max.x(), o.max.x()), Math.max(max.y(), o.max.y()), Math.max(max.z(), o.max.z())));
    }

    public boolean contains(Vec3 p) {
        return p.x() >= min.x()
                && p.x() <= max.x()
                && p.y() >= min.y()
                && p.y() <= max.y()
                && p.z() >= min.z()
                && p.z() <= max.z();
    }
}
