package shotwright.machining.contour;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import shotwright.geom.Vec2;
import shotwright.mesh.Grid;

/** Lines of equal value over a grid, between the cells' middles by straight proportion. */
public final class Isolines {
    private Isolines() {}

    /**
     * The lines of a level, higher values on their left.
     *
     * @param field one value a cell
     * @param known which cells have one; lines end where there is none
     */
    public static List<Contour> at(Grid grid, float[] field, IntPredicate known, double level) {
        List<Contour> lines = new ArrayList<>();
        for (List<March.Crossing> loop : new March(grid, c -> known.test(c) && field[c] >= level).loops()) {
            int n = loop.size(), start = -1;
            for (int k = 0; k < n; k++) if (!real(grid, known, loop.get(k))) start = k;
            if (start < 0) {
                lines.add(new Contour(
                        loop.stream().map(c -> place(grid, field, level, c)).toList(), true));
                continue;
            }
            List<Vec2> run = new ArrayList<>();
            for (int k = 1; k <= n; k++) {
                March.Crossing c = loop.get((start + k) % n);
                if (real(grid, known, c)) {
                    run.add(place(grid, field, level, c));
                } else {
                    if (run.size() > 1) lines.add(new Contour(run, false));
                    run = new ArrayList<>();
                }
            }
        }
        return lines;
    }

    private static boolean real(Grid grid, IntPredicate known, March.Crossing c) {
        return !c.atBorder(grid) && known.test(grid.index(c.outI(), c.outJ()));
    }

    private static Vec2 place(Grid grid, float[] field, double level, March.Crossing c) {
        double in = field[grid.index(c.i(), c.j())], out = field[grid.index(c.outI(), c.outJ())];
        double share = in == out ? 0.5 : Math.clamp((in - level) / (in - out), 0, 1);
        Vec2 a = new Vec2(grid.x(c.i()), grid.y(c.j())), b = new Vec2(grid.x(c.outI()), grid.y(c.outJ()));
        return a.plus(b.minus(a).times(share));
    }
}
