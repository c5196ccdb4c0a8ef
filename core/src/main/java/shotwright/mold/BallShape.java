package shotwright.mold;

import java.util.ArrayList;
import java.util.List;
import shotwright.geom.Box3;
import shotwright.geom.Plane;
import shotwright.geom.Vec3;
import shotwright.layout.Half;

/**
 * The end a ball cutter leaves in one half: a half ball as rings of an inscribed polyhedron, open at the parting plane.
 *
 * @param half the half it lies in
 * @param centreMm its centre on the parting plane
 * @param radiusMm radius
 */
public record BallShape(Half half, Vec3 centreMm, double radiusMm) implements ToolShape {
    private static final int SIDES = 32;
    private static final int RINGS = 5;

    private double radius(int ring) {
        return radiusMm * Math.cos(Math.PI / 2 * ring / RINGS);
    }

    private double depth(int ring) {
        return radiusMm * Math.sin(Math.PI / 2 * ring / RINGS);
    }

    /** Sum of the frusta between the rings. */
    @Override
    public double volumeMm3() {
        double gon = SIDES / 2.0 * Math.sin(2 * Math.PI / SIDES), sum = 0;
        for (int i = 0; i < RINGS; i++) {
            double r = radius(i), s = i + 1 == RINGS ? 0 : radius(i + 1);
            sum += (depth(i + 1) - depth(i)) * gon * (r * r + r * s + s * s) / 3;
        }
        return sum;
    }

    @Override
    public List<Plane> planes() {
        List<Plane> out = new ArrayList<>();
        double flat = Math.cos(Math.PI / SIDES);
        Vec3 in = Vec3.Z.times(half.sign());
        for (int i = 0; i < RINGS; i++) {
            double lean = (radius(i) - (i + 1 == RINGS ? 0 : radius(i + 1))) * flat / (depth(i + 1) - depth(i));
            for (int k = 0; k < SIDES; k++) {
                double t = 2 * Math.PI * (k + 0.5) / SIDES;
                Vec3 radial = new Vec3(Math.cos(t), Math.sin(t), 0);
                Vec3 on = centreMm.plus(radial.times(radius(i) * flat)).plus(in.times(depth(i)));
                out.add(Plane.through(on, radial.plus(in.times(lean)).unit()));
            }
        }
        out.add(Plane.through(centreMm.minus(in.times(ChannelShape.STAND_OUT_MM)), in.negate()));
        return out;
    }

    @Override
    public Box3 around() {
        return new Box3(centreMm, centreMm).grow(1.1 * radiusMm + ChannelShape.STAND_OUT_MM);
    }
}
