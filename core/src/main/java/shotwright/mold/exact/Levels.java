package shotwright.mold.exact;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import shotwright.mesh.TriMesh;
import shotwright.mold.MoldResult;

/** The heights at which the halves meet flat: level facets that half A has facing down and half B facing up. */
final class Levels {
    private static final double LEVEL = 1 - 1e-12;
    private static final double SAME_MM = 1e-5;
    /** A meeting face smaller than this is a shut-off too small to mill. */
    private static final double LEAST_MM2 = 0.05;

    private Levels() {}

    /** Heights, lowest first; the parting plane of the block, 0, is always among them. */
    static List<Double> of(MoldResult mold) {
        TreeMap<Long, Double> down = areas(mold.a().mesh(), -1),
                up = areas(mold.b().mesh(), 1);
        List<Double> out = new ArrayList<>();
        out.add(0.0);
        for (var e : down.entrySet()) {
            double shared = Math.min(e.getValue(), up.getOrDefault(e.getKey(), 0.0));
            double z = e.getKey() * SAME_MM;
            if (shared > LEAST_MM2 && Math.abs(z) > SAME_MM) out.add(z);
        }
        out.sort(Double::compare);
        return out;
    }

    private static TreeMap<Long, Double> areas(TriMesh mesh, int sign) {
        TreeMap<Long, Double> out = new TreeMap<>();
        for (int f = 0; f < mesh.facetCount(); f++) {
            double area = mesh.area(f), nz = mesh.doubleAreaNormal(f).z() * sign / 2;
            if (nz >= LEVEL * area) out.merge(Math.round(mesh.centroid(f).z() / SAME_MM), area, Double::sum);
        }
        return out;
    }
}
