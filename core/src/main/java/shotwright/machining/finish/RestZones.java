package shotwright.machining.finish;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import shotwright.geom.Vec2;
import shotwright.machining.contact.LocationMap;
import shotwright.machining.contour.March;
import shotwright.mesh.Grid;
import shotwright.region.Region;
import shotwright.region.Winding;

/** Where a larger cutter left what a smaller one takes. */
public final class RestZones {
    private RestZones() {}

    /**
     * The zones in plan, grown by a fifth of the smaller cutter's diameter for overlap; specks smaller than a quarter of its diameter squared
     * are left out.
     *
     * @param larger map of the cutter that has been there
     * @param smaller map of the one that comes
     * @param leastMm what is worth it, along the normal
     */
    public static Region of(LocationMap larger, LocationMap smaller, double leastMm) {
        Grid grid = larger.surface().grid();
        float[] left = larger.leftoverMm(), then = smaller.leftoverMm();
        BitSet mask = new BitSet(grid.count());
        for (int c = 0; c < left.length; c++) if (left[c] - then[c] > leastMm) mask.set(c);
        double dia = 2 * smaller.profile().largestRadiusMm();
        List<Region> worth = outline(mask, grid).pieces().stream()
                .filter(p -> p.area() >= dia * dia / 4)
                .toList();
        return Region.unionOf(worth).offset(dia / 5);
    }

    /** The outline of marked cells, through the middles between marked and unmarked ones. */
    public static Region outline(BitSet mask, Grid grid) {
        List<double[]> edges = new ArrayList<>();
        for (List<March.Crossing> loop : new March(grid, mask::get).loops())
            for (int k = 0; k < loop.size(); k++) {
                Vec2 a = middle(grid, loop.get(k)), b = middle(grid, loop.get((k + 1) % loop.size()));
                edges.add(new double[] {a.x(), a.y(), b.x(), b.y()});
            }
        if (edges.isEmpty()) return Region.EMPTY;
        double[] ends = new double[4 * edges.size()];
        int[] once = new int[edges.size()];
        for (int i = 0; i < once.length; i++) {
            System.arraycopy(edges.get(i), 0, ends, 4 * i, 4);
            once[i] = 1;
        }
        return Winding.atLeastOnce(ends, once);
    }

    private static Vec2 middle(Grid grid, March.Crossing c) {
        return new Vec2((grid.x(c.i()) + grid.x(c.outI())) / 2, (grid.y(c.j()) + grid.y(c.outJ())) / 2);
    }
}
