package shotwright.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;
import shotwright.mesh.TriMesh;
import shotwright.mesh.WallThickness;

/**
 * Wall at every facet corner as local thickness: the largest sampled ball that reaches over the place from a surface that looks the same
 * way, so that the small balls along an edge do not pass for thin walls (Hildebrand and Rüegsegger 1997, local thickness; from memory).
 */
final class WallMap {
    private static final int CELLS = 32;
    private static final int FARTHEST = 3;
    private static final double ALIKE = 0.7;
    /** A ball reaches this share of its diameter over the surface round where it touches. */
    private static final double REACH = 0.55;

    private final TriMesh mesh;
    private final Map<Long, List<WallThickness.Sample>> cells = new HashMap<>();
    private final Vec3 low;
    private final double cell;

    WallMap(TriMesh mesh, WallThickness walls) {
        this.mesh = mesh;
        Box3 box = mesh.box();
        low = box.min();
        cell = box.diagonal() / CELLS;
        for (int i = 0; i < walls.count(); i++) {
            WallThickness.Sample s = walls.sample(i);
            cells.computeIfAbsent(
                            key(
                                    at(s.point().x() - low.x()),
                                    at(s.point().y() - low.y()),
                                    at(s.point().z() - low.z())),
                            k -> new ArrayList<>())
                    .add(s);
        }
    }

    /** Diameter of the largest ball, mm; NaN where no sample is near. */
    double[] atCorners() {
        double[] values = new double[3 * mesh.facetCount()];
        boolean fine = mesh.facetCount() > 40_000;
        for (int f = 0; f < mesh.facetCount(); f++) {
            Vec3 n = mesh.doubleAreaNormal(f);
            Vec3 unit = n.length() > 0 ? n.unit() : Vec3.Z;
            double all = fine ? nearest(mesh.centroid(f), unit) : 0;
            for (int k = 0; k < 3; k++) {
                Vec3 inward = mesh.cornerPoint(f, k).toward(mesh.centroid(f), 0.1);
                values[3 * f + k] = fine ? all : nearest(inward, unit);
            }
        }
        return values;
    }

    /** The largest ball among those that reach over the place; else the nearest one. */
    private double nearest(Vec3 p, Vec3 normal) {
        int x = at(p.x() - low.x()), y = at(p.y() - low.y()), z = at(p.z() - low.z());
        Best best = new Best(p, normal);
        for (int ring = 0; ring <= FARTHEST; ring++) {
            for (int i = -ring; i <= ring; i++)
                for (int j = -ring; j <= ring; j++)
                    for (int k = -ring; k <= ring; k++)
                        if (Math.max(Math.abs(i), Math.max(Math.abs(j), Math.abs(k))) == ring)
                            cells.getOrDefault(key(x + i, y + j, z + k), List.of())
                                    .forEach(best::take);
            if (best.distance < Double.MAX_VALUE && ring * cell > best.value) break;
        }
        return best.covering > 0 ? best.covering : best.value;
    }

    /** The best samples seen so far for one place. */
    private static final class Best {
        private final Vec3 place;
        private final Vec3 normal;
        private double distance = Double.MAX_VALUE;
        private double value = Double.NaN;
        private double covering;

        Best(Vec3 place, Vec3 normal) {
            this.place = place;
            this.normal = normal;
        }

        void take(WallThickness.Sample s) {
            if (!Double.isFinite(s.sphere()) || s.normal().dot(normal) < ALIKE) return;
            double d = s.point().distance(place);
            if (d <= REACH * s.sphere()) covering = Math.max(covering, s.sphere());
            if (d >= distance) return;
            distance = d;
            value = s.sphere();
        }
    }

    private int at(double along) {
        return (int) Math.floor(along / cell);
    }

    private static long key(int x, int y, int z) {
        return ((long) (x + 512) * 2048 + y + 512) * 2048 + z + 512;
    }
}
