package shotwright.layout.cavity;

import java.util.ArrayList;
import java.util.List;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.layout.Half;
import shotwright.mesh.pull.Columns;
import shotwright.mesh.pull.PartingHeights;
import shotwright.mesh.pull.Sight;
import shotwright.mesh.pull.SightTolerance;
import shotwright.part.PulledPart;

/**
 * How far the parting surface leaves its plane: along the outer rim, and inside it, where cores of the one half reach up to shut-offs and
 * faces of the part beyond the plane.
 *
 * @param corners corners of the outer rim, cavity frame, with the height over the parting plane; none when the rim lies in it
 * @param highestMm how far half B stands up over the plane
 * @param lowestMm how far half A stands down below it, not above zero
 */
public record RimSteps(List<Vec3> corners, double highestMm, double lowestMm) {
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
        double highest = 0, lowest = 0;
        for (int v = 0; v < part.mesh().vertexCount(); v++) {
            int c = columns.columnOf(v);
            Vec3 at = shape.fromPulled().apply(new Vec3(columns.x(c), columns.y(c), heights.at(v)));
            if (columns.isOuter(c)) corners.add(at);
            highest = Math.max(highest, at.z());
            lowest = Math.min(lowest, at.z());
        }
        return new RimSteps(corners, highest, lowest);
    }

    /** The same with a rim that lies in the plane. */
    public RimSteps levelRim() {
        return new RimSteps(List.of(), highestMm, lowestMm);
    }

    /** How far cores of a half stand out of its parting face. */
    public double riseMm(Half half) {
        return half == Half.B ? highestMm : Math.abs(lowestMm);
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
