package shotwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import shotwright.geom.Vec3;
import shotwright.layout.gate.EdgeGateSize;
import shotwright.layout.gate.GatePlace;
import shotwright.layout.gate.GateSizing;
import shotwright.layout.runner.SprueTaper;
import shotwright.layout.vent.VentFlow;
import shotwright.measure.Digits;

/** Says every choice with the number that decided it, in the order in which a mold maker asks. */
final class DecisionWords {
    private final MoldPlan plan;
    private final Basis basis;
    private final LayoutInput in;
    private final List<Decision> out = new ArrayList<>();

    private DecisionWords(MoldPlan plan) {
        this.plan = plan;
        basis = plan.basis;
        in = plan.in;
    }

    static List<Decision> of(MoldPlan plan, Release release) {
        DecisionWords w = new DecisionWords(plan);
        w.shrink();
        w.parting();
        w.cavities();
        w.gate();
        w.gateSize();
        w.feed();
        w.slug();
        w.vents();
        w.dowels();
        w.screws();
        w.release(release);
        w.block();
        return List.copyOf(w.out);
    }

    private void say(String name, String value, String reason, String key) {
        out.add(new Decision(name, value, reason, key));
    }

    private static String f(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }

    private void shrink() {
        Vec3 s = basis.shrink();
        LayoutWishes w = in.wishes();
        boolean byHand = w.shrinkX() != null || w.shrinkY() != null || w.shrinkZ() != null;
        boolean same = s.x() == s.y() && s.y() == s.z();
        String value = same
                ? f("%.2f %%", 100 * s.x())
                : f("%.2f / %.2f / %.2f %% along x, y, pull", 100 * s.x(), 100 * s.y(), 100 * s.z());
        String range = f(
                "%s shrinks %.1f to %.1f %%",
                in.melt().name(),
                100 * in.melt().lowShrinkShare(),
                100 * in.melt().highShrinkShare());
        say(
                "shrink",
                value,
                byHand
                        ? "set by hand; " + range
                        : range + ", the middle is taken"
                                + (in.melt().crystalline() && in.wallMm() > 2
                                        ? f(" and 0.15 %% for each 1 mm of wall above 2 mm (wall %.1f mm)", in.wallMm())
                                        : "")
                                + "; hold pressure moves it by about 0.1 % per 10 MPa; a mold dimension is the part's over 1 − shrink",
                "layout.shrinkPercent");
    }

    private void parting() {
        PartingChoice p = basis.parting();
        say(
                "parting line",
                (p.kind() == PartingChoice.Kind.PLANE ? "plane at " : "stepped at ") + Digits.fixed(p.pulledZMm(), 2)
                        + " mm",
                p.reason(),
                "layout.partingZMm");
    }

    private void cavities() {
        int n = in.cavities();
        String value = n == 1 ? "one" : n == 2 ? "two, in a row" : f("%d, in a circle", n);
        String reason = n == 1
                ? f("%.0f mm of metal to the edges", plan.edgeMm)
                : f(
                        "all runners %.1f mm long; %.1f mm of metal between cavities, %.0f mm to the edges",
                        plan.runnerLengthMm, plan.gapMm, plan.edgeMm);
        say("cavities", value, reason, "cavities");
    }

    private void gate() {
        GatePlace p = plan.entrance.place();
        String kind =
                switch (plan.entrance.kind()) {
                    case FAN -> "fan gate";
                    case DIRECT -> "sprue on the part";
                    case TAB, SUBMARINE, EDGE -> "edge gate";
                };
        String where = plan.direct() ? "on the face of half A" : f("on the rim, cut into half %s", p.half());
        String reason = (plan.entrance.byHand()
                        ? "place set by hand; "
                        : f("best of %d places; ", plan.entrance.candidates().size()))
                + p.reason();
        say("gate", kind + " " + where, reason, "layout.gateAtMm");
    }

    private void gateSize() {
        GateSizing.Size s = plan.entrance.size();
        if (plan.direct()) {
            say("gate size", f("Ø%.1f mm at the foot", s.widthMm()), s.reason(), "layout.gateWidthMm");
            return;
        }
        double n = in.melt().gateFactor();
        say(
                "gate size",
                f("%.1f × %.2f mm, land %.1f mm", s.widthMm(), s.depthMm(), s.landMm()),
                s.reason()
                        + (Gate.opens(s.widthMm(), s.depthMm(), s.largestWidthMm(), s.largestDepthMm())
                                ? f(
                                        " Open it after short shots, up to %.1f × %.2f mm; metal does not grow back.",
                                        s.largestWidthMm(), s.largestDepthMm())
                                : " The wall allows no larger one.")
                        + f(
                                " Classical rule: %.1f × %.2f mm.",
                                EdgeGateSize.widthMm(n, basis.surfaceMm2()),
                                EdgeGateSize.depthMm(n, plan.entrance.place().wallMm())),
                "layout.gateWidthMm");
    }

    private void feed() {
        String mouth = f(
                "mouth Ø%.1f mm, 0.5 mm more than the nozzle's bore of %.1f mm",
                plan.mouthMm, in.press().boreMm());
        if (plan.lying()) {
            say(
                    "nozzle",
                    "on the edge, at the parting line",
                    f(
                            "the nozzle of %s meets the mold at the parting line",
                            in.press().name()),
                    "press");
            say(
                    "sprue",
                    f("lying, Ø%.1f to Ø%.1f mm", plan.mouthMm, plan.sprueEndMm),
                    mouth + "; opens with the mold",
                    "");
        } else {
            say(
                    "nozzle",
                    "through the back of half A",
                    f("the nozzle of %s stands behind half A", in.press().name()),
                    "press");
            double length = plan.feed.getFirst().lengthMm();
            say(
                    "sprue",
                    f("standing, Ø%.1f to Ø%.1f mm over %.0f mm", plan.mouthMm, plan.sprueEndMm, length),
                    mouth
                            + f(
                                    "; taper %.1f° in all (at least %.2f° to draw, polish along the pull)",
                                    SprueTaper.includedDeg(plan.mouthMm, plan.sprueEndMm, length),
                                    SprueTaper.STANDARD_INCLUDED_DEG),
                    "");
        }
        if (plan.direct()) return;
        Section s = plan.runner.section();
        String shape =
                switch (s.shape()) {
                    case ROUND -> f("round Ø%.1f mm", s.widthMm());
                    case HALF_ROUND -> f("half round %.1f mm wide", s.widthMm());
                    case TRAPEZOID ->
                        f(
                                "trapezoid %.1f mm wide, %.1f mm deep, %.0f° a side",
                                s.widthMm(), s.depthMm(), s.wallDraftDeg());
                    case RECTANGLE -> f("%.1f × %.1f mm", s.widthMm(), s.depthMm());
                };
        say("runner", shape + f(", %.1f mm long", plan.runnerLengthMm), plan.runner.reason(), "layout.runnerMm");
    }

    private void slug() {
        boolean well = plan.feed.stream().anyMatch(s -> s.kind() == FeedSegment.Kind.COLD_SLUG);
        boolean puller = plan.feed.stream().anyMatch(s -> s.kind() == FeedSegment.Kind.PULLER);
        if (puller)
            say(
                    "cold slug",
                    "parallel well below the sprue",
                    f(
                            "%.1f mm deep, 1.5 runner diameters; no draft and two scratched rings keep the sprue in B, the press has no knock-out",
                            plan.feed.get(1).lengthMm()),
                    "");
        else if (well)
            say(
                    "cold slug",
                    "1.5 runner diameters",
                    "the first melt out of the nozzle is cold and runs straight on",
                    "");
        else
            say(
                    "cold slug",
                    "none",
                    plan.direct()
                            ? "the sprue runs straight into the part; wipe the nozzle before each shot"
                            : "the feed runs straight to the only gate, nothing lies ahead of it; wipe the nozzle before each shot",
                    "");
    }

    private void vents() {
        double air = plan.airMm3PerS(), flow = basis.flowMm3PerS();
        String value = plan.vents.isEmpty()
                ? "none"
                : f(
                        "%d, %.0f mm wide, %.3f mm deep, land %.1f mm",
                        plan.vents.size(),
                        plan.vents.getFirst().widthMm(),
                        plan.vents.getFirst().depthMm(),
                        plan.vents.getFirst().landMm());
        say(
                "vents",
                value,
                f(
                        "%s takes %.3f to %.3f mm without flash; they pass %.0f cm³/s of air a cavity (speed of sound counted), the melt brings %.1f cm³/s;"
                                + " trapped air at 3 MPa would reach %.0f °C",
                        in.melt().name(),
                        in.melt().ventLowMm(),
                        in.melt().ventHighMm(),
                        air / 1000,
                        flow / 1000,
                        VentFlow.trappedAirC(27, 30)),
                "");
    }

    private void dowels() {
        if (plan.dowels.isEmpty()) return;
        DowelPlace d = plan.dowels.getFirst();
        say(
                "dowels",
                f("two Ø%.0f\u00a0mm, %.1f mm proud", d.diameterMm(), d.proudMm()),
                d.fit() + "; one stands 4 mm off the diagonal, so that the halves close one way only",
                "layout.dowel");
    }

    private void screws() {
        if (plan.screws.isEmpty()) return;
        say(
                "screws",
                f("%d of %s", plan.screws.size(), plan.screws.getFirst().screw()),
                f(
                        "preload %.1f kN in all, the melt opens with %.1f kN",
                        ScrewPlan.preloadN(plan) / 1000, basis.designMpa() * plan.projectedMm2() / 1000),
                "");
    }

    private void release(Release r) {
        say("part stays on", "half " + r.keepsPart(), r.words(), "layout.keepsPart");
    }

    private void block() {
        ShopRack.Bar a = plan.barA, b = plan.barB;
        String axis = "";
        if (plan.lying() && in.press().axisHeightMm().isPresent())
            axis = plan.packingMm > 0
                    ? f(
                            "; a packing plate of %.1f mm below half B brings the parting line to the nozzle, %.1f mm high",
                            plan.packingMm, in.press().axisHeightMm().getAsDouble())
                    : f("; half B is as thick as the nozzle axis is high, %.1f mm", plan.thicknessB);
        say(
                "block",
                f(
                        "%.0f × %.0f mm, A %.1f mm, B %.1f mm thick",
                        plan.widthMm, plan.heightMm, plan.thicknessA, plan.thicknessB),
                f(
                        "cavity %.1f mm deep in A and %.1f mm in B, floor at least %.1f mm, edge %.0f mm; cores stand %.1f mm out of A and %.1f mm out of B;"
                                + " %s%s",
                        basis.shape().depthAMm(),
                        basis.shape().depthBMm(),
                        plan.floorMm,
                        plan.edgeMm,
                        plan.riseA,
                        plan.riseB,
                        bars(a, b),
                        axis),
                "material");
    }

    private static String bars(ShopRack.@Nullable Bar a, ShopRack.@Nullable Bar b) {
        if (a == null)
            return b == null
                    ? "no bar on the rack is large enough for either"
                    : "A from no bar on the rack, B from " + b.name();
        if (b == null) return "A from " + a.name() + ", B from no bar on the rack";
        return a.name().equals(b.name()) ? "both from " + a.name() : "A from " + a.name() + ", B from " + b.name();
    }
}
