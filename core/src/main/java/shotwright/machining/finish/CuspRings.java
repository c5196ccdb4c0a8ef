package shotwright.machining.finish;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import shotwright.cutter.CutterProfile;
import shotwright.geom.Vec2;
import shotwright.machining.contact.TopSurface;
import shotwright.machining.contour.Contour;
import shotwright.machining.contour.Isolines;
import shotwright.machining.contour.Thinning;
import shotwright.mesh.Grid;

/**
 * Rings over a curved floor whose distance along the surface is everywhere the same, so that the ridges between them are: lines of equal
 * distance from the zone's border, each moved from where the cutter touches to where its axis stands.
 */
public final class CuspRings {
    /** Distances over sixteen directions come out up to 2.75 % long; rings this much closer are never farther apart than asked. */
    private static final double CLOSER = 0.973;

    private static final double THIN_MM = 0.002;
    private static final int SLOPE_CELLS = 2;

    private CuspRings() {}

    /**
     * Lines of the tip in plan, from the border inward.
     *
     * @param zone cells the cutter shall touch
     * @param ball cutter; its rounding is what touches
     * @param stepMm distance along the surface, see {@link shotwright.machining.feed.Cusp#stepOfBallMm}
     */
    public static List<Contour> lines(TopSurface surface, BitSet zone, CutterProfile ball, double stepMm) {
        if (ball.cornerRadiusMm() == 0) throw new IllegalArgumentException("cutter: rings need a rounded end");
        Grid grid = surface.grid();
        BitSet border = border(zone, grid);
        float[] far = SurfaceDistance.from(grid, surface.heightsMm(), zone, border, 16);
        float most = 0;
        for (int c = zone.nextSetBit(0); c >= 0; c = zone.nextSetBit(c + 1))
            if (far[c] < Float.POSITIVE_INFINITY) most = Math.max(most, far[c]);
        List<Contour> lines = new ArrayList<>();
        double step = stepMm * CLOSER;
        for (double at = grid.cell() / 4; at < most; at += step) {
            for (Contour touch : Isolines.at(grid, far, zone::get, at))
                lines.add(Thinning.of(standing(surface, touch, ball), THIN_MM));
            BitSet ridges = ridges(grid, far, at, at + step);
            for (Contour touch : Isolines.at(grid, far, ridges::get, at + step / 2))
                lines.add(Thinning.of(standing(surface, touch, ball), THIN_MM));
        }
        return lines;
    }

    /** Cells between two levels and more than half their distance from the higher one: there fronts meet, and a ring between is needed. */
    private static BitSet ridges(Grid grid, float[] far, double low, double high) {
        BitSet band = new BitSet(far.length), edge = new BitSet(far.length);
        for (int c = 0; c < far.length; c++) {
            if (far[c] == Float.POSITIVE_INFINITY) continue;
            if (far[c] >= high) edge.set(c);
            else if (far[c] > low) band.set(c);
        }
        for (int k = (int) Math.ceil((high - low) / 2 / grid.cell()); k > 0; k--) {
            BitSet grown = new BitSet(far.length);
            for (int c = edge.nextSetBit(0); c >= 0; c = edge.nextSetBit(c + 1)) {
                int x = c % grid.nx(), y = c / grid.nx();
                for (int j = Math.max(0, y - 1); j <= Math.min(grid.ny() - 1, y + 1); j++)
                    for (int i = Math.max(0, x - 1); i <= Math.min(grid.nx() - 1, x + 1); i++)
                        if (band.get(grid.index(i, j))) grown.set(grid.index(i, j));
            }
            band.andNot(grown);
            edge = grown;
        }
        return band;
    }

    /** Cells of the zone beside one that is not. */
    public static BitSet border(BitSet zone, Grid grid) {
        BitSet border = new BitSet(grid.count());
        for (int c = zone.nextSetBit(0); c >= 0; c = zone.nextSetBit(c + 1)) {
            int x = c % grid.nx(), y = c / grid.nx();
            boolean inner = x > 0 && y > 0 && x < grid.nx() - 1 && y < grid.ny() - 1;
            if (!inner || !zone.get(c - 1) || !zone.get(c + 1) || !zone.get(c - grid.nx()) || !zone.get(c + grid.nx()))
                border.set(c);
        }
        return border;
    }

    private static Contour standing(TopSurface surface, Contour touch, CutterProfile ball) {
        List<Vec2> axes = new ArrayList<>();
        for (Vec2 p : touch.points()) {
            Vec2 uphill = slope(surface, p);
            double rise = uphill.length();
            axes.add(rise == 0 ? p : p.minus(uphill.times(ball.contactRadiusMm(rise) / rise)));
        }
        return new Contour(axes, touch.closed());
    }

    /** Rise along x and y, over some cells to either side as far as they show a surface. */
    private static Vec2 slope(TopSurface surface, Vec2 p) {
        Grid g = surface.grid();
        int i = (int) Math.floor((p.x() - g.x0()) / g.cell()), j = (int) Math.floor((p.y() - g.y0()) / g.cell());
        return new Vec2(rise(surface, i, j, 1, 0), rise(surface, i, j, 0, 1));
    }

    private static double rise(TopSurface surface, int i, int j, int dx, int dy) {
        double first = height(surface, i - SLOPE_CELLS * dx, j - SLOPE_CELLS * dy);
        double here = height(surface, i, j), last = height(surface, i + SLOPE_CELLS * dx, j + SLOPE_CELLS * dy);
        double span = SLOPE_CELLS * surface.grid().cell();
        if (Double.isFinite(first) && Double.isFinite(last)) return (last - first) / (2 * span);
        if (Double.isFinite(last) && Double.isFinite(here)) return (last - here) / span;
        return Double.isFinite(first) && Double.isFinite(here) ? (here - first) / span : 0;
    }

    private static double height(TopSurface surface, int i, int j) {
        Grid g = surface.grid();
        return i < 0 || j < 0 || i >= g.nx() || j >= g.ny() ? Double.NaN : surface.heightMm(g.index(i, j));
    }
}
