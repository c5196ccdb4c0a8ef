package shotwright.machining.contour;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.geom.Vec2;
import shotwright.machining.contact.DropCutter;
import shotwright.machining.contact.LocationMap;
import shotwright.mesh.Grid;
import shotwright.region.Region;
import shotwright.region.Winding;

/**
 * The lines that bound where a tip may stand at a level. A coarse map of tip heights shows where they run; places beside them which the map
 * calls free are asked again of the exact drop-cutter, so that every crossing lies between a free and a blocked place; a thinned choice of
 * crossings is bisected, and pieces are halved sideways until the line keeps within {@link #CHORD_MM} of the true one.
 *
 * <p>What is blocked is at least as wide as the cutter, so no metal falls between the map's places when its cells are smaller than the
 * cutter; free gaps narrower than a cell may stay unseen and then stay uncut. Not safe for several threads at once.
 */
public final class LevelContour {
    /** How far a piece may stray sideways, mm. */
    public static final double CHORD_MM = 0.0008;

    /** The longest piece to look at as a whole: this, or a quarter of the cutter's radius. */
    private static final double LONGEST_MM = 0.4;

    private static final double LEAST_LONGEST_MM = 0.05;
    private static final double SHORTEST_MM = 0.0005;
    private static final double EXACT_MM = 1e-6;
    private static final int MOST_ROUNDS = 40;
    /** Pieces tried between two chosen places before the line is opened there. */
    private static final int MOST_PIECES = 600;

    private final DropCutter drop;
    private final DropCutter.Cursor cursor = new DropCutter.Cursor();
    private final Grid grid;
    private final float[] tips;
    private final BitSet exact;
    private int piecesLeft;

    /**
     * @param drop the exact cutter
     * @param map the same cutter's coarse map
     */
    public LevelContour(DropCutter drop, LocationMap map) {
        if (!drop.profile().equals(map.profile()))
            throw new IllegalArgumentException("map: is of another cutter, " + map.profile());
        this.drop = drop;
        grid = map.surface().grid();
        tips = map.tipsMm().clone();
        exact = new BitSet(grid.count());
    }

    /**
     * The lines of one level.
     *
     * @param contours closed lines, and open ones where no line was found between two places
     * @param raisedCount places the map called free and the drop-cutter did not
     * @param splitCount where closed lines had to be opened
     */
    public record Level(double zMm, List<Contour> contours, int raisedCount, int splitCount) {
        public Level {
            contours = List.copyOf(contours);
        }

        /** What of a region is free for the tip. Lines that had to be opened are closed straight, so ask only where none was. */
        public Region freeIn(Region within) {
            int n = contours.stream().mapToInt(c -> c.points().size()).sum(), k = 0;
            if (n == 0) return within;
            double[] ends = new double[4 * n];
            int[] once = new int[n];
            Arrays.fill(once, 1);
            for (Contour c : contours)
                for (int i = 0; i < c.points().size(); i++) {
                    // run backward the metal lies on the left
                    Vec2 a = c.points().get((i + 1) % c.points().size()),
                            b = c.points().get(i);
                    ends[k++] = a.x();
                    ends[k++] = a.y();
                    ends[k++] = b.x();
                    ends[k++] = b.y();
                }
            return within.difference(Winding.atLeastOnce(ends, once));
        }
    }

    /** The lines at a height; those that meet the border of the map are left out. */
    public Level at(double zMm) {
        int raised = 0;
        List<List<March.Crossing>> loops = march(zMm);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            int more = raise(loops, zMm);
            raised += more;
            if (more == 0) break;
            loops = march(zMm);
        }
        List<Contour> lines = new ArrayList<>();
        int splits = 0;
        for (List<March.Crossing> loop : loops) {
            List<Contour> found = refine(loop, zMm);
            lines.addAll(found);
            if (!found.isEmpty() && !found.getFirst().closed()) splits += found.size();
        }
        return new Level(zMm, lines, raised, splits);
    }

    private List<List<March.Crossing>> march(double zMm) {
        return new March(grid, cell -> tips[cell] <= zMm).loops();
    }

    private int raise(List<List<March.Crossing>> loops, double zMm) {
        int raised = 0;
        for (List<March.Crossing> loop : loops)
            for (March.Crossing c : loop) {
                int cell = grid.index(c.i(), c.j());
                if (exact.get(cell)) continue;
                exact.set(cell);
                double tip = tip(grid.x(c.i()), grid.y(c.j()));
                tips[cell] = up(tip);
                if (tip > zMm) raised++;
            }
        return raised;
    }

    /** The nearest float not below. */
    private static float up(double v) {
        float f = (float) v;
        return f < v ? Math.nextUp(f) : f;
    }

    private double tip(double x, double y) {
        return drop.tipMm(x, y, cursor);
    }

    private boolean isFree(Vec2 p, double zMm) {
        return tip(p.x(), p.y()) <= zMm;
    }

    private List<Contour> refine(List<March.Crossing> loop, double zMm) {
        List<Vec2> rough = new ArrayList<>();
        for (March.Crossing c : loop) {
            if (c.atBorder(grid)) return List.of();
            rough.add(free(c).plus(blocked(c)).times(0.5));
        }
        List<Vec2> chosen = new ArrayList<>();
        double longest = Math.clamp(drop.profile().largestRadiusMm() / 4, LEAST_LONGEST_MM, LONGEST_MM);
        for (int k : Thinning.closed(rough, grid.cell() / 2, longest))
            chosen.add(bisect(free(loop.get(k)), blocked(loop.get(k)), zMm));
        return joined(chosen, zMm);
    }

    private Vec2 free(March.Crossing c) {
        return new Vec2(grid.x(c.i()), grid.y(c.j()));
    }

    private Vec2 blocked(March.Crossing c) {
        return new Vec2(grid.x(c.outI()), grid.y(c.outJ()));
    }

    /** The free place next to the border between a free and a blocked one. */
    private Vec2 bisect(Vec2 free, Vec2 blocked, double zMm) {
        Vec2 a = free, b = blocked;
        while (a.distance(b) > EXACT_MM) {
            Vec2 m = a.plus(b).times(0.5);
            if (isFree(m, zMm)) a = m;
            else b = m;
        }
        return a;
    }

    private List<Contour> joined(List<Vec2> chosen, double zMm) {
        List<List<Vec2>> runs = new ArrayList<>();
        List<Vec2> run = new ArrayList<>(List.of(chosen.getFirst()));
        boolean whole = true;
        for (int i = 0; i < chosen.size(); i++) {
            Vec2 a = chosen.get(i), b = chosen.get((i + 1) % chosen.size());
            List<Vec2> between = new ArrayList<>();
            piecesLeft = MOST_PIECES;
            if (halve(a, b, zMm, between)) {
                run.addAll(between);
            } else {
                whole = false;
                runs.add(run);
                run = new ArrayList<>();
            }
            run.add(b);
        }
        if (whole) {
            run.removeLast();
            return run.size() < 3 ? List.of() : List.of(new Contour(run, true));
        }
        // the line before the first gap continues the one after the last
        run.removeLast();
        run.addAll(runs.removeFirst());
        runs.add(run);
        return runs.stream()
                .filter(r -> r.size() > 1)
                .map(r -> new Contour(r, false))
                .toList();
    }

    /** Adds the places needed between two; false when the true line cannot be found beside the straight one. */
    private boolean halve(Vec2 a, Vec2 b, double zMm, List<Vec2> out) {
        double length = a.distance(b);
        if (length < SHORTEST_MM) return true;
        if (--piecesLeft < 0) return false;
        Vec2 left = b.minus(a).times(1 / length).left();
        Vec2 middle = a.plus(b).times(0.5);
        if (fits(middle, left, zMm)
                && isFree(between(a, b, 0.25).plus(left.times(CHORD_MM)), zMm)
                && isFree(between(a, b, 0.75).plus(left.times(CHORD_MM)), zMm)) return true;
        Vec2 exactly = sideways(middle, left, zMm);
        if (exactly == null) return false;
        if (exactly.distance(a) < SHORTEST_MM / 4 || exactly.distance(b) < SHORTEST_MM / 4) return true;
        List<Vec2> first = new ArrayList<>(), second = new ArrayList<>();
        if (!halve(a, exactly, zMm, first) || !halve(exactly, b, zMm, second)) return false;
        out.addAll(first);
        out.add(exactly);
        out.addAll(second);
        return true;
    }

    private static Vec2 between(Vec2 a, Vec2 b, double share) {
        return a.plus(b.minus(a).times(share));
    }

    private boolean fits(Vec2 p, Vec2 left, double zMm) {
        return isFree(p.plus(left.times(CHORD_MM)), zMm) && !isFree(p.minus(left.times(CHORD_MM)), zMm);
    }

    /** The border beside a place: looked for to the left when it is blocked, else to the right. */
    private @Nullable Vec2 sideways(Vec2 p, Vec2 left, double zMm) {
        boolean free = isFree(p, zMm);
        Vec2 last = p;
        for (double step = 2 * CHORD_MM; step <= 4 * grid.cell(); step *= 1.5) {
            Vec2 q = p.plus(left.times(free ? -step : step));
            if (isFree(q, zMm) != free) return free ? bisect(last, q, zMm) : bisect(q, last, zMm);
            last = q;
        }
        return null;
    }
}
