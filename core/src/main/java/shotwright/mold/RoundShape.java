package shotwright.mold;

import java.util.ArrayList;
import java.util.List;
import shotwright.geom.Box3;
import shotwright.geom.Plane;
import shotwright.geom.Vec3;

/**
 * A cylinder or cone frustum as a regular N-gon inscribed in it. N is a multiple of four, so that a lying one has corners in the parting plane, and
 * large enough that no flat lies deeper than 0.004 mm below the circle: N ≥ π / acos(1 − 0.004 / r).
 *
 * @param fromMm middle of the first end
 * @param toMm middle of the other end
 * @param fromRadiusMm radius at the first end
 * @param toRadiusMm radius at the other end
 * @param beforeMm how far the shape is prolonged beyond the first end, its taper going on
 * @param afterMm how far beyond the other end
 * @param corner unit direction across the axis in which the first corner lies
 */
public record RoundShape(
        Vec3 fromMm, Vec3 toMm, double fromRadiusMm, double toRadiusMm, double beforeMm, double afterMm, Vec3 corner)
        implements ToolShape {
    /** How far a flat may lie below the circle it stands for. */
    static final double SAGITTA_MM = 0.004;

    public RoundShape {
        if (!(fromRadiusMm > 0) || !(toRadiusMm > 0) || !(fromMm.distance(toMm) > 0))
            throw new IllegalArgumentException(
                    "round: radii " + fromRadiusMm + ", " + toRadiusMm + " from " + fromMm + " to " + toMm);
    }

    /** A lying one gets its first corner in the parting plane, a standing one along x. */
    static RoundShape of(Vec3 from, Vec3 to, double fromDiameter, double toDiameter, double before, double after) {
        Vec3 axis = to.minus(from);
        Vec3 level = Math.hypot(axis.x(), axis.y()) > 1e-9 ? axis.cross(Vec3.Z).unit() : Vec3.X;
        return new RoundShape(from, to, fromDiameter / 2, toDiameter / 2, before, after, level);
    }

    static RoundShape cylinder(Vec3 from, Vec3 to, double diameter, double before, double after) {
        return of(from, to, diameter, diameter, before, after);
    }

    /** The same with its first corner in another direction across the axis. */
    RoundShape turned(Vec3 newCorner) {
        return new RoundShape(fromMm, toMm, fromRadiusMm, toRadiusMm, beforeMm, afterMm, newCorner);
    }

    int sides() {
        return sides(Math.max(fromRadiusMm, toRadiusMm));
    }

    static int sides(double radiusMm) {
        double least = SAGITTA_MM >= radiusMm ? 8 : Math.PI / Math.acos(1 - SAGITTA_MM / radiusMm);
        return 4 * (int) Math.ceil(Math.max(8, least) / 4);
    }

    /** Volume between the two ends: a frustum whose sections are similar, L (A + √(A B) + B) / 3. */
    @Override
    public double volumeMm3() {
        double gon = sides() / 2.0 * Math.sin(2 * Math.PI / sides());
        double a = gon * fromRadiusMm * fromRadiusMm, b = gon * toRadiusMm * toRadiusMm;
        return fromMm.distance(toMm) * (a + Math.sqrt(a * b) + b) / 3;
    }

    /** By how much the true round body between the ends is larger than its flats, mm³. */
    public double overFlatsMm3() {
        double gon = sides() / 2.0 * Math.sin(2 * Math.PI / sides());
        return volumeMm3() * (Math.PI / gon - 1);
    }

    @Override
    public List<Plane> planes() {
        Vec3 axis = axis();
        int n = sides();
        List<Plane> out = new ArrayList<>(n + 2);
        double lean = (fromRadiusMm - toRadiusMm) * Math.cos(Math.PI / n) / fromMm.distance(toMm);
        for (int i = 0; i < n; i++) {
            Vec3 radial = spoke((i + 0.5) / n);
            Vec3 normal = radial.plus(axis.times(lean)).unit();
            out.add(Plane.through(fromMm.plus(radial.times(fromRadiusMm * Math.cos(Math.PI / n))), normal));
        }
        out.add(Plane.through(fromMm.minus(axis.times(beforeMm)), axis.negate()));
        out.add(Plane.through(toMm.plus(axis.times(afterMm)), axis));
        return out;
    }

    /** The box around the prolonged shape, a little larger. */
    @Override
    public Box3 around() {
        double r =
                Math.max(Math.max(radiusAtMm(-beforeMm), radiusAtMm(0)), radiusAtMm(fromMm.distance(toMm) + afterMm));
        Vec3 a = fromMm.minus(axis().times(beforeMm)), b = toMm.plus(axis().times(afterMm));
        Vec3 reach = new Vec3(r * across(axis().x()), r * across(axis().y()), r * across(axis().z()));
        Box3 ends = new Box3(
                new Vec3(Math.min(a.x(), b.x()), Math.min(a.y(), b.y()), Math.min(a.z(), b.z())),
                new Vec3(Math.max(a.x(), b.x()), Math.max(a.y(), b.y()), Math.max(a.z(), b.z())));
        return new Box3(ends.min().minus(reach), ends.max().plus(reach)).grow(0.1 * r);
    }

    private static double across(double axisPart) {
        return Math.sqrt(Math.max(0, 1 - axisPart * axisPart));
    }

    /** Radius at a distance from the first end. */
    public double radiusAtMm(double along) {
        return fromRadiusMm + (toRadiusMm - fromRadiusMm) * along / fromMm.distance(toMm);
    }

    /** Length between the ends. */
    public double lengthMm() {
        return fromMm.distance(toMm);
    }

    /** Unit direction from the first end to the other. */
    public Vec3 axis() {
        return toMm.minus(fromMm).unit();
    }

    private Vec3 spoke(double turn) {
        double t = 2 * Math.PI * turn;
        return corner.times(Math.cos(t)).plus(axis().cross(corner).times(Math.sin(t)));
    }
}
