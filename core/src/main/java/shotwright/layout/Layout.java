package shotwright.layout;

import java.util.ArrayList;
import java.util.List;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.layout.LayoutResult.StrengthCheck;
import shotwright.layout.cavity.Spoke;
import shotwright.layout.gate.GatePlace;
import shotwright.layout.gate.GateSizing;
import shotwright.progress.Progress;

/** Station 40: how does it sit, where does the plastic enter, where does the air leave, how does the part come out. */
public final class Layout {
    private Layout() {}

    /**
     * Lays out a mold. Trouble with the part or the press is reported as findings; a result is returned all the same.
     *
     * @throws Progress.Cancelled when asked to stop
     */
    public static LayoutResult lay(LayoutInput in, Progress progress) {
        Basis basis = Basis.of(in, progress.part(0, 0.5));
        Entrance entrance = Entrance.of(basis, progress.part(0.5, 0.85));
        progress.at("placing cavities, feed and vents", 0.85);
        MoldPlan plan = MoldPlan.of(basis, entrance);
        progress.at("finding how the part comes out", 0.95);
        Release release = ReleasePlan.of(plan);
        List<StrengthCheck> strength = strength(plan);
        List<Decision> decisions = DecisionWords.of(plan, release);
        LayoutResult bare = result(plan, release, strength, decisions);
        return bare.withFindings(LayoutFindings.of(plan, bare));
    }

    private static LayoutResult result(
            MoldPlan plan, Release release, List<StrengthCheck> strength, List<Decision> decisions) {
        Basis b = plan.basis;
        return new LayoutResult(
                b.shrink().x(),
                b.shrink().y(),
                b.shrink().z(),
                b.parting(),
                plan.spokes.stream()
                        .map(s -> new Cavity(s.number(), b.shape().fromPulled().then(s.place())))
                        .toList(),
                plan.in.press().entry(),
                plan.nozzle,
                plan.feed,
                gates(plan),
                candidates(plan),
                plan.vents,
                plan.dowels,
                plan.screws,
                plan.pry,
                release,
                strength,
                block(plan),
                decisions,
                List.of());
    }

    private static Block block(MoldPlan plan) {
        ShopRack.Bar a = plan.barA, b = plan.barB;
        return new Block(
                plan.widthMm,
                plan.heightMm,
                plan.thicknessA,
                plan.thicknessB,
                a != null ? a.id() : "",
                b != null ? b.id() : "",
                a != null ? a.sawMm() : 3,
                plan.riseA,
                plan.riseB,
                a != null ? a.name() : "",
                b != null ? b.name() : "");
    }

    private static List<StrengthCheck> strength(MoldPlan plan) {
        return plan.metal.checks(
                plan.edgeMm,
                plan.gapMm,
                plan.thicknessA - plan.basis.shape().depthAMm(),
                plan.thicknessB - plan.basis.shape().depthBMm());
    }

    private static List<Gate> gates(MoldPlan plan) {
        GatePlace place = plan.entrance.place();
        GateSizing.Size s = plan.entrance.size();
        List<Gate> out = new ArrayList<>();
        for (Spoke k : plan.spokes) {
            out.add(new Gate(
                    k.number(),
                    plan.entrance.kind(),
                    k.gateAt().atZ(plan.direct() ? place.zMm() : 0),
                    plan.direct() ? Vec2.ZERO : k.flow(),
                    place.half(),
                    s.widthMm(),
                    s.depthMm(),
                    s.landMm(),
                    place.wallMm(),
                    s.largestWidthMm(),
                    s.largestDepthMm(),
                    Math.clamp(0.1 * s.widthMm(), 0.1, 0.25),
                    plan.direct() ? 0.5 : 0.2,
                    trimS(plan)));
        }
        return out;
    }

    /** Seconds to take the gate off one part: nippers and a scrape; a curved edge takes a knife; a sprue stub is sawn and dressed. */
    private static double trimS(MoldPlan plan) {
        var rim = plan.entrance.place().rim();
        if (rim == null) return 25;
        double s = Math.abs(rim.bulgeMm()) < 0.3 ? 5 : 8;
        return plan.entrance.kind() == Gate.Kind.FAN ? 2 * s : s;
    }

    private static List<GateCandidate> candidates(MoldPlan plan) {
        Spoke first = plan.spokes.getFirst();
        List<GateCandidate> out = new ArrayList<>();
        for (GatePlace p : plan.entrance.candidates()) {
            Vec3 at = first.at(p.at()).atZ(p.zMm());
            out.add(new GateCandidate(
                    out.size() + 1, p.kind(), at, p.score(), p.wallMm(), p.flowLengthMm(), p.keepClear(), p.reason()));
        }
        return out;
    }
}
