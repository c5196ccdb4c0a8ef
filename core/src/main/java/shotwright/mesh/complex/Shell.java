package shotwright.mesh.complex;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import shotwright.geom.Vec3;
import shotwright.mesh.Bodies;
import shotwright.mesh.Edges;

/**
 * One closed surface of a cell's skin.
 *
 * @param facets its facets in the complex, good until the complex changes
 * @param volumeMm3 what it encloses; below zero when it bounds a hollow in the cell, or is folded inside out
 * @param areaMm2 its surface
 * @param place middle of its facets by area
 * @param touchedMm2 surface it shares with each neighbouring cell
 */
public record Shell(int[] facets, double volumeMm3, double areaMm2, Vec3 place, Map<Integer, Double> touchedMm2) {
    /** The shells of a cell, the one with the most volume first. */
    static List<Shell> all(Complex c, int cell) {
        int[] skin = IntStream.range(0, c.facetCount())
                .filter(f -> c.bounds(f, cell))
                .toArray();
        Bodies bodies = Bodies.of(Edges.of(c.extract(cell))); // its facets are those of the skin, in order
        List<Shell> shells = new ArrayList<>();
        for (int[] body : bodies.facets())
            shells.add(of(c, cell, Arrays.stream(body).map(i -> skin[i]).toArray()));
        shells.sort(Comparator.comparingDouble(Shell::volumeMm3).reversed());
        return shells;
    }

    private static Shell of(Complex c, int cell, int[] facets) {
        Vec3 origin = c.vertex(c.corner(facets[0], 0)), moment = Vec3.ZERO;
        double volume = 0, area = 0;
        Map<Integer, Double> touched = new HashMap<>();
        for (int f : facets) {
            boolean outward = c.behind(f) == cell;
            Vec3 p = c.vertex(c.corner(f, 0)).minus(origin);
            Vec3 q = c.vertex(c.corner(f, 1)).minus(origin),
                    r = c.vertex(c.corner(f, 2)).minus(origin);
            double size = c.doubleAreaNormal(f).length() / 2;
            volume += (outward ? 1 : -1) * p.dot(q.cross(r)) / 6;
            area += size;
            moment = moment.plus(p.plus(q).plus(r).times(size / 3));
            touched.merge(outward ? c.front(f) : c.behind(f), size, Double::sum);
        }
        Vec3 place = area > 0 ? origin.plus(moment.times(1 / area)) : origin;
        return new Shell(facets, volume, area, place, touched);
    }
}
