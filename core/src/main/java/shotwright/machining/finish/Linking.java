package shotwright.machining.finish;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.contact.ExactPath;
import shotwright.machining.path.Line;
import shotwright.machining.path.Move;
import shotwright.machining.path.Rapid;

/**
 * Joins finishing paths: the way to the next one follows the surface where it is short and does not climb much, refined and checked like any
 * other path; else the cutter lifts. Not safe for several threads at once.
 */
public final class Linking {
    /** Climb from which lifting is better, in diameters. */
    private static final double MOST_CLIMB = 0.5;

    private final ExactPath exact;
    private final double diaMm;
    private final double longestMm;
    private final double retractZMm;
    private final double cutMmPerMin;
    private final double enterMmPerMin;
    private int downCount;
    private int upCount;

    /**
     * @param exact the cutter over the surface
     * @param diaMm its diameter
     * @param longestMm longest way that stays down
     * @param retractZMm height clear of everything
     * @param cutMmPerMin feed along the paths
     * @param enterMmPerMin feed down onto the surface
     */
    public Linking(
            ExactPath exact,
            double diaMm,
            double longestMm,
            double retractZMm,
            double cutMmPerMin,
            double enterMmPerMin) {
        this.exact = exact;
        this.diaMm = diaMm;
        this.longestMm = longestMm;
        this.retractZMm = retractZMm;
        this.cutMmPerMin = cutMmPerMin;
        this.enterMmPerMin = enterMmPerMin;
    }

    /** One chain of moves along all paths in their order, beginning and ending at the retract height. */
    public List<Move> chain(List<List<Vec3>> paths) {
        List<Move> moves = new ArrayList<>();
        Vec3 at = null;
        for (List<Vec3> path : paths) {
            if (path.isEmpty()) continue;
            at = at == null ? down(moves, path.getFirst()) : across(moves, at, path.getFirst());
            for (Vec3 p : path) at = line(moves, at, p, cutMmPerMin);
        }
        if (at != null && at.z() < retractZMm) moves.add(new Rapid(at, new Vec3(at.x(), at.y(), retractZMm)));
        return moves;
    }

    public int downCount() {
        return downCount;
    }

    public int upCount() {
        return upCount;
    }

    private Vec3 across(List<Move> moves, Vec3 from, Vec3 to) {
        List<Vec3> way = from.xy().distance(to.xy()) <= longestMm ? onSurface(from, to) : null;
        if (way == null) {
            upCount++;
            if (from.z() < retractZMm) moves.add(new Rapid(from, new Vec3(from.x(), from.y(), retractZMm)));
            Vec3 over = new Vec3(to.x(), to.y(), retractZMm);
            moves.add(new Rapid(new Vec3(from.x(), from.y(), retractZMm), over));
            return down(moves, to);
        }
        downCount++;
        Vec3 at = from;
        for (Vec3 p : way) at = line(moves, at, p, cutMmPerMin);
        return at;
    }

    private @Nullable List<Vec3> onSurface(Vec3 from, Vec3 to) {
        if (from.xy().distance(to.xy()) < 1e-9) return from.z() <= to.z() ? List.of(to) : List.of();
        List<Vec2> straight = List.of(from.xy(), to.xy());
        double limit = Math.max(from.z(), to.z()) + MOST_CLIMB * diaMm;
        List<Vec3> way = exact.thinned(straight);
        return way.stream().allMatch(p -> Double.isFinite(p.z()) && p.z() <= limit) ? way : null;
    }

    private Vec3 down(List<Move> moves, Vec3 to) {
        moves.add(new Line(new Vec3(to.x(), to.y(), retractZMm), to, enterMmPerMin));
        return to;
    }

    private static Vec3 line(List<Move> moves, Vec3 from, Vec3 to, double feedMmPerMin) {
        if (from.distance(to) < 1e-9) return from;
        moves.add(new Line(from, to, feedMmPerMin));
        return to;
    }
}
