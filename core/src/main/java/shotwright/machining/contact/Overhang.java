package shotwright.machining.contact;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import shotwright.geom.Vec2;
import shotwright.mesh.Grid;
import shotwright.mesh.HeightMap;
import shotwright.mesh.TriMesh;

/**
 * A place where a half lies under itself: metal stands over a gap that no cutter reaches from above. Paths follow the upper surface there;
 * what lies beneath stays uncut, and the half cannot open.
 *
 * @param place the middle of the cell nearest to the zone's centre
 * @param areaMm2 size in plan
 * @param upperMm highest roof of a gap in it
 * @param lowerMm lowest floor of a gap in it
 */
public record Overhang(Vec2 place, double areaMm2, double upperMm, double lowerMm) {
    /** Gaps lower than this are rounding of coordinates, not undercuts. */
    private static final double ROUNDING_MM = 1e-4;

    /** All overhangs of a closed half over a grid, the largest first. Zones that touch at a side or a corner are one. */
    public static List<Overhang> in(TriMesh half, Grid grid) {
        HeightMap columns = HeightMap.of(half, grid);
        BitSet open = new BitSet(grid.count());
        for (int c = 0; c < grid.count(); c++)
            for (int k = 1; k < columns.intervalCount(c); k++)
                if (columns.low(c, k) - columns.high(c, k - 1) > ROUNDING_MM) open.set(c);
        List<Overhang> found = new ArrayList<>();
        for (int c = open.nextSetBit(0); c >= 0; c = open.nextSetBit(c)) found.add(of(columns, zone(open, c, grid)));
        found.sort(Comparator.comparingDouble(Overhang::areaMm2).reversed());
        return List.copyOf(found);
    }

    private static List<Integer> zone(BitSet open, int start, Grid grid) {
        List<Integer> zone = new ArrayList<>();
        ArrayDeque<Integer> edge = new ArrayDeque<>();
        open.clear(start);
        edge.add(start);
        while (!edge.isEmpty()) {
            int cell = edge.remove(), x = cell % grid.nx(), y = cell / grid.nx();
            zone.add(cell);
            for (int j = Math.max(0, y - 1); j <= Math.min(grid.ny() - 1, y + 1); j++)
                for (int i = Math.max(0, x - 1); i <= Math.min(grid.nx() - 1, x + 1); i++)
                    if (open.get(grid.index(i, j))) {
                        open.clear(grid.index(i, j));
                        edge.add(grid.index(i, j));
                    }
        }
        return zone;
    }

    private static Overhang of(HeightMap columns, List<Integer> zone) {
        Grid grid = columns.grid();
        double sx = 0, sy = 0, upper = Double.NEGATIVE_INFINITY, lower = Double.POSITIVE_INFINITY;
        for (int cell : zone) {
            sx += grid.x(cell % grid.nx());
            sy += grid.y(cell / grid.nx());
            for (int k = 1; k < columns.intervalCount(cell); k++) {
                upper = Math.max(upper, columns.low(cell, k));
                lower = Math.min(lower, columns.high(cell, k - 1));
            }
        }
        Vec2 middle = new Vec2(sx / zone.size(), sy / zone.size()), place = middle;
        double nearest = Double.POSITIVE_INFINITY;
        for (int cell : zone) {
            Vec2 at = new Vec2(grid.x(cell % grid.nx()), grid.y(cell / grid.nx()));
            if (at.distance(middle) < nearest) {
                nearest = at.distance(middle);
                place = at;
            }
        }
        return new Overhang(place, zone.size() * grid.cell() * grid.cell(), upper, lower);
    }
}
