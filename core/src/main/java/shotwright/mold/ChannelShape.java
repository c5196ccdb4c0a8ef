package shotwright.mold;

import java.util.ArrayList;
import java.util.List;
import shotwright.geom.Box3;
import shotwright.geom.Plane;
import shotwright.geom.Vec3;
import shotwright.layout.Half;

/**
 * A straight channel with flat floor and leaning or upright side walls, lying in one half; width and depth may change along it.
 *
 * @param half the half it lies in
 * @param fromMm start of the centre line at the parting surface
 * @param toMm end of it
 * @param fromWidthMm width at the parting surface at the start
 * @param toWidthMm the same at the end
 * @param fromDepthMm depth at the start
 * @param toDepthMm depth at the end
 * @param wallDraftDeg lean of the side walls
 * @param beforeMm how far it is prolonged beyond the start
 * @param afterMm how far beyond the end
 */
public record ChannelShape(
        Half half,
        Vec3 fromMm,
        Vec3 toMm,
        double fromWidthMm,
        double toWidthMm,
        double fromDepthMm,
        double toDepthMm,
        double wallDraftDeg,
        double beforeMm,
        double afterMm)
        implements ToolShape {
    /** How far a channel stands out of the metal where it opens. */
    static final double STAND_OUT_MM = 0.5;

    public ChannelShape {
        if (!(fromMm.distance(toMm) > 0)) throw new IllegalArgumentException("channel: starts and ends at " + fromMm);
        double lean = Math.tan(Math.toRadians(wallDraftDeg));
        if (fromWidthMm <= 2 * fromDepthMm * lean || toWidthMm <= 2 * toDepthMm * lean)
            throw new IllegalArgumentException("channel: walls leaning " + wallDraftDeg + "° meet above its floor");
    }

    static ChannelShape box(Half half, Vec3 from, Vec3 to, double width, double depth, double before, double after) {
        return new ChannelShape(half, from, to, width, width, depth, depth, 0, before, after);
    }

    /** Volume between the two ends: the section is of second degree along the channel, so Simpson's rule is exact. */
    @Override
    public double volumeMm3() {
        double middle = section((fromWidthMm + toWidthMm) / 2, (fromDepthMm + toDepthMm) / 2);
        return fromMm.distance(toMm)
                * (section(fromWidthMm, fromDepthMm) + 4 * middle + section(toWidthMm, toDepthMm))
                / 6;
    }

    private double section(double width, double depth) {
        return depth * (width - depth * Math.tan(Math.toRadians(wallDraftDeg)));
    }

    @Override
    public List<Plane> planes() {
        double length = fromMm.distance(toMm);
        Vec3 along = toMm.minus(fromMm).unit();
        Vec3 side = Vec3.Z.cross(along).unit(), in = along.cross(side).times(half.sign());
        double lean = Math.tan(Math.toRadians(wallDraftDeg));
        // wall: distance to the side = width(x)/2 − depth · lean
        double spread = (toWidthMm - fromWidthMm) / 2 / length;
        Vec3 left = side.minus(along.times(spread)).plus(in.times(lean)).unit();
        Vec3 right =
                side.negate().minus(along.times(spread)).plus(in.times(lean)).unit();
        Vec3 floor = in.minus(along.times((toDepthMm - fromDepthMm) / length)).unit();
        return List.of(
                Plane.through(fromMm.plus(side.times(fromWidthMm / 2)), left),
                Plane.through(fromMm.minus(side.times(fromWidthMm / 2)), right),
                Plane.through(fromMm.plus(in.times(fromDepthMm)), floor),
                Plane.through(fromMm.minus(in.times(STAND_OUT_MM)), in.negate()),
                Plane.through(fromMm.minus(along.times(beforeMm)), along.negate()),
                Plane.through(toMm.plus(along.times(afterMm)), along));
    }

    /** The box around the prolonged channel, a little larger. */
    @Override
    public Box3 around() {
        Vec3 along = toMm.minus(fromMm).unit();
        Vec3 a = fromMm.minus(along.times(beforeMm)), b = toMm.plus(along.times(afterMm));
        double length = fromMm.distance(toMm);
        double w = Math.max(fromWidthMm, toWidthMm) + Math.abs(toWidthMm - fromWidthMm) * (beforeMm + afterMm) / length;
        double d = Math.max(fromDepthMm, toDepthMm) + Math.abs(toDepthMm - fromDepthMm) * (beforeMm + afterMm) / length;
        double reach = w / 2 + STAND_OUT_MM * Math.tan(Math.toRadians(wallDraftDeg));
        double x = reach * Math.abs(along.y()), y = reach * Math.abs(along.x()), z = d + STAND_OUT_MM;
        Box3 line = new Box3(
                new Vec3(Math.min(a.x(), b.x()), Math.min(a.y(), b.y()), Math.min(a.z(), b.z())),
                new Vec3(Math.max(a.x(), b.x()), Math.max(a.y(), b.y()), Math.max(a.z(), b.z())));
        Vec3 grown = new Vec3(x, y, z);
        return new Box3(line.min().minus(grown), line.max().plus(grown)).grow(0.05 * reach);
    }

    /** The eight corners of the prolonged channel; bit 0 of a corner's number is the side, bit 1 the depth, bit 2 the end. */
    public List<Vec3> corners() {
        List<Plane> p = planes();
        List<Vec3> out = new ArrayList<>();
        for (int k = 0; k < 8; k++) out.add(meet(p.get(k & 1), p.get(2 + (k >> 1 & 1)), p.get(4 + (k >> 2))));
        return out;
    }

    /** The point three planes share, by Cramer's rule. */
    private static Vec3 meet(Plane a, Plane b, Plane c) {
        Vec3 bc = b.normal().cross(c.normal()),
                ca = c.normal().cross(a.normal()),
                ab = a.normal().cross(b.normal());
        return bc.times(a.offset())
                .plus(ca.times(b.offset()))
                .plus(ab.times(c.offset()))
                .times(1 / a.normal().dot(bc));
    }
}
