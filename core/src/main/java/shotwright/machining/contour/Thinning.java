package shotwright.machining.contour;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import shotwright.geom.Vec2;

/** Which places of a line may be left out (Douglas and Peucker 1973). */
public final class Thinning {
    private Thinning() {}

    /** Indices kept of a closed line, in order: so that none left out lies farther than the tolerance, and no gap is longer than told. */
    static List<Integer> closed(List<Vec2> loop, double toleranceMm, double longestMm) {
        int n = loop.size(), far = 0;
        for (int i = 1; i < n; i++)
            if (loop.get(i).distance(loop.getFirst()) > loop.get(far).distance(loop.getFirst())) far = i;
        BitSet keep = new BitSet(n);
        keep.set(0);
        keep.set(far);
        mark(loop, 0, far, toleranceMm, longestMm, keep);
        mark(loop, far, n, toleranceMm, longestMm, keep);
        return keep.stream().boxed().toList();
    }

    /** A line without the places that lie within the tolerance of it. */
    public static Contour of(Contour line, double toleranceMm) {
        if (line.closed()) {
            List<Vec2> kept = new ArrayList<>();
            for (int i : closed(line.points(), toleranceMm, Double.POSITIVE_INFINITY))
                kept.add(line.points().get(i));
            return new Contour(kept, true);
        }
        List<Vec2> points = line.points();
        BitSet keep = new BitSet(points.size());
        keep.set(0);
        keep.set(points.size() - 1);
        mark(points, 0, points.size() - 1, toleranceMm, Double.POSITIVE_INFINITY, keep);
        return new Contour(keep.stream().mapToObj(points::get).toList(), false);
    }

    private static void mark(List<Vec2> loop, int from, int to, double toleranceMm, double longestMm, BitSet keep) {
        ArrayDeque<int[]> open = new ArrayDeque<>();
        open.push(new int[] {from, to});
        int n = loop.size();
        while (!open.isEmpty()) {
            int[] span = open.pop();
            if (span[1] - span[0] < 2) continue;
            Vec2 a = loop.get(span[0]), b = loop.get(span[1] % n);
            double worst = -1;
            int at = (span[0] + span[1]) / 2;
            for (int i = span[0] + 1; i < span[1]; i++) {
                double d = distance(loop.get(i), a, b);
                if (d > worst) {
                    worst = d;
                    at = i;
                }
            }
            if (worst <= toleranceMm) {
                if (a.distance(b) <= longestMm) continue;
                at = (span[0] + span[1]) / 2;
            }
            keep.set(at);
            open.push(new int[] {span[0], at});
            open.push(new int[] {at, span[1]});
        }
    }

    /** Distance of a point from a straight piece, mm. */
    static double distance(Vec2 p, Vec2 a, Vec2 b) {
        Vec2 ab = b.minus(a);
        double l2 = ab.dot(ab);
        double t = l2 == 0 ? 0 : Math.clamp(p.minus(a).dot(ab) / l2, 0, 1);
        return p.distance(a.plus(ab.times(t)));
    }
}
