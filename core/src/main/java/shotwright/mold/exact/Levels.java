package shotwright.mold.exact;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import shotwright.mesh.TriMesh;

/** The heights at which the halves meet flat. */
final class Levels {
    private static final double LEVEL = 1 - 1e-12;
    private static final double SAME_MM = 1e-5;
    /** A meeting face smaller than this is a shut-off too small to mill. */
    private static final double LEAST_MM2 = 0.05;

    private Levels() {}

    /**
     * Heights, lowest first; the parting plane of the block, 0, is always among them.
     *
     * @param parting where the halves meet
     */
    static List<Double> of(TriMesh parting) {
        TreeMap<Long, List<Integer>> steps = new TreeMap<>();
        for (int f = 0; f < parting.facetCount(); f++)
            if (lies(parting, f))
                steps.computeIfAbsent(step(parting, f), s -> new ArrayList<>()).add(f);
        List<Double> out = new ArrayList<>(List.of(0.0));
        steps.forEach((step, facets) -> {
            double area = facets.stream().mapToDouble(parting::area).sum();
            if (area > LEAST_MM2 && step != 0) out.add(height(parting, facets));
        });
        out.sort(Double::compare);
        return out;
    }

    /** The parting surface with every corner that is a hair off one of the heights put onto it. */
    static TriMesh onto(TriMesh parting, List<Double> heights) {
        double[] xyz = parting.copyXyz();
        for (int k = 2; k < xyz.length; k += 3) for (double z : heights) if (Math.abs(xyz[k] - z) < SAME_MM) xyz[k] = z;
        return new TriMesh(xyz, parting.copyTri());
    }

    /** For each facet whether it lies wholly at one of the heights. */
    static boolean[] on(TriMesh parting, List<Double> heights) {
        boolean[] out = new boolean[parting.facetCount()];
        for (int f = 0; f < out.length; f++) {
            double z = parting.z(parting.corner(f, 0));
            out[f] =
                    heights.contains(z) && parting.z(parting.corner(f, 1)) == z && parting.z(parting.corner(f, 2)) == z;
        }
        return out;
    }

    private static boolean lies(TriMesh parting, int f) {
        return parting.doubleAreaNormal(f).z() >= LEVEL * 2 * parting.area(f);
    }

    /** That of the largest, to the last digit, since a flat face of the part may lie there too. */
    private static double height(TriMesh parting, List<Integer> facets) {
        int largest = Collections.max(facets, Comparator.comparingDouble(parting::area));
        return parting.z(parting.corner(largest, 0));
    }

    private static long step(TriMesh parting, int f) {
        return Math.round(parting.centroid(f).z() / SAME_MM);
    }
}
