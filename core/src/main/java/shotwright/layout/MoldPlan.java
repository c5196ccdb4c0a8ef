package shotwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.layout.LayoutResult.NozzleEntry;
import shotwright.layout.align.DowelPlan;
import shotwright.layout.cavity.Arrangement;
import shotwright.layout.cavity.Rim;
import shotwright.layout.cavity.RimPoint;
import shotwright.layout.cavity.Spoke;
import shotwright.layout.release.PryPlan;
import shotwright.layout.runner.FeedPlan;
import shotwright.layout.runner.RunnerChoice;
import shotwright.layout.runner.RunnerSize;
import shotwright.layout.runner.SprueTaper;
import shotwright.layout.strength.MetalPlan;
import shotwright.layout.vent.VentFlow;
import shotwright.layout.vent.VentPlan;
import shotwright.region.Region;

/**
 * Puts everything in its place, in the order in which things claim room on the parting plane: cavities, feed, block and dowels, screws, vents,
 * pockets to pry. Filled in by {@link #of} once and read afterwards.
 */
final class MoldPlan {
    /** Metal between a cavity and a runner that is not its own, or the sprue. */
    static final double BESIDE_FEED_MM = 5;

    private static final double SPRUE_LENGTH_MM = 10;
    private static final double ROUND_HUB_MM = 12;
    private static final double GROW_MM = 4;
    private static final double LARGEST_TAPER_DEG = 5;
    private static final double MOST_SPARE_MM = 15;

    final Basis basis;
    final Entrance entrance;
    final LayoutInput in;
    final MetalPlan metal;
    final double edgeMm;
    final double floorMm;
    final double riseA;
    final double riseB;
    final Ground ground = new Ground();

    double thicknessA;
    double thicknessB;
    ShopRack.@Nullable Bar barA;
    ShopRack.@Nullable Bar barB;
    double widthMm;
    double heightMm;
    double mouthMm;
    double sprueEndMm;
    double runnerLengthMm;
    double gapMm;
    boolean axisTooLow;
    double packingMm;
    RunnerChoice runner;
    List<Spoke> spokes = List.of();
    Vec2 hub = Vec2.ZERO;
    Vec3 nozzle = Vec3.ZERO;
    List<FeedSegment> feed = List.of();
    ShopRack.@Nullable Pin pin;
    List<DowelPlace> dowels = List.of();
    List<ScrewPlace> screws = List.of();
    List<Vent> vents = new ArrayList<>();
    List<PryRelief> pry = List.of();
    int ventsWanted;
    boolean ventsOnStep;

    private MoldPlan(Basis basis, Entrance entrance) {
        this.basis = basis;
        this.entrance = entrance;
        in = basis.in();
        metal = new MetalPlan(basis.shape(), basis.designMpa(), basis.designBar());
        edgeMm = metal.edgeMm();
        floorMm = metal.floorMm();
        riseA = basis.steps().riseMm(Half.A);
        riseB = basis.steps().riseMm(Half.B);
        runner = runner(20);
    }

    static MoldPlan of(Basis basis, Entrance entrance) {
        MoldPlan p = new MoldPlan(basis, entrance);
        p.thicknesses(0);
        p.sprue();
        p.arrange();
        p.dowelsAndBlock();
        p.thicknesses(Math.min(p.widthMm, p.heightMm));
        p.sprue();
        p.layFeed();
        p.pinDowels();
        p.placeScrews();
        p.placeVents();
        p.pry = PryPlan.of(p.widthMm, p.heightMm, p.ground);
        return p;
    }

    boolean lying() {
        return in.press().entry() == NozzleEntry.PARTING_EDGE;
    }

    boolean direct() {
        return entrance.kind() == Gate.Kind.DIRECT;
    }

    private RunnerChoice runner(double lengthMm) {
        boolean round = lying() && basis.parting().kind() == PartingChoice.Kind.PLANE;
        RunnerChoice c = RunnerChoice.of(
                new RunnerChoice.Task(
                        basis.partG(),
                        Math.max(lengthMm, 5),
                        basis.flowMm3PerS(),
                        0.1 * in.press().pressureMpa(),
                        in.wallMm()),
                in.melt(),
                in.shop(),
                round,
                entrance.place().half());
        Double wish = in.wishes().runnerMm();
        if (wish == null) return c;
        Section s = c.section().shape() == Section.Shape.ROUND
                ? Section.round(wish)
                : c.section().shape() == Section.Shape.HALF_ROUND
                        ? new Section(Section.Shape.HALF_ROUND, 1.3 * wish, 0.65 * wish, 0)
                        : new Section(
                                Section.Shape.TRAPEZOID,
                                1.25 * wish,
                                wish,
                                c.section().wallDraftDeg());
        return new RunnerChoice(wish, s, c.half(), "set by hand; the layout would take " + c.reason());
    }

    /**
     * Thickness of both halves from the bars on the rack. A nozzle that lies at a fixed height sets the lower half; where that would waste more
     * than 15 mm of metal, or no bar is so thick, a packing plate goes below it.
     */
    private void thicknesses(double narrowSideMm) {
        double needA = basis.shape().depthAMm() + floorMm, needB = basis.shape().depthBMm() + floorMm;
        double short0 = in.press().smallestThicknessMm() - needA - needB;
        if (short0 > 0) needA += short0 / 2;
        if (short0 > 0) needB += short0 / 2;
        String wish = in.wishes().stock();
        packingMm = 0;
        barB = MetalPlan.barFor(in.shop().bars(), needB + riseB, narrowSideMm, wish);
        thicknessB = finished(barB, needB, riseB);
        if (lying() && in.press().axisHeightMm().isPresent()) {
            double axis = in.press().axisHeightMm().getAsDouble();
            double least = basis.shape().depthBMm() + floorMm;
            axisTooLow = least > axis + 1e-6;
            ShopRack.Bar full = MetalPlan.barFor(in.shop().bars(), axis + riseB, narrowSideMm, wish);
            if (full != null && axis - least <= MOST_SPARE_MM) {
                barB = full;
                thicknessB = axis;
            } else {
                thicknessB = Math.min(thicknessB, axis);
                packingMm = axis - thicknessB;
            }
        }
        needA = Math.max(
                basis.shape().depthAMm() + floorMm, Math.max(needA, in.press().smallestThicknessMm() - thicknessB));
        barA = MetalPlan.barFor(in.shop().bars(), needA + riseA, narrowSideMm, wish);
        thicknessA = finished(barA, needA, riseA);
    }

    /** What a bar leaves below the parting face once both sides are faced and the cores stand; rounded down to a tenth. */
    private static double finished(ShopRack.@Nullable Bar bar, double needMm, double riseMm) {
        if (bar == null) return Math.ceil(needMm);
        double all = bar.thicknessMm() - 2 * bar.faceMm() - riseMm;
        return Math.max(needMm, Math.floor(10 * all + 1e-6) / 10);
    }

    /** Mouth from the nozzle's bore; end from the runner and the taper. */
    private void sprue() {
        mouthMm = Math.ceil(10 * (in.press().boreMm() + 0.5) - 1e-9) / 10;
        int n = in.cavities();
        double trunk = n == 1 ? runner.diameterMm() : runner.diameterMm() * Math.cbrt(n);
        if (lying()) {
            double need = Math.max(trunk, mouthMm);
            sprueEndMm =
                    n == 1 ? runner.diameterMm() : in.shop().ballFromMm(need).orElse(Math.ceil(2 * need) / 2);
            return;
        }
        double length =
                direct() ? thicknessA - entrance.place().zMm() - entrance.size().landMm() : thicknessA;
        double want = direct() ? entrance.size().widthMm() : Math.max(runner.diameterMm(), in.wallMm() + 1);
        double least = mouthMm + SprueTaper.growthMm(length, SprueTaper.STANDARD_INCLUDED_DEG);
        double most = mouthMm + SprueTaper.growthMm(length, LARGEST_TAPER_DEG);
        if (want > most) mouthMm += Math.ceil(10 * (want - most)) / 10;
        sprueEndMm = Math.ceil(10 * Math.max(least, want) - 1e-9) / 10;
    }

    private void arrange() {
        double land = entrance.size().landMm();
        double shortest = land
                + (lying()
                        ? Math.max(1.5 * runner.diameterMm(), 5)
                        : Math.max(1.5 * runner.diameterMm(), sprueEndMm / 2 + BESIDE_FEED_MM));
        double between = in.cavities() == 1 ? MetalPlan.BETWEEN_MM : metal.betweenMm();
        Arrangement a = Arrangement.of(
                basis.shape(),
                entrance.place(),
                in.press().entry(),
                new Arrangement.Rules(in.cavities(), shortest, between, BESIDE_FEED_MM + sprueEndMm / 2));
        spokes = a.spokes();
        gapMm = a.gapMm();
        runnerLengthMm = Math.max(0, a.runnerMm() - land);
        runner = runner(runnerLengthMm);
    }

    /** The block round everything, grown until two dowels find room on a far diagonal. */
    private void dowelsAndBlock() {
        Vec2 lo = new Vec2(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY), hi = lo.times(-1);
        for (Spoke s : spokes) {
            lo = least(lo, s.outline().min());
            hi = most(hi, s.outline().max());
        }
        lo = lo.minus(new Vec2(edgeMm, edgeMm));
        hi = hi.plus(new Vec2(edgeMm, edgeMm));
        double hubRoom = direct() ? 0 : ROUND_HUB_MM;
        lo = least(lo, new Vec2(-hubRoom, -hubRoom));
        hi = most(hi, new Vec2(hubRoom, lying() ? Math.max(SPRUE_LENGTH_MM, 2 * sprueEndMm) : hubRoom));
        double w = Math.max(Math.ceil(hi.x() - lo.x() - 1e-9), in.press().smallestWidthMm());
        double h = Math.max(Math.ceil(hi.y() - lo.y() - 1e-9), in.press().smallestHeightMm());
        Vec2 centre = lo.plus(hi).times(0.5);
        spokes = spokes.stream().map(s -> s.moved(centre.times(-1))).toList();
        hub = centre.times(-1);
        for (int step = 0; step < 40; step++) {
            widthMm = w + GROW_MM * ((step + (w <= h ? 1 : 0)) / 2);
            heightMm = h + GROW_MM * ((step + (w <= h ? 0 : 1)) / 2);
            if (tryDowels()) return;
        }
        widthMm = w;
        heightMm = h;
    }

    private boolean tryDowels() {
        Optional<ShopRack.Pin> p = choosePin();
        Ground bare = new Ground();
        for (Spoke s : spokes) bare.take("cavity", s.outline());
        for (FeedSegment f : feedAt(heightMm)) bare.take("feed", FeedPlan.footprint(f));
        double d = p.map(ShopRack.Pin::diameterMm).orElse(6.0);
        return DowelPlan.places(widthMm, heightMm, d, bare).isPresent();
    }

    private Optional<ShopRack.Pin> choosePin() {
        String wish = in.wishes().dowel();
        List<ShopRack.Pin> wished =
                in.shop().pins().stream().filter(p -> p.id().equals(wish)).toList();
        return DowelPlan.pin(
                wished.isEmpty() ? in.shop().pins() : wished,
                Math.max(widthMm, heightMm),
                thicknessB,
                thicknessA,
                in.press().guided());
    }

    private static Vec2 least(Vec2 a, Vec2 b) {
        return new Vec2(Math.min(a.x(), b.x()), Math.min(a.y(), b.y()));
    }

    private static Vec2 most(Vec2 a, Vec2 b) {
        return new Vec2(Math.max(a.x(), b.x()), Math.max(a.y(), b.y()));
    }

    private List<FeedSegment> feedAt(double height) {
        nozzle = lying() ? new Vec3(hub.x(), height / 2, 0) : hub.atZ(thicknessA);
        FeedPlan.Sizes sizes = new FeedPlan.Sizes(
                mouthMm,
                sprueEndMm,
                runner.section(),
                runner.half(),
                runner.diameterMm(),
                entrance.place().half(),
                entrance.size().widthMm(),
                entrance.size().depthMm(),
                entrance.size().landMm(),
                entrance.overMm(),
                entrance.fanMm(),
                in.press().knockOutN() <= 0);
        if (direct()) return FeedPlan.direct(nozzle, entrance.place().zMm(), sizes);
        return FeedPlan.of(in.press().entry(), nozzle, hub, spokes, sizes);
    }

    private void layFeed() {
        feed = feedAt(heightMm);
        for (Spoke s : spokes) ground.take("cavity " + s.number(), s.outline());
        for (FeedSegment f : feed) ground.take("feed", FeedPlan.footprint(f));
    }

    private void pinDowels() {
        pin = choosePin().orElse(null);
        if (pin == null) return;
        double d = pin.diameterMm();
        ShopRack.Pin held = pin;
        DowelPlan.places(widthMm, heightMm, d, ground).ifPresent(places -> {
            dowels = DowelPlan.of(held, places, in.press().guided());
            for (Vec2 p : places) ground.take("dowel", DowelPlan.disc(p, d));
        });
    }

    private void placeScrews() {
        if (!in.press().boltsHalves()) return;
        screws = ScrewPlan.of(this);
        for (ScrewPlace s : screws) ground.take("screw", Region.disc(s.atMm(), s.counterboreMm() / 2, 48));
    }

    private void placeVents() {
        double perimeter = basis.rim().lengthMm();
        VentPlan.Task task = new VentPlan.Task(
                perimeter < 60 ? 3 : 5, ventDepthMm(), in.melt().crystalline() ? 1 : 1.5, widthMm, heightMm);
        RimPoint gate = entrance.place().rim();
        double[] ways = basis.grid().waysFrom(entrance.place().at());
        placeVents(task, basis.rim(), gate, ways);
        if (vents.isEmpty()) {
            placeVents(task, basis.rim().anyway(), gate, ways);
            ventsOnStep = !vents.isEmpty();
        }
        FeedSegment slug = feed.stream()
                .filter(f -> f.kind() == FeedSegment.Kind.COLD_SLUG && lying())
                .findFirst()
                .orElse(null);
        if (slug != null) ventSlug(slug);
    }

    private void placeVents(VentPlan.Task task, Rim rim, @Nullable RimPoint gate, double[] ways) {
        List<VentPlan.Wanted> wanted =
                VentPlan.wanted(rim, basis.grid(), ways, gate, entrance.size().widthMm(), askedVents(rim));
        ventsWanted = wanted.size() * spokes.size();
        for (Spoke s : spokes) vents.addAll(VentPlan.place(task, rim, basis.grid(), ways, wanted, s, ground));
    }

    /** The points of the rim nearest to the places asked for; a place from which the rim is too far is left to a vented pin. */
    private List<RimPoint> askedVents(Rim rim) {
        List<RimPoint> asked = new ArrayList<>();
        for (Vec3 v : in.wishes().ventsAtMm()) {
            Vec3 p = basis.fromFile().apply(v);
            rim.points().stream()
                    .filter(RimPoint::reachable)
                    .min(Comparator.comparingDouble(r -> r.at().atZ(0).distance(p)))
                    .filter(r -> r.at().atZ(0).distance(p) <= VentPlan.SPACING_MM / 2)
                    .ifPresent(asked::add);
        }
        return asked;
    }

    /** The end of a lying dead end always gets a vent, half as deep again as the part's. */
    private void ventSlug(FeedSegment slug) {
        Vec2 end = slug.toMm().xy();
        Vec2 dir = end.minus(slug.fromMm().xy()).unit();
        Vec2 at = end.plus(dir.times(slug.to().widthMm() / 2));
        double toEdge = Ground.toEdgeMm(at, dir, widthMm, heightMm);
        if (!(toEdge > 2)) return;
        Region strip = Ground.strip(at.plus(dir.times(0.1)), at.plus(dir.times(toEdge)), 3);
        if (!ground.free(strip, 1.5, "feed")) return;
        ground.take("vent", strip);
        Half half = slug.half() != null ? slug.half() : Half.B;
        vents.add(new Vent(
                at.atZ(0),
                dir,
                half,
                3,
                1.5 * ventDepthMm(),
                1,
                0.5,
                toEdge - 1,
                "end of the feed, where cold air is pushed ahead"));
    }

    /** Shallow end of the resin's range, but what a small mill holds (0.02 mm) where the resin allows it. */
    double ventDepthMm() {
        Melt m = in.melt();
        return Math.clamp(Math.max(m.ventLowMm(), 0.02), m.ventLowMm(), m.ventHighMm());
    }

    /** Air that leaves one cavity at a tenth of a megapascal, mm³/s. */
    double airMm3PerS() {
        double all = vents.stream()
                .mapToDouble(v -> VentFlow.flowMm3PerS(v.widthMm(), v.depthMm(), v.landMm(), 0.1))
                .sum();
        return all / in.cavities();
    }

    /** Projected area of cavities and lying feed, mm². */
    double projectedMm2() {
        List<Region> all = new ArrayList<>();
        for (Spoke s : spokes) all.add(s.outline());
        for (FeedSegment f : feed) all.add(FeedPlan.footprint(f));
        return Region.unionOf(all).area();
    }

    /** Trunk that feeds all branches, by the minimum-volume rule. */
    double trunkMm() {
        return RunnerSize.branchMm(runner.diameterMm(), 1) * Math.cbrt(in.cavities());
    }
}
