package shotwright.mold;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import shotwright.geom.Transform;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.layout.Block;
import shotwright.layout.Cavity;
import shotwright.layout.DowelPlace;
import shotwright.layout.FeedSegment;
import shotwright.layout.FeedSegment.Kind;
import shotwright.layout.Half;
import shotwright.layout.LayoutResult;
import shotwright.layout.PartingChoice;
import shotwright.layout.PinPlace;
import shotwright.layout.PryRelief;
import shotwright.layout.Release;
import shotwright.layout.ScrewPlace;
import shotwright.layout.Section;
import shotwright.layout.Section.Shape;
import shotwright.layout.Vent;
import shotwright.measure.LengthUnit;
import shotwright.measure.Tolerance;
import shotwright.mesh.MassProperties;
import shotwright.mesh.TriMesh;
import shotwright.mesh.pull.Columns;
import shotwright.mesh.pull.FacetSight;
import shotwright.mesh.pull.PartingHeights;
import shotwright.mesh.pull.PulledMesh;
import shotwright.mesh.pull.Sight;
import shotwright.mesh.pull.SightTolerance;
import shotwright.part.Part;
import shotwright.part.PulledPart;
import shotwright.progress.Progress;

/** A plain layout with one of everything round any part, set by rule of thumb for tests. */
public final class SampleLayout {
    private static final double SHRINK = 0.006;

    private SampleLayout() {}

    public static PulledPart part(String name, TriMesh mesh, Vec3 pull) {
        MassProperties mass = MassProperties.of(mesh);
        Tolerance tolerance = Tolerance.ofDiagonal(mass.box().diagonal());
        return PulledPart.of(
                new Part(name, name + ".stl", LengthUnit.MM, mesh, mass, tolerance), pull, Progress.SILENT);
    }

    /** The best plane of a part, pulled frame. */
    public static double plane(PulledPart part) {
        PulledMesh m = part.turned();
        FacetSight sight = m.sight();
        Sight[] s = sight.at(SightTolerance.LADDER.getFirst());
        return PartingHeights.bestPlane(Columns.of(m.mesh(), m.edges(), s, 0.1, m.shadow()), s, m.edges(), 0.1);
    }

    /** Cavities in a row along x, gates from +y. */
    public static LayoutResult of(PulledPart part, int cavities, double planeZ) {
        Vec3 lo = part.mesh().box().min(), hi = part.mesh().box().max();
        double w = hi.x() - lo.x(), h = hi.y() - lo.y(), pitch = w + 12;
        double wide = cavities * pitch + 40, high = h + 70;
        Vec2 top = topOfShadow(part);
        double k = 1 + SHRINK;
        double runnerY = (top.y() - (lo.y() + hi.y()) / 2) * k + 9;
        List<Cavity> places = new ArrayList<>();
        List<FeedSegment> feed = new ArrayList<>();
        List<Vent> vents = new ArrayList<>();
        Section runner = new Section(Shape.TRAPEZOID, 4, 3, 10), gate = new Section(Shape.RECTANGLE, 2, 0.8, 0);
        feed.add(new FeedSegment(
                1,
                0,
                0,
                Kind.SPRUE,
                new Vec3(0, high / 2, 0),
                new Vec3(0, runnerY, 0),
                null,
                Section.round(6),
                Section.round(4.5)));
        for (int i = 0; i < cavities; i++) {
            double x = (i - (cavities - 1) / 2.0) * pitch, shift = -(lo.x() + hi.x()) / 2 * k + x;
            Transform place = Transform.scale(k, k, k)
                    .then(Transform.translate(new Vec3(shift, -(lo.y() + hi.y()) / 2 * k, -planeZ * k)));
            places.add(new Cavity(i + 1, place));
            Vec3 wall = place.apply(top.atZ(planeZ));
            Vec3 end = new Vec3(wall.x(), wall.y() + 1, 0);
            int n = feed.size() + 1;
            feed.add(new FeedSegment(
                    n,
                    1,
                    0,
                    Kind.RUNNER,
                    new Vec3(0, runnerY, 0),
                    new Vec3(wall.x(), runnerY, 0),
                    Half.B,
                    runner,
                    runner));
            feed.add(new FeedSegment(
                    n + 1, n, i + 1, Kind.RUNNER, new Vec3(wall.x(), runnerY, 0), end, Half.B, runner, runner));
            feed.add(new FeedSegment(
                    n + 2, n + 1, i + 1, Kind.GATE, end, new Vec3(end.x(), wall.y() - 0.3, 0), Half.B, gate, gate));
            vents.add(new Vent(
                    new Vec3(
                            place.apply(bottomOfShadow(part).atZ(planeZ)).x(),
                            place.apply(bottomOfShadow(part).atZ(planeZ)).y(),
                            0),
                    new Vec2(0, -1),
                    Half.A,
                    4,
                    0.02,
                    1.5,
                    0.5,
                    high / 2 + place.apply(bottomOfShadow(part).atZ(planeZ)).y() - 1.5,
                    "end of flow"));
        }
        double tA = (hi.z() - planeZ) * k + 15, tB = (planeZ - lo.z()) * k + 15;
        return result(wide, high, tA, tB, planeZ, places, feed, vents);
    }

    private static LayoutResult result(
            double wide,
            double high,
            double tA,
            double tB,
            double planeZ,
            List<Cavity> places,
            List<FeedSegment> feed,
            List<Vent> vents) {
        List<DowelPlace> dowels = List.of(
                new DowelPlace("d6", new Vec2(wide / 2 - 8, high / 2 - 8), 6, Half.B, 10, 6, 8, 6.0, 6.01, "H7/m6"),
                new DowelPlace("d6", new Vec2(-wide / 2 + 8, -high / 2 + 8), 6, Half.B, 10, 6, 8, 6.0, 6.01, "H7/m6"));
        List<ScrewPlace> screws = List.of(
                new ScrewPlace("M5", new Vec2(-wide / 2 + 8, high / 2 - 8), Half.A, 5.5, 9.5, 5.5, 4.2, 10),
                new ScrewPlace("M5", new Vec2(wide / 2 - 8, -high / 2 + 8), Half.A, 5.5, 9.5, 5.5, 4.2, 10));
        List<PryRelief> pry = List.of(new PryRelief(new Vec2(-wide / 2, -7), new Vec2(-wide / 2 + 5, 7), Half.B, 2));
        Release release = new Release(Half.B, 10, 20, 20, Release.By.HAND, "by hand", List.of());
        return new LayoutResult(
                SHRINK,
                SHRINK,
                SHRINK,
                new PartingChoice(PartingChoice.Kind.PLANE, planeZ, planeZ, planeZ, "test", List.of()),
                places,
                LayoutResult.NozzleEntry.PARTING_EDGE,
                new Vec3(0, high / 2, 0),
                feed,
                List.of(),
                List.of(),
                vents,
                dowels,
                screws,
                pry,
                release,
                List.of(),
                new Block(wide, high, tA, tB, "a", "b", 2),
                List.of(),
                List.of());
    }

    private static Vec2 topOfShadow(PulledPart part) {
        return extreme(part, 1);
    }

    private static Vec2 bottomOfShadow(PulledPart part) {
        return extreme(part, -1);
    }

    /** Middle of the outermost points of the shadow along y. */
    private static Vec2 extreme(PulledPart part, int sign) {
        List<Vec2> all =
                part.shadow().exteriors().stream().flatMap(List::stream).toList();
        double y = all.stream().mapToDouble(p -> sign * p.y()).max().orElseThrow();
        double[] x = all.stream()
                .filter(p -> sign * p.y() > y - 1e-9)
                .mapToDouble(Vec2::x)
                .toArray();
        return new Vec2(
                (Arrays.stream(x).min().orElseThrow() + Arrays.stream(x).max().orElseThrow()) / 2, sign * y);
    }

    static LayoutResult withPin(LayoutResult l, PinPlace pin) {
        Release r = l.release();
        Release with = new Release(
                r.keepsPart(), r.gripNA(), r.gripNB(), r.ejectionForceN(), Release.By.PINS, r.words(), List.of(pin));
        return new LayoutResult(
                l.shrinkX(),
                l.shrinkY(),
                l.shrinkZ(),
                l.parting(),
                l.cavities(),
                l.entry(),
                l.nozzleMm(),
                l.feed(),
                l.gates(),
                l.candidates(),
                l.vents(),
                l.dowels(),
                l.screws(),
                l.pry(),
                with,
                l.strength(),
                l.block(),
                l.decisions(),
                l.findings());
    }

    static LayoutResult withBlock(LayoutResult l, Block block) {
        return new LayoutResult(
                l.shrinkX(),
                l.shrinkY(),
                l.shrinkZ(),
                l.parting(),
                l.cavities(),
                l.entry(),
                l.nozzleMm(),
                l.feed(),
                l.gates(),
                l.candidates(),
                l.vents(),
                l.dowels(),
                l.screws(),
                l.pry(),
                l.release(),
                l.strength(),
                block,
                l.decisions(),
                l.findings());
    }
}
