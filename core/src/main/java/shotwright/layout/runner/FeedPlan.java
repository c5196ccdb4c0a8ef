package shotwright.layout.runner;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.layout.FeedSegment;
import shotwright.layout.FeedSegment.Kind;
import shotwright.layout.Ground;
import shotwright.layout.Half;
import shotwright.layout.LayoutResult.NozzleEntry;
import shotwright.layout.Section;
import shotwright.layout.cavity.Spoke;
import shotwright.region.Region;

/** Lays the feed out piece by piece: each piece begins where its parent ends; a gate ends inside the cavity's wall. */
public final class FeedPlan {
    private final Sizes sizes;
    private final List<FeedSegment> pieces = new ArrayList<>();

    /**
     * Sizes of the pieces.
     *
     * @param mouthMm diameter where the nozzle seats
     * @param sprueEndMm diameter of the sprue at its end
     * @param runner section of a runner
     * @param runnerHalf half it lies in; null when round in both
     * @param runnerMm diameter it stands for
     * @param gateHalf half of the gates
     * @param gateWidthMm width of a gate
     * @param gateDepthMm depth of a gate
     * @param landMm length of a gate
     * @param overMm how far a gate reaches inside the wall
     * @param fanMm width of a fan gate where it leaves the runner; equal to {@code gateWidthMm} for an edge gate
     * @param puller true to hold the sprue by a parallel well below it
     */
    public record Sizes(
            double mouthMm,
            double sprueEndMm,
            Section runner,
            @Nullable Half runnerHalf,
            double runnerMm,
            Half gateHalf,
            double gateWidthMm,
            double gateDepthMm,
            double landMm,
            double overMm,
            double fanMm,
            boolean puller) {}

    private FeedPlan(Sizes sizes) {
        this.sizes = sizes;
    }

    /**
     * A feed for cavities round a hub.
     *
     * @param nozzle where the nozzle seats, mold frame
     * @param hub where the runners part
     */
    public static List<FeedSegment> of(NozzleEntry entry, Vec3 nozzle, Vec2 hub, List<Spoke> spokes, Sizes sizes) {
        FeedPlan plan = new FeedPlan(sizes);
        Section mouth = Section.round(sizes.mouthMm), end = Section.round(sizes.sprueEndMm);
        if (entry == NozzleEntry.PARTING_EDGE) {
            plan.add(0, spokes.size() == 1 ? 1 : 0, Kind.SPRUE, nozzle, hub.atZ(0), null, mouth, end);
        } else {
            plan.add(0, spokes.size() == 1 ? 1 : 0, Kind.SPRUE, nozzle, hub.atZ(0), Half.A, mouth, end);
            double deep = Math.max(1.5 * sizes.runnerMm, 4);
            plan.add(1, 0, sizes.puller ? Kind.PULLER : Kind.COLD_SLUG, hub.atZ(0), hub.atZ(-deep), Half.B, end, end);
        }
        for (Spoke s : spokes) plan.branch(hub, s);
        if (entry == NozzleEntry.PARTING_EDGE) plan.slug(hub, spokes);
        return List.copyOf(plan.pieces);
    }

    /** A sprue that enters the part itself, through half A. */
    public static List<FeedSegment> direct(Vec3 nozzle, double topMm, Sizes sizes) {
        FeedPlan plan = new FeedPlan(sizes);
        Section end = Section.round(sizes.sprueEndMm);
        Vec3 neck = new Vec3(nozzle.x(), nozzle.y(), topMm + sizes.landMm);
        plan.add(0, 1, Kind.SPRUE, nozzle, neck, Half.A, Section.round(sizes.mouthMm), end);
        plan.add(1, 1, Kind.GATE, neck, new Vec3(nozzle.x(), nozzle.y(), topMm - sizes.overMm), Half.A, end, end);
        return List.copyOf(plan.pieces);
    }

    private void branch(Vec2 hub, Spoke s) {
        Vec2 start = s.gateAt().minus(s.flow().times(sizes.landMm));
        Vec2 inside = s.gateAt().plus(s.flow().times(sizes.overMm));
        add(1, s.number(), Kind.RUNNER, hub.atZ(0), start.atZ(0), sizes.runnerHalf, sizes.runner, sizes.runner);
        Section wide = new Section(Section.Shape.RECTANGLE, sizes.fanMm, sizes.gateDepthMm, 0);
        Section gate = new Section(Section.Shape.RECTANGLE, sizes.gateWidthMm, sizes.gateDepthMm, 0);
        add(pieces.size(), s.number(), Kind.GATE, start.atZ(0), inside.atZ(0), sizes.gateHalf, wide, gate);
    }

    /** A dead end straight on from a lying sprue, where no runner goes that way. */
    private void slug(Vec2 hub, List<Spoke> spokes) {
        for (Spoke s : spokes) if (s.gateAt().minus(hub).unit().y() < -0.5) return;
        Vec2 end = hub.minus(new Vec2(0, 1.5 * sizes.runnerMm));
        add(1, 0, Kind.COLD_SLUG, hub.atZ(0), end.atZ(0), sizes.runnerHalf, sizes.runner, sizes.runner);
    }

    private void add(int parent, int cavity, Kind kind, Vec3 from, Vec3 to, @Nullable Half half, Section a, Section b) {
        pieces.add(new FeedSegment(pieces.size() + 1, parent, cavity, kind, from, to, half, a, b));
    }

    /** The room a piece takes on the parting plane. */
    public static Region footprint(FeedSegment piece) {
        double wide = Math.max(piece.from().widthMm(), piece.to().widthMm());
        Vec2 a = piece.fromMm().xy(), b = piece.toMm().xy();
        Region start = Region.disc(a, wide / 2, 32);
        if (a.distance(b) < 1e-9) return start;
        Region strip = Ground.strip(a, b, wide);
        return switch (piece.kind()) {
            case GATE, SPRUE -> strip;
            case RUNNER -> start.union(strip);
            case COLD_SLUG, PULLER -> start.union(strip).union(Region.disc(b, wide / 2, 32));
        };
    }
}
