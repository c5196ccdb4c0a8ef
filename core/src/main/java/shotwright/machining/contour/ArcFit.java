package shotwright.machining.contour;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.path.Arc;
import shotwright.machining.path.Feed;
import shotwright.machining.path.Line;

/**
 * Lines and arcs in place of many short pieces at one height. Greedy: from where the last ended, the line or the arc through first, middle
 * and last place that reaches farthest with every place and every middle of a piece within the tolerance. A closed line starts where a
 * piece ended in a trial round, that is between a line and an arc.
 */
public final class ArcFit {
    /** What fits lines whose places were found exactly and thinned to {@link LevelContour#CHORD_MM}: two and a half times that, mm. */
    public static final double TOLERANCE_MM = 0.002;

    private static final double LEAST_RADIUS_MM = 0.05;
    private static final double MOST_RADIUS_MM = 500;
    private static final double LEAST_CHORD_MM = 0.02;

    private final double toleranceMm;

    public ArcFit(double toleranceMm) {
        if (!(toleranceMm > 0))
            throw new IllegalArgumentException("tolerance: " + toleranceMm + " mm is not above zero");
        this.toleranceMm = toleranceMm;
    }

    /** Lines and arcs along a contour at a height; a closed one ends where it starts. */
    public List<Feed> moves(Contour line, double zMm, double feedMmPerMin) {
        List<Vec2> points = line.points();
        if (points.size() < 2) return List.of();
        if (line.closed()) points = startedAtAJunction(points);
        List<Feed> moves = new ArrayList<>();
        for (Piece p : pieces(points)) {
            Vec3 from = points.get(p.from).atZ(zMm), to = points.get(p.to).atZ(zMm);
            if (p.centre == null) moves.add(new Line(from, to, feedMmPerMin));
            else moves.add(new Arc(from, to, p.centre, p.counterClockwise, feedMmPerMin));
        }
        return moves;
    }

    private record Piece(int from, int to, @Nullable Vec2 centre, boolean counterClockwise) {}

    private List<Vec2> startedAtAJunction(List<Vec2> loop) {
        List<Vec2> closed = closed(loop, 0);
        List<Piece> trial = pieces(closed);
        return trial.size() < 2 ? closed : closed(loop, trial.getFirst().to);
    }

    private static List<Vec2> closed(List<Vec2> loop, int start) {
        List<Vec2> out = new ArrayList<>(loop.size() + 1);
        for (int i = 0; i <= loop.size(); i++) out.add(loop.get((start + i) % loop.size()));
        return out;
    }

    private List<Piece> pieces(List<Vec2> points) {
        List<Piece> pieces = new ArrayList<>();
        for (int from = 0; from < points.size() - 1; ) {
            Piece straight = farthest(points, from, false), round = farthest(points, from, true);
            Piece best = round.to > straight.to ? round : straight;
            pieces.add(best);
            from = best.to;
        }
        return pieces;
    }

    /** Doubling, then halving: the farthest place a piece can reach, as far as reaching is monotone. */
    private Piece farthest(List<Vec2> points, int from, boolean round) {
        Piece good = new Piece(from, from + 1, null, false);
        int last = points.size() - 1, low = from + 1, high = last + 1;
        for (int step = 2; low < last; step *= 2) {
            int to = Math.min(last, from + step);
            Piece p = fit(points, from, to, round);
            if (p == null) {
                high = to;
                break;
            }
            good = p;
            low = to;
        }
        while (high - low > 1) {
            int to = (low + high) / 2;
            Piece p = fit(points, from, to, round);
            if (p == null) {
                high = to;
            } else {
                good = p;
                low = to;
            }
        }
        return good;
    }

    private @Nullable Piece fit(List<Vec2> points, int from, int to, boolean round) {
        Vec2 a = points.get(from), b = points.get(to);
        if (!round) {
            for (int i = from + 1; i < to; i++) if (Thinning.distance(points.get(i), a, b) > toleranceMm) return null;
            return new Piece(from, to, null, false);
        }
        if (to - from < 2 || a.distance(b) < LEAST_CHORD_MM) return null;
        Vec2 m = points.get(halfway(points, from, to));
        Vec2 centre = centre(a, m, b);
        if (centre == null) return null;
        double r = centre.distance(a);
        if (r < LEAST_RADIUS_MM || r > MOST_RADIUS_MM) return null;
        boolean left = m.minus(a).cross(b.minus(a)) > 0;
        double turned = 0;
        for (int i = from; i < to; i++) {
            Vec2 p = points.get(i).minus(centre), q = points.get(i + 1).minus(centre);
            if (Math.abs(q.length() - r) > toleranceMm) return null;
            if (Math.abs(p.plus(q).length() / 2 - r) > toleranceMm) return null;
            double angle = Math.atan2(p.cross(q), p.dot(q));
            if (left ? angle <= 0 : angle >= 0) return null;
            turned += Math.abs(angle);
        }
        return turned > Math.PI ? null : new Piece(from, to, centre, left);
    }

    /** The place nearest to half the way. */
    private static int halfway(List<Vec2> points, int from, int to) {
        double length = 0;
        for (int i = from; i < to; i++) length += points.get(i).distance(points.get(i + 1));
        double way = 0;
        for (int i = from; i < to - 1; i++) {
            way += points.get(i).distance(points.get(i + 1));
            if (way >= length / 2) return i + 1;
        }
        return (from + to) / 2;
    }

    private static @Nullable Vec2 centre(Vec2 a, Vec2 m, Vec2 b) {
        Vec2 u = m.minus(a), v = b.minus(a);
        double twice = 2 * u.cross(v);
        if (Math.abs(twice) < 1e-12) return null;
        double uu = u.dot(u), vv = v.dot(v);
        return a.plus(new Vec2((vv * -u.y() + uu * v.y()) / twice, (vv * u.x() - uu * v.x()) / twice));
    }
}
