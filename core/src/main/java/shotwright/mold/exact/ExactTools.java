package shotwright.mold.exact;

import java.util.List;
import shotwright.brep.ExactFailure;
import shotwright.brep.ExactShapes;
import shotwright.brep.Outline;
import shotwright.brep.Solid;
import shotwright.geom.Vec3;
import shotwright.mold.BallShape;
import shotwright.mold.ChannelShape;
import shotwright.mold.ConvexTool;
import shotwright.mold.RoundShape;

/** Cut-outs as exact solids: cylinders and cones by turning, balls, and channels of flat faces. */
final class ExactTools {
    /** Corners of a channel: bits for end, depth and side. */
    private static final List<int[]> CHANNEL_FACES = List.of(
            new int[] {0, 1, 3, 2},
            new int[] {4, 5, 7, 6},
            new int[] {0, 1, 5, 4},
            new int[] {2, 3, 7, 6},
            new int[] {0, 2, 6, 4},
            new int[] {1, 3, 7, 5});

    private final ExactShapes shapes;

    ExactTools(ExactShapes shapes) {
        this.shapes = shapes;
    }

    Solid of(ConvexTool tool) throws ExactFailure {
        return switch (tool.shape()) {
            case RoundShape r -> round(r);
            case BallShape b -> shapes.sphere(b.centreMm(), b.radiusMm());
            case ChannelShape c -> shapes.polyhedron(c.corners(), CHANNEL_FACES);
        };
    }

    private Solid round(RoundShape r) throws ExactFailure {
        Vec3 axis = r.axis(), foot = r.fromMm().minus(axis.times(r.beforeMm()));
        double height = r.lengthMm() + r.beforeMm() + r.afterMm();
        double low = r.radiusAtMm(-r.beforeMm()), high = r.radiusAtMm(r.lengthMm() + r.afterMm());
        if (Math.abs(low - high) < 1e-9) return shapes.cylinder(foot, axis, low, height);
        Vec3 top = foot.plus(axis.times(height)), across = r.corner();
        Outline half = Outline.from(foot)
                .line(foot.plus(across.times(low)))
                .line(top.plus(across.times(high)))
                .line(top)
                .line(foot);
        return shapes.revolve(half, foot, axis);
    }
}
