package shotwright.layout;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.layout.LayoutResult.NozzleEntry;
import shotwright.layout.cavity.RimPoint;
import shotwright.layout.cavity.WallRay;
import shotwright.layout.gate.GateFreeze;
import shotwright.layout.gate.GatePlace;
import shotwright.layout.gate.GatePlaces;
import shotwright.layout.gate.GateShear;
import shotwright.layout.gate.GateSizing;
import shotwright.progress.Progress;

/**
 * Where and how the plastic enters a cavity.
 *
 * @param candidates scored places, best first
 * @param place the one taken
 * @param kind edge, fan or direct
 * @param size its size and limits
 * @param fanMm width where it leaves the runner
 * @param overMm how far it reaches inside the outline
 * @param byHand the place was set by a person
 * @param trouble why no proper place was found; null when one was
 */
record Entrance(
        List<GatePlace> candidates,
        GatePlace place,
        Gate.Kind kind,
        GateSizing.Size size,
        double fanMm,
        double overMm,
        boolean byHand,
        @Nullable String trouble) {

    /** Share of the pressure the gate may take; feed in all 30 %. */
    static final double PRESSURE_SHARE = 0.15;

    private static final double LEAST_OVER_MM = 0.2, MOST_OVER_MM = 0.5;

    static Entrance of(Basis basis, Progress progress) {
        LayoutInput in = basis.in();
        List<GatePlace> all = GatePlaces.rank(basis.shape(), basis.rim(), basis.grid(), basis.keepClear(), progress);
        boolean directPossible = in.press().entry() == NozzleEntry.BACK && in.cavities() == 1;
        Vec3 wish = in.wishes().gateAtMm();
        boolean wantsDirect = in.wishes().gateKind() == Gate.Kind.DIRECT;
        boolean anyRim = all.stream().anyMatch(p -> p.rim() != null);
        GatePlace direct = all.stream().filter(p -> p.rim() == null).findFirst().orElse(null);
        if (direct != null && directPossible && (wantsDirect || !anyRim))
            return direct(basis, all, wish == null ? direct : moved(basis, direct, wish), wantsDirect);
        if (!anyRim) return without(basis, all);
        GatePlace place = wish == null
                ? all.stream().filter(p -> p.rim() != null).findFirst().orElseThrow()
                : GatePlaces.nearest(
                        basis.shape(),
                        basis.rim(),
                        basis.grid(),
                        basis.keepClear(),
                        basis.fromFile().apply(wish).xy());
        return onRim(basis, all, place, wish != null, null);
    }

    private static Entrance onRim(
            Basis basis, List<GatePlace> all, GatePlace place, boolean byHand, @Nullable String trouble) {
        LayoutWishes w = basis.in().wishes();
        GateSizing.Task task = task(basis, place);
        GateSizing.Size size = GateSizing.of(task, basis.in().melt());
        if (w.gateWidthMm() != null || w.gateDepthMm() != null) {
            size = GateSizing.judge(
                    new GateSizing.Task(
                            task.wallMm(),
                            task.packedWallMm(),
                            task.heightMm(),
                            task.cavitySurfaceMm2(),
                            task.flowMm3PerS(),
                            task.fillS(),
                            task.pressureMpa(),
                            task.pressureShare(),
                            task.narrowestMm(),
                            Math.max(task.widestMm(), w.gateWidthMm() != null ? w.gateWidthMm() : 0)),
                    basis.in().melt(),
                    w.gateWidthMm() != null ? w.gateWidthMm() : size.widthMm(),
                    w.gateDepthMm() != null ? w.gateDepthMm() : size.depthMm());
        }
        boolean fan = w.gateKind() == Gate.Kind.FAN;
        double width = size.widthMm();
        if (fan)
            size = widened(size, Math.max(6, Math.sqrt(basis.shape().shadow().area()) / 4));
        return new Entrance(
                all,
                place,
                fan ? Gate.Kind.FAN : Gate.Kind.EDGE,
                size,
                width,
                over(basis, place, size.depthMm()),
                byHand,
                trouble);
    }

    private static GateSizing.Size widened(GateSizing.Size s, double widthMm) {
        double w = Math.ceil(10 * Math.max(s.widthMm(), widthMm)) / 10;
        return new GateSizing.Size(
                w,
                s.depthMm(),
                Math.max(w, s.largestWidthMm()),
                s.largestDepthMm(),
                Math.max(s.landMm(), 1),
                s.shearPerS() * s.widthMm() / w,
                s.sealS(),
                s.dropMpa(),
                s.passes(),
                s.reason());
    }

    private static GateSizing.Task task(Basis b, GatePlace place) {
        double perimeter = b.rim().lengthMm();
        return new GateSizing.Task(
                place.wallMm(),
                Math.min(place.wallMm(), b.in().wallMm()),
                place.rim() != null ? Math.max(place.rim().heightMm(), 0.4) : place.wallMm(),
                b.surfaceMm2(),
                b.flowMm3PerS(),
                b.fillS(),
                b.in().press().pressureMpa(),
                PRESSURE_SHARE,
                b.in().shop().smallestFlatMm(),
                Math.max(1, Math.min(0.12 * perimeter, 1.25 * Math.clamp(b.in().wallMm() + 1.5, 3, 6))));
    }

    private static double over(Basis b, GatePlace place, double depthMm) {
        double z = place.half().sign() * 0.9 * depthMm;
        Vec2 start = place.at().plus(place.out().times(0.5));
        double inset = new WallRay(b.shape().tree())
                        .first(start.atZ(z), place.out().times(-1).atZ(0), 5)
                        .fromMm()
                - 0.5;
        return Math.clamp(LEAST_OVER_MM + Math.max(0, inset), LEAST_OVER_MM, MOST_OVER_MM);
    }

    private static GatePlace moved(Basis b, GatePlace d, Vec3 wishFile) {
        Vec2 at = b.fromFile().apply(wishFile).xy();
        double high = b.shape().box().max().z() + 1;
        var hit = b.shape().tree().firstHit(at.atZ(high), new Vec3(0, 0, -1));
        if (hit == null) return d;
        return new GatePlace(
                d.kind(),
                at,
                high - hit.t(),
                d.out(),
                d.half(),
                null,
                d.wallMm(),
                d.flowLengthMm(),
                d.lastOnRimMm(),
                d.keepClear(),
                d.score(),
                d.reason());
    }

    /** A sprue straight onto the part: foot 1 … 2 walls wide, at least the mouth and its taper. */
    private static Entrance direct(Basis b, List<GatePlace> all, GatePlace place, boolean byHand) {
        double foot = Math.ceil(10 * Math.clamp(1.5 * place.wallMm(), 2, 6)) / 10;
        if (b.in().wishes().gateWidthMm() != null) foot = b.in().wishes().gateWidthMm();
        GateSizing.Size s = new GateSizing.Size(
                foot,
                foot,
                Math.max(foot, 2 * place.wallMm()),
                Math.max(foot, 2 * place.wallMm()),
                0.8,
                GateShear.roundPerS(b.flowMm3PerS(), foot),
                GateFreeze.roundS(
                        foot,
                        b.in().melt().diffusivityMm2PerS(),
                        b.in().melt().meltC(),
                        b.in().melt().moldC(),
                        b.in().melt().noFlowC()),
                0,
                true,
                "sprue foot 1 to 2 walls wide; the stub is sawn off and dressed");
        return new Entrance(all, place, Gate.Kind.DIRECT, s, foot, 0.3, byHand, null);
    }

    /** Nothing stands next to the parting plane: the widest point of the outline is taken so that the rest can be shown. */
    private static Entrance without(Basis b, List<GatePlace> all) {
        RimPoint p = b.rim().points().getFirst();
        GatePlace place = new GatePlace(
                Gate.Kind.EDGE,
                p.at(),
                0,
                p.out(),
                Half.B,
                p,
                b.in().wallMm(),
                b.shape().box().diagonal(),
                0,
                false,
                0,
                "no wall stands next to the parting plane here");
        List<GatePlace> with = new ArrayList<>(all);
        with.add(place);
        return onRim(
                b,
                with,
                place,
                false,
                "No wall stands next to the parting plane anywhere on the rim, so a gate cut beside it would not open into the part.");
    }
}
