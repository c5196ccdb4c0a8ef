package shotwright.layout.gate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.layout.Gate;
import shotwright.layout.Ground;
import shotwright.layout.Half;
import shotwright.layout.cavity.CavityShape;
import shotwright.layout.cavity.FlowGrid;
import shotwright.layout.cavity.Rim;
import shotwright.layout.cavity.RimPoint;
import shotwright.progress.Progress;
import shotwright.region.Region;

/**
 * Scores gate places round the rim, and one direct sprue gate on top. A place earns by the wall it enters (thick is better, 0.28), by the
 * longest way the melt goes from it (short is better, 0.28), by where the air ends up (on the rim, where a vent is easy, 0.18), by a straight
 * edge that trims in one cut (0.13), by looking away from the part's middle, so that runner and load stand in line (0.08), and by lying in
 * half B, away from the usual show side (0.05). Weights: common practice.
 */
public final class GatePlaces {
    private static final int SCANNED = 48;
    private static final int KEPT = 8;
    private static final double NEAR_RIM_MM = 2.5;
    private static final double LAND_MM = 0.8, CORRIDOR_MM = 9, MIN_RUNNER_MM = 3, MAX_RUNNER_MM = 6;

    private final CavityShape shape;
    private final Rim rim;
    private final FlowGrid grid;
    private final Predicate<Vec3> keepClear;
    private final Region outline;
    private double largestWall;
    private double shortestWay = Double.POSITIVE_INFINITY;

    private record Measured(RimPoint point, double longestMm, double lastOnRimMm, boolean walled) {}

    private GatePlaces(CavityShape shape, Rim rim, FlowGrid grid, Predicate<Vec3> keepClear) {
        this.shape = shape;
        this.rim = rim;
        this.grid = grid;
        this.keepClear = keepClear;
        outline = shape.shadow().simplify(0.02);
    }

    /**
     * The places, best first; kept-clear ones stand last.
     *
     * @param keepClear true for points of the cavity frame that the customer keeps clear
     */
    public static List<GatePlace> rank(
            CavityShape shape, Rim rim, FlowGrid grid, Predicate<Vec3> keepClear, Progress progress) {
        return new GatePlaces(shape, rim, grid, keepClear).rank(progress);
    }

    /** The place on the rim nearest to a point, measured like the others; a rim without any reachable place is refused. */
    public static GatePlace nearest(CavityShape shape, Rim rim, FlowGrid grid, Predicate<Vec3> keepClear, Vec2 wanted) {
        RimPoint p = rim.points().stream()
                .filter(RimPoint::reachable)
                .min(Comparator.comparingDouble(q -> q.at().distance(wanted)))
                .orElseThrow(() -> new IllegalArgumentException("rim: has no wall next to the parting plane"));
        GatePlaces places = new GatePlaces(shape, rim, grid, keepClear);
        Measured m = places.measure(p);
        places.note(m);
        return places.place(m);
    }

    private List<GatePlace> rank(Progress progress) {
        List<RimPoint> reachable =
                rim.points().stream().filter(RimPoint::reachable).toList();
        int stride = Math.max(1, (reachable.size() + SCANNED - 1) / SCANNED);
        List<Measured> all = new ArrayList<>();
        for (int i = 0; i < reachable.size(); i += stride) {
            progress.at("trying gate places", i / (double) reachable.size());
            Measured m = measure(reachable.get(i));
            if (m.longestMm > 0) all.add(m);
        }
        all.forEach(this::note);
        List<GatePlace> places = new ArrayList<>(all.stream().map(this::place).toList());
        places.sort(order());
        List<GatePlace> kept = new ArrayList<>();
        for (GatePlace p : places) {
            if (kept.size() == KEPT) break;
            if (kept.stream().allMatch(k -> rim.apartMm(rimOf(k), rimOf(p)) > rim.lengthMm() / 10)) kept.add(p);
        }
        GatePlace direct = direct();
        if (direct.flowLengthMm() > 0) kept.add(direct);
        kept.sort(order());
        return List.copyOf(kept);
    }

    private static RimPoint rimOf(GatePlace p) {
        RimPoint r = p.rim();
        if (r == null) throw new IllegalArgumentException("place: does not lie on the rim");
        return r;
    }

    private static Comparator<GatePlace> order() {
        return Comparator.comparing(GatePlace::keepClear)
                .thenComparing(Comparator.comparingDouble(GatePlace::score).reversed());
    }

    private void note(Measured m) {
        largestWall = Math.max(largestWall, m.point.wallMm());
        shortestWay = Math.min(shortestWay, m.longestMm);
    }

    private Measured measure(RimPoint p) {
        double[] ways = grid.waysFrom(p.at());
        int last = FlowGrid.farthest(ways);
        Vec2 end = grid.centre(last);
        RimPoint nearest = rim.points().stream()
                .min(Comparator.comparingDouble(q -> q.at().distance(end)))
                .orElse(p);
        boolean onRim = nearest.at().distance(end) < NEAR_RIM_MM + grid.cellMm();
        double runner = 1.25 * Math.clamp(p.wallMm() + 1.5, MIN_RUNNER_MM, MAX_RUNNER_MM);
        Vec2 from = p.at().plus(p.out().times(LAND_MM)),
                to = p.at().plus(p.out().times(CORRIDOR_MM));
        boolean walled = Ground.strip(from, to, runner).distance(outline) <= 0;
        return new Measured(p, FlowGrid.longestMm(ways), onRim ? rim.apartMm(p, nearest) : 0, walled);
    }

    private GatePlace place(Measured m) {
        RimPoint p = m.point;
        double straight = Math.max(0, 1 - Math.abs(p.bulgeMm()) / 1.5);
        double air = m.lastOnRimMm > 0 ? 1 : 0.3;
        double centred = Math.max(
                0, 1 - Math.abs(p.at().cross(p.out())) / (0.25 * shape.box().diagonal()));
        double score = 0.28 * p.wallMm() / largestWall
                + 0.28 * shortestWay / m.longestMm
                + 0.18 * air
                + 0.13 * straight
                + 0.08 * centred
                + 0.05 * (p.half() == Half.B ? 1 : 0);
        boolean clear = keepClear.test(p.at().atZ(0));
        if (clear) score *= 0.2;
        if (m.walled) score *= 0.3;
        String why = String.format(
                Locale.ROOT,
                "wall %.1f mm here; melt goes %.0f mm; air ends up %s; %s%s%s",
                p.wallMm(),
                m.longestMm,
                m.lastOnRimMm > 0 ? "at the rim, where a vent is easy" : "inside the part, away from the rim",
                straight > 0.8
                        ? "straight edge, trims in one cut"
                        : p.bulgeMm() > 0 ? "curved edge, trim with a knife" : "hollow edge, hard to trim",
                m.walled ? "; neighbouring walls stand in the runner's way" : "",
                clear ? "; lies in an area to keep clear" : "");
        return new GatePlace(
                Gate.Kind.EDGE,
                p.at(),
                0,
                p.out(),
                p.half(),
                p,
                p.wallMm(),
                m.longestMm,
                m.lastOnRimMm,
                clear,
                Math.clamp(score, 0, 1),
                why);
    }

    /** A sprue straight onto the face that looks up, at the filled cell nearest to the middle of the shadow. */
    private GatePlace direct() {
        Vec2 middle = shape.shadow().centroid();
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int c = 0; c < grid.cells(); c++) {
            double d = grid.centre(c).distance(middle);
            if (grid.thicknessMm(c) > 0 && d < least && clearOfHoles(grid.centre(c))) {
                least = d;
                best = c;
            }
        }
        Vec2 at = best < 0 ? middle : grid.centre(best);
        double way = best < 0 ? 0 : FlowGrid.longestMm(grid.waysFrom(at));
        double top = topMm(at);
        double wall = best < 0 ? 0 : Math.min(grid.thicknessMm(best), Math.max(largestWall, 0.1));
        boolean clear = keepClear.test(at.atZ(top));
        double score = best < 0 ? 0 : 0.45 * Math.min(1, shortestWay / Math.max(way, 1e-9)) * (clear ? 0.2 : 1);
        String why = String.format(
                Locale.ROOT,
                "sprue straight onto the part: melt goes %.0f mm and the load sits under the nozzle, but a stub must be sawn and dressed off the"
                        + " face of half A%s",
                way,
                clear ? ", in an area to keep clear" : "");
        return new GatePlace(
                Gate.Kind.DIRECT, at, top, Vec2.ZERO, Half.A, null, wall, way, 0, clear, Math.clamp(score, 0, 1), why);
    }

    private boolean clearOfHoles(Vec2 p) {
        return shape.shadow().contains(p) && shape.shadow().borderDistance(p) > 2;
    }

    /** Height of the face of half A above a point; the parting plane where nothing stands. */
    private double topMm(Vec2 p) {
        double high = shape.box().max().z() + 1;
        var hit = shape.tree().firstHit(p.atZ(high), new Vec3(0, 0, -1));
        return hit == null ? 0 : high - hit.t();
    }
}
