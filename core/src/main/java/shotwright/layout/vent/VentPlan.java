package shotwright.layout.vent;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import shotwright.geom.Vec2;
import shotwright.layout.Ground;
import shotwright.layout.Vent;
import shotwright.layout.cavity.FlowGrid;
import shotwright.layout.cavity.Rim;
import shotwright.layout.cavity.RimPoint;
import shotwright.layout.cavity.Spoke;
import shotwright.region.Region;

/**
 * Vents of one cavity: the first where the melt arrives last, the others spread over the rim away from the gate, none farther than 25 mm from
 * the next where the block allows it. Every vent ends at the block's edge.
 */
public final class VentPlan {
    /** Common practice: no stretch of rim longer than this without a vent. */
    public static final double SPACING_MM = 25;

    /** Said of a vent that was asked for. */
    public static final String LATE_WORDS = "the filling estimate sees the melt arrive here last";

    private static final double CLOSEST_MM = 8;
    private static final double ALIKE_MM = 1e-6;
    private static final double CHANNEL_DEEP_MM = 0.5;
    private static final int MOST = 8;
    private static final double ALONG_AN_EDGE = 0.7;

    private final Task task;
    private final Rim rim;
    private final double[] ways;
    private final FlowGrid grid;

    /**
     * What the vents have to do.
     *
     * @param widthMm width of each
     * @param depthMm depth of the land
     * @param landMm length of the land
     * @param blockWidthMm block along x
     * @param blockHeightMm block along y
     */
    public record Task(double widthMm, double depthMm, double landMm, double blockWidthMm, double blockHeightMm) {}

    private VentPlan(Task task, Rim rim, FlowGrid grid, double[] ways) {
        this.task = task;
        this.rim = rim;
        this.grid = grid;
        this.ways = ways;
    }

    /**
     * A place on the rim that wants a vent.
     *
     * @param point where, cavity frame
     * @param why the reason shown to people
     */
    public record Wanted(RimPoint point, String why) {}

    /**
     * Places on the rim in order of need: those asked for first, or else the one that fills last by the way of the melt; then the rest of
     * the rim.
     *
     * @param asked points that must be vented
     */
    public static List<Wanted> wanted(
            Rim rim, FlowGrid grid, double[] ways, @Nullable RimPoint gate, double gateWidthMm, List<RimPoint> asked) {
        return new VentPlan(new Task(1, 1, 1, 1, 1), rim, grid, ways).wanted(gate, gateWidthMm, asked);
    }

    private double wayTo(RimPoint p) {
        int c = grid.cellAt(p.at());
        return c < 0 || !Double.isFinite(ways[c]) ? 0 : ways[c];
    }

    private List<Wanted> wanted(@Nullable RimPoint gate, double gateWidthMm, List<RimPoint> asked) {
        double keepOff = Math.max(gateWidthMm / 2 + 5, 0.1 * rim.lengthMm());
        List<RimPoint> left = new ArrayList<>(rim.points().stream()
                .filter(RimPoint::reachable)
                .filter(p -> gate == null || rim.apartMm(p, gate) > keepOff)
                .toList());
        int n = Math.clamp((int) Math.ceil(rim.lengthMm() / SPACING_MM) - (gate == null ? 0 : 1), 1, MOST);
        List<Wanted> wanted = new ArrayList<>();
        List<RimPoint> chosen = new ArrayList<>();
        for (RimPoint p : asked) {
            if (chosen.size() == MOST || apart(p, chosen, null) < CLOSEST_MM) continue;
            chosen.add(p);
            wanted.add(new Wanted(p, LATE_WORDS));
        }
        if (chosen.isEmpty() && !left.isEmpty()) {
            RimPoint last = most(left, this::wayTo);
            chosen.add(last);
            left.remove(last);
            wanted.add(new Wanted(
                    last, String.format(Locale.ROOT, "the melt arrives here last, after %.0f mm", wayTo(last))));
        }
        while (chosen.size() < n && !left.isEmpty()) {
            RimPoint next = most(left, p -> apart(p, chosen, gate));
            if (apart(next, chosen, gate) < CLOSEST_MM) break;
            chosen.add(next);
            wanted.add(new Wanted(next, "so that no stretch of rim is longer than about 25 mm without a vent"));
            left.remove(next);
        }
        return wanted;
    }

    /** The point with the largest value; of points alike but for rounding the first on the way round. */
    private static RimPoint most(List<RimPoint> points, ToDoubleFunction<RimPoint> value) {
        RimPoint best = points.getFirst();
        for (RimPoint p : points) if (value.applyAsDouble(p) > value.applyAsDouble(best) + ALIKE_MM) best = p;
        return best;
    }

    private double apart(RimPoint p, List<RimPoint> chosen, @Nullable RimPoint gate) {
        double least = gate == null ? Double.POSITIVE_INFINITY : rim.apartMm(p, gate);
        for (RimPoint c : chosen) least = Math.min(least, rim.apartMm(p, c));
        return least;
    }

    /**
     * Places the wanted vents of one cavity; each that is placed takes its ground. A place that is blocked moves along the rim by up to a
     * third of the spacing.
     */
    public static List<Vent> place(
            Task task, Rim rim, FlowGrid grid, double[] ways, List<Wanted> wanted, Spoke spoke, Ground ground) {
        VentPlan plan = new VentPlan(task, rim, grid, ways);
        List<Vent> vents = new ArrayList<>();
        for (Wanted w : wanted) {
            Vent v = plan.near(w, spoke, ground);
            if (v != null) vents.add(v);
        }
        return vents;
    }

    private @Nullable Vent near(Wanted wish, Spoke spoke, Ground ground) {
        int n = rim.points().size(), reach = (int) Math.ceil(SPACING_MM / 3 / (rim.lengthMm() / n));
        for (int k = 0; k <= 2 * reach; k++) {
            int shift = (k % 2 == 0 ? -1 : 1) * ((k + 1) / 2);
            RimPoint p = rim.points().get(Math.floorMod(wish.point.index() + shift, n));
            if (!p.reachable()) continue;
            Vec2 out = spoke.direction(p.out());
            for (Vec2 dir : directions(out)) {
                Vent v = vent(p, spoke, dir, ground, wish.why);
                if (v != null) return v;
            }
        }
        return null;
    }

    /** Straight along an edge of the block when that is not too far off the wall's own direction, else square to the wall. */
    private static List<Vec2> directions(Vec2 out) {
        Vec2 axis = Math.abs(out.x()) > Math.abs(out.y())
                ? new Vec2(Math.signum(out.x()), 0)
                : new Vec2(0, Math.signum(out.y()));
        return axis.dot(out) > ALONG_AN_EDGE ? List.of(axis, out) : List.of(out, axis);
    }

    private @Nullable Vent vent(RimPoint p, Spoke spoke, Vec2 dir, Ground ground, String why) {
        Vec2 at = spoke.at(p.at());
        double toEdge = Ground.toEdgeMm(at, dir, task.blockWidthMm, task.blockHeightMm);
        if (!(toEdge > task.landMm + 1)) return null;
        Vec2 edge = at.plus(dir.times(toEdge));
        Region strip = Ground.strip(at.plus(dir.times(0.02)), edge, task.widthMm);
        Region beyond = Ground.strip(at.plus(dir.times(task.landMm + 0.5)), edge, task.widthMm);
        String own = "cavity " + spoke.number();
        if (!ground.free(strip, 2, own) || beyond.distance(spoke.outline()) < 0.3) return null;
        ground.take("vent", strip);
        return new Vent(
                at.atZ(0),
                dir,
                p.half(),
                task.widthMm,
                task.depthMm,
                task.landMm,
                CHANNEL_DEEP_MM,
                toEdge - task.landMm,
                why);
    }
}
