package shotwright.layout.cavity;

import java.util.ArrayList;
import java.util.List;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.mesh.pull.Columns;
import shotwright.mesh.pull.PartingHeights;
import shotwright.mesh.pull.Sight;
import shotwright.mesh.pull.SightTolerance;
import shotwright.part.PulledPart;

/**
 * How far the parting surface leaves its plane along the outer rim: the heights the halves will part at, at every corner of the rim.
 *
 * @param corners corners of the outer rim, cavity frame, with the height over the parting plane
 */
public record RimSteps(List<Vec3> corners) {
    /** A rim that lies in the plane. */
    public static final RimSteps NONE = new RimSteps(List.of());

    public RimSteps {
        corners = List.copyOf(corners);
    }

    /**
     * Measures them.
     *
     * @param shape the cavity whose plane is z = 0
     * @param partingZMm height of that plane in the pulled frame
     */
    public static RimSteps of(PulledPart part, CavityShape shape, double partingZMm) {
        SightTolerance finest = SightTolerance.LADDER.getFirst();
        Sight[] sight = part.sight().at(finest);
        Columns columns = Columns.of(part.mesh(), part.edges(), sight, finest.leanDeg(), part.exactShadow());
        PartingHeights heights = PartingHeights.of(columns, sight, part.edges(), finest.leanDeg(), partingZMm);
        List<Vec3> corners = new ArrayList<>();
        for (int v = 0; v < part.mesh().vertexCount(); v++) {
            int c = columns.columnOf(v);
            if (columns.isOuter(c))
                corners.add(shape.fromPulled().apply(new Vec3(columns.x(c), columns.y(c), heights.at(v))));
        }
        return new RimSteps(corners);
    }

    /** Height of the parting surface over its plane at the corner of the rim nearest to a point. */
    double nearMm(Vec2 p) {
        double least = Double.POSITIVE_INFINITY, height = 0;
        for (Vec3 c : corners) {
            double d = Math.hypot(c.x() - p.x(), c.y() - p.y());
            if (d >= least) continue;
            least = d;
            height = c.z();
        }
        return height;
    }
}
