package shotwright.machining.contact;

import java.util.ArrayList;
import java.util.List;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;

/**
 * A line in plan made into a path of the tip that follows the surface: middles are put in until the straight path between two neighbours
 * strays no farther from the exact height than the tolerance, asked at the middle and at both quarters. At a step too steep for that the
 * path rises or sinks straight beside it, on its high side.
 */
public final class ExactPath {
    /** How far a straight piece may stray in height, mm: a tenth of what gouge checks allow. */
    public static final double CHORD_MM = 0.0008;
    /** What thinning may add, in chord errors: 0.001 mm to 0.0008. */
    private static final double THIN_SHARE = 1.25;

    private static final double SHORTEST_MM = 0.002;

    private final DropCutter drop;
    private final DropCutter.Cursor cursor = new DropCutter.Cursor();
    private final double chordMm;
    private final double longestMm;

    /**
     * @param drop cutter over the surface
     * @param chordMm how far a straight piece may stray in height
     * @param longestMm the longest piece to ask about at all: shorter than what must not be stepped over
     */
    public ExactPath(DropCutter drop, double chordMm, double longestMm) {
        if (!(chordMm > 0) || !(longestMm > 0))
            throw new IllegalArgumentException(
                    "path: chord error " + chordMm + " mm, longest piece " + longestMm + " mm");
        this.drop = drop;
        this.chordMm = chordMm;
        this.longestMm = longestMm;
    }

    /** The tolerances of this class, and pieces no longer than a tenth of the cutter or 0.4 mm. */
    public ExactPath(DropCutter drop) {
        this(drop, CHORD_MM, Math.min(0.4, Math.max(0.05, drop.profile().largestRadiusMm() / 5)));
    }

    /** The tip's path over a line in plan, not thinned. */
    public List<Vec3> along(List<Vec2> line) {
        List<Vec3> path = new ArrayList<>();
        if (line.isEmpty()) return path;
        Vec3 last = seat(line.getFirst().x(), line.getFirst().y());
        path.add(last);
        for (int i = 1; i < line.size(); i++) {
            Vec3 next = seat(line.get(i).x(), line.get(i).y());
            int pieces = Math.max(1, (int) Math.ceil(line.get(i - 1).distance(line.get(i)) / longestMm));
            Vec3 from = last;
            for (int k = 1; k <= pieces; k++) {
                Vec2 at = from.toward(next, k / (double) pieces).xy();
                Vec3 to = k == pieces ? next : seat(at.x(), at.y());
                refine(last, to, path);
                last = to;
            }
        }
        return path;
    }

    /** As {@link #along}, thinned by one and a quarter chord errors more. */
    public List<Vec3> thinned(List<Vec2> line) {
        return thin(along(line), THIN_SHARE * chordMm);
    }

    /** The seat at a place. */
    public Vec3 seat(double xMm, double yMm) {
        return new Vec3(xMm, yMm, drop.tipMm(xMm, yMm, cursor));
    }

    /** How far below the exact height a straight piece comes at its middle and quarters, mm; below zero where it stays above. */
    public double deepestMm(Vec3 a, Vec3 b) {
        double worst = Double.NEGATIVE_INFINITY;
        for (int k = 0; k <= 4; k++) {
            Vec3 p = a.toward(b, k / 4.0);
            worst = Math.max(worst, drop.tipMm(p.x(), p.y(), cursor) - p.z());
        }
        return worst;
    }

    private void refine(Vec3 a, Vec3 b, List<Vec3> out) {
        Vec3 m = between(a, b, 0.5);
        boolean straight = off(a, b, m) <= chordMm;
        if (straight) straight = off(a, b, between(a, b, 0.25)) <= chordMm && off(a, b, between(a, b, 0.75)) <= chordMm;
        if (straight) {
            out.add(b);
        } else if (a.xy().distance(b.xy()) <= SHORTEST_MM) {
            double high = Math.max(m.z(), Math.max(a.z(), b.z()));
            if (high > a.z()) out.add(new Vec3(a.x(), a.y(), high));
            if (high > b.z()) out.add(new Vec3(b.x(), b.y(), high));
            out.add(b);
        } else {
            refine(a, m, out);
            refine(m, b, out);
        }
    }

    private Vec3 between(Vec3 a, Vec3 b, double share) {
        Vec3 p = a.toward(b, share);
        return seat(p.x(), p.y());
    }

    private static double off(Vec3 a, Vec3 b, Vec3 exact) {
        double whole = a.xy().distance(b.xy());
        double share = whole == 0 ? 0 : a.xy().distance(exact.xy()) / whole;
        return Math.abs(exact.z() - a.toward(b, share).z());
    }

    /** Points left out where the path without them strays no farther than the tolerance in space (Douglas and Peucker 1973). */
    public static List<Vec3> thin(List<Vec3> path, double toleranceMm) {
        if (path.size() < 3) return List.copyOf(path);
        boolean[] keep = new boolean[path.size()];
        keep[0] = keep[path.size() - 1] = true;
        java.util.ArrayDeque<int[]> open = new java.util.ArrayDeque<>();
        open.push(new int[] {0, path.size() - 1});
        while (!open.isEmpty()) {
            int[] span = open.pop();
            double worst = 0;
            int at = -1;
            for (int i = span[0] + 1; i < span[1]; i++) {
                double d = distance(path.get(i), path.get(span[0]), path.get(span[1]));
                if (d > worst) {
                    worst = d;
                    at = i;
                }
            }
            if (worst <= toleranceMm) continue;
            keep[at] = true;
            open.push(new int[] {span[0], at});
            open.push(new int[] {at, span[1]});
        }
        List<Vec3> out = new ArrayList<>();
        for (int i = 0; i < keep.length; i++) if (keep[i]) out.add(path.get(i));
        return out;
    }

    private static double distance(Vec3 p, Vec3 a, Vec3 b) {
        Vec3 ab = b.minus(a), ap = p.minus(a);
        double l2 = ab.dot(ab);
        double t = l2 == 0 ? 0 : Math.clamp(ap.dot(ab) / l2, 0, 1);
        return ap.minus(ab.times(t)).length();
    }
}
