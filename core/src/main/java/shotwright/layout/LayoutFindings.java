package shotwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import shotwright.finding.Finding;
import shotwright.geom.Vec3;
import shotwright.layout.LayoutResult.StrengthCheck;
import shotwright.layout.align.DowelLoad;
import shotwright.layout.align.DowelPlan;
import shotwright.layout.gate.GatePlace;
import shotwright.layout.gate.GateSizing;
import shotwright.layout.release.PinPlan;
import shotwright.layout.runner.FeedPlan;
import shotwright.measure.Digits;
import shotwright.measure.Source;

/** What has to be said about a layout, heaviest first. */
final class LayoutFindings {
    private static final double FRICTION_OF_HALVES = 0.15;
    private static final double SLOW_SPRUE_MM = 40;
    private static final double ECCENTRIC_SHARE = 0.1;
    private static final double HARD_TO_HOLD_MM = 0.02;

    private final MoldPlan plan;
    private final Basis basis;
    private final LayoutInput in;
    private final LayoutResult result;
    private final List<Finding> out = new ArrayList<>();

    private LayoutFindings(MoldPlan plan, LayoutResult result) {
        this.plan = plan;
        this.basis = plan.basis;
        this.in = plan.in;
        this.result = result;
    }

    static List<Finding> of(MoldPlan plan, LayoutResult result) {
        LayoutFindings f = new LayoutFindings(plan, result);
        f.out.addAll(RoomFindings.of(plan));
        f.gate();
        f.parting();
        f.dowels();
        f.release();
        f.strength();
        f.landPressure();
        f.nozzlePush();
        f.vents();
        f.sprue();
        f.balance();
        f.out.sort(Comparator.comparing(Finding::severity));
        return List.copyOf(f.out);
    }

    private static String f(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }

    private void gate() {
        GateSizing.Size s = plan.entrance.size();
        GatePlace p = plan.entrance.place();
        Vec3 at = basis.toFile().apply(p.at().atZ(p.zMm()));
        String trouble = plan.entrance.trouble();
        if (trouble != null)
            out.add(
                    Finding.stop("no-gate-place", trouble)
                            .at(at)
                            .remedy(
                                    "Choose another parting height, or a sprue straight onto the part on a press that feeds through the back."));
        if (!s.passes())
            out.add(Finding.watch(
                            "gate-tight",
                            "The largest gate this wall allows still "
                                    + (s.shearPerS() > in.melt().shearLimitPerS()
                                            ? "shears the melt beyond its limit; the part may streak near the gate."
                                            : "freezes or throttles before the part is packed; expect sinks far from it."))
                    .at(at)
                    .measured(
                            s.shearPerS(),
                            in.melt().shearLimitPerS(),
                            "1/s",
                            Source.computed("apparent shear rate 6Q/(w·h²)"))
                    .remedy("Fill slower, or gate into a thicker wall."));
        for (FeedSegment piece : plan.feed) {
            if (piece.kind() != FeedSegment.Kind.RUNNER) continue;
            if (FeedPlan.footprint(piece)
                            .distance(plan.spokes.get(piece.cavity() - 1).outline())
                    > 0) continue;
            out.add(Finding.stop("runner-cuts-part", "The runner will cut into walls of the part beside the gate.")
                    .at(at)
                    .remedy("Gate where nothing of the part stands in the runner's way, or take a narrower runner."));
            break;
        }
        if (p.keepClear())
            out.add(Finding.ask(
                            "gate-in-clear-area",
                            "Every place left for the gate lies where the customer wants no mark.")
                    .at(at)
                    .remedy("Ask whether a mark of 0.2 mm may stand there."));
        if (!plan.direct() && s.depthMm() < 0.5 * p.wallMm() && p.wallMm() > 1.5)
            out.add(Finding.note(
                            "jetting",
                            f(
                                    "The gate is %.2f mm deep on a wall of %.1f mm; into open space the melt may shoot in as a string.",
                                    s.depthMm(), p.wallMm()))
                    .at(at)
                    .remedy("Start the shot slowly; deepen the gate if a worm-like mark shows."));
        if (in.wishes().gateKind() == Gate.Kind.SUBMARINE || in.wishes().gateKind() == Gate.Kind.TAB)
            out.add(Finding.ask(
                            "gate-kind-not-cut",
                            in.wishes().gateKind() == Gate.Kind.SUBMARINE
                                    ? "A tunnel gate is drilled at a slant, which three axes from above do not cut; an edge gate is laid out instead."
                                    : "A tab belongs to the part's own shape; an edge gate is laid out instead.")
                    .remedy("Accept the edge gate, or add the tab to the part file."));
        if (in.wishes().gateKind() == Gate.Kind.DIRECT && !plan.direct())
            out.add(Finding.ask(
                            "no-direct-gate",
                            "A sprue straight onto the part needs one cavity and a nozzle behind half A; an edge gate is laid out instead.")
                    .remedy("Take one cavity on a press that feeds through the back."));
    }

    private void parting() {
        if (basis.parting().kind() == PartingChoice.Kind.STEPPED)
            out.add(Finding.watch(
                            "stepped-parting",
                            "The halves will meet on a surface that steps with the rim; "
                                    + basis.parting().reason() + ".")
                    .remedy(
                            "Give the part a flat rim if its use allows it.",
                            "",
                            "Milling two stepped faces that must match; flat halves are faced in one pass."));
        if (!basis.rim().level())
            out.add(Finding.watch(
                            "no-level-place",
                            "Nowhere round the rim do the halves meet on a flat; gate and vents are laid at the plane, and the step cuts them"
                                    + " deeper or shallower.")
                    .remedy("Set the parting height where the rim has a flat for the gate, or turn the part."));
        Double wish = in.wishes().partingZMm();
        if (wish != null && in.plane() && (wish < in.freeLowMm() - 0.01 || wish > in.freeHighMm() + 0.01))
            out.add(Finding.stop(
                            "parting-outside",
                            f(
                                    "At %.2f mm the parting plane cuts walls that lean the wrong way, and the part will lock in a half.",
                                    wish))
                    .measured(
                            wish,
                            wish < in.freeLowMm() ? in.freeLowMm() : in.freeHighMm(),
                            "mm",
                            Source.measured("band of the outline that a plane can part"))
                    .remedy(f("Set it from %.2f to %.2f mm.", in.freeLowMm(), in.freeHighMm())));
    }

    private void dowels() {
        if (plan.pin == null)
            out.add(Finding.ask(
                            "no-dowel",
                            "No dowel on the rack is short enough for these halves and long enough to hold.")
                    .remedy("Buy dowels of 4 to 6\u00a0mm in lengths of 10 to 20\u00a0mm."));
        else if (plan.dowels.isEmpty())
            out.add(Finding.stop("no-dowel-place", "Two dowels do not find room on a diagonal of the block.")
                    .remedy("Make the block larger, or take fewer cavities."));
        else if (DowelPlan.closesWrongWayRound(plan.dowels))
            out.add(Finding.stop("dowels-symmetric", "The halves would also close the wrong way round.")
                    .remedy("Move one dowel off the diagonal by 4 mm."));
    }

    private void release() {
        Release r = result.release();
        double keep = basis.gripN(r.keepsPart()),
                other = basis.gripN(r.keepsPart().other());
        if (keep < ReleasePlan.KEEP_RATIO * other)
            out.add(Finding.watch(
                            "keeps-unsure",
                            f(
                                    "The part may stay in half %s: it holds with %.0f N, half %s with %.0f N.",
                                    r.keepsPart().other(), other, r.keepsPart(), keep))
                    .measured(keep / Math.max(other, 1e-3), ReleasePlan.KEEP_RATIO, "times", Source.COMMON_PRACTICE)
                    .remedy(f(
                            "More draft on half %s, polish it along the pull, and leave half %s as milled.",
                            r.keepsPart().other(), r.keepsPart())));
        if (r.keepsPart() == Half.A && in.press().guided())
            out.add(Finding.watch(
                            "keeps-in-a",
                            "The part stays in half A, on the side of the nozzle, where no knock-out reaches it.")
                    .remedy("Turn the pull round, so that the cores stand in half B."));
        if (!ReleasePlan.pinsSuffice(plan, r)) pinsShort(r);
    }

    private void pinsShort(Release r) {
        double one = basis.gripN(r.keepsPart());
        int n = r.pins().size() / in.cavities();
        String found = n == 0
                ? "no pin finds room with a millimetre of metal beside its hole"
                : f(
                        "the %s of %.1f\u00a0mm with room for metal beside the hole %s %.0f N without marking it",
                        n == 1 ? "one pin" : n + " pins",
                        r.pins().getFirst().diameterMm(),
                        n == 1 ? "carries" : "carry",
                        n * PinPlan.carriesN(r.pins().getFirst().diameterMm()));
        out.add(Finding.ask("pins-short", f("It takes %.0f N to push a part off, and %s.", one, found))
                .remedy(f(
                        "More draft on the cores of half %s: one degree more takes about a tenth off. Or a pad for a pin on the part, or a sleeve"
                                + " round a core pin under a boss.",
                        r.keepsPart())));
    }

    private void strength() {
        for (StrengthCheck c : result.strength()) {
            boolean gives = c.deflectionMm() > c.deflectionLimitMm(), breaks = c.stressMpa() > c.stressLimitMpa();
            if (!gives && !breaks) continue;
            boolean floor = c.name().startsWith("floor");
            String text = breaks
                    ? f(
                            "The %s carries %s MPa of stress and the metal stands %.0f MPa.",
                            c.name().contains(",") ? c.name() + "," : c.name(),
                            Digits.figures(c.stressMpa(), 2),
                            c.stressLimitMpa())
                    : f("The %s gives %.3f mm under pressure.", c.name(), c.deflectionMm());
            out.add((floor ? Finding.note("floor-gives", text) : Finding.watch("metal-gives", text))
                    .measured(
                            breaks ? c.stressMpa() : c.deflectionMm(),
                            breaks ? c.stressLimitMpa() : c.deflectionLimitMm(),
                            breaks ? "MPa" : "mm",
                            Source.computed(c.method()))
                    .remedy(
                            floor
                                    ? "A flat platen right behind it carries it; do not put it on parallels."
                                    : c.name().startsWith("core")
                                            ? "Seat the core's tip in the other half, or set in a steel pin."
                                            : "Take a larger block."));
        }
    }

    private void landPressure() {
        double land = plan.widthMm * plan.heightMm - plan.projectedMm2();
        double mpa = in.press().clampN() / land;
        double limit = 0.3 * basis.designBar().yieldMpa();
        if (mpa > limit)
            out.add(Finding.watch("land-crushed", "The clamp will press dents into the parting face.")
                    .measured(mpa, limit, "MPa", Source.commonPractice("0.3 of the yield stress"))
                    .remedy("Clamp softer or make the block larger."));
        double open = basis.designMpa() * plan.projectedMm2();
        if (open > in.press().clampN())
            out.add(Finding.watch(
                            "clamp-short",
                            f(
                                    "At the full cavity pressure of %.0f MPa the melt pushes with %.0f kN and the press holds %.0f kN; a burr may form.",
                                    basis.designMpa(), open / 1000, in.press().clampN() / 1000))
                    .measured(
                            open / 1000, in.press().clampN() / 1000, "kN", Source.computed("pressure × projected area"))
                    .remedy(
                            in.cavities() > 1
                                    ? "Take fewer cavities, or hold with less pressure."
                                    : "Hold with less pressure, or take a larger press."));
    }

    /** A nozzle on the edge pushes both halves sideways against whatever backs the mold; between the halves only its unevenness slides. */
    private void nozzlePush() {
        if (!plan.lying()) return;
        double mouth = Math.PI * plan.mouthMm * plan.mouthMm / 4;
        double push = in.press().contactN() + in.press().pressureMpa() * mouth;
        double friction = FRICTION_OF_HALVES * in.press().clampN();
        if (push > friction)
            out.add(Finding.watch(
                            "nozzle-pushes",
                            f(
                                    "The nozzle pushes the mold sideways with %.0f N and friction under the clamp holds %.0f N, so it may walk.",
                                    push, friction))
                    .measured(push, friction, "N", Source.commonPractice("friction 0.15 of aluminium on aluminium"))
                    .remedy("Set a stop behind the mold, opposite the nozzle."));
        if (plan.dowels.isEmpty()) return;
        double d = plan.dowels.getFirst().diameterMm();
        double bearing =
                DowelLoad.bearingMpa(push / 2, 2 * d, plan.dowels.getFirst().proudMm());
        if (bearing > DowelLoad.BEARING_LIMIT_MPA && push / 2 > friction)
            out.add(Finding.watch(
                            "dowels-bear", "If one half takes the nozzle's push alone, the dowels dig into the metal.")
                    .measured(bearing, DowelLoad.BEARING_LIMIT_MPA, "MPa", Source.COMMON_PRACTICE)
                    .remedy("Let the stop touch both halves, or take larger dowels."));
    }

    private void vents() {
        if (in.melt().ventHighMm() < HARD_TO_HOLD_MM)
            out.add(
                    Finding.watch(
                                    "vent-shallow",
                                    f(
                                            "%s flashes through vents deeper than %.3f mm, less than a small mill holds.",
                                            in.melt().name(), in.melt().ventHighMm()))
                            .measured(in.melt().ventHighMm(), HARD_TO_HOLD_MM, "mm", Source.COMMON_PRACTICE)
                            .remedy(
                                    "Scribe the vents by hand on the finished face, or start without and let the parting face breathe."));
        if (plan.ventsOnStep)
            out.add(
                    Finding.watch(
                                    "vents-on-step",
                                    "No vent finds a flat; they lie where the parting surface steps, and do not meet the cavity everywhere.")
                            .remedy(
                                    "Cut them by hand along the finished surface, or set the parting height where the rim is flat."));
        int placed = plan.vents.size();
        if (placed == 0)
            out.add(Finding.stop(
                            "no-vent",
                            "No vent finds its way to the edge of the block; trapped air burns the last corner.")
                    .remedy("Move the gate or make the block larger."));
        else if (placed < plan.ventsWanted)
            out.add(Finding.note(
                    "vents-fewer",
                    f(
                            "%d of %d vents find their way to the edge past dowels and feed.",
                            Math.min(placed, plan.ventsWanted), plan.ventsWanted)));
        double air = plan.airMm3PerS();
        if (placed > 0 && air < basis.flowMm3PerS())
            out.add(Finding.watch(
                            "vents-narrow", "Air leaves more slowly than the melt comes in; the last corner may burn.")
                    .measured(
                            air / 1000,
                            basis.flowMm3PerS() / 1000,
                            "cm³/s",
                            Source.computed("laminar slot flow, capped at the speed of sound"))
                    .remedy("Fill slower, or widen the vents."));
        if (plan.entrance.place().lastOnRimMm() == 0 && !plan.direct())
            out.add(Finding.watch(
                            "air-inside",
                            "The melt arrives last inside the part, away from the rim, where a vent in the parting face does not reach.")
                    .remedy("Put a vented pin there, or gate so that the air ends up at the rim."));
    }

    private void sprue() {
        FeedSegment s = plan.feed.getFirst();
        if (!plan.lying() && s.lengthMm() > SLOW_SPRUE_MM)
            out.add(Finding.watch("sprue-long", f("A sprue of %.0f mm cools slowly and sticks.", s.lengthMm()))
                    .measured(s.lengthMm(), SLOW_SPRUE_MM, "mm", Source.commonPractice("40 mm on the bench"))
                    .remedy("Sink the nozzle into half A, or part the mold so that A is thinner."));
        if (!plan.direct() && plan.runner.diameterMm() < in.wallMm() + 1.5 - 1e-9)
            out.add(Finding.note(
                            "runner-thin",
                            f(
                                    "The runner of %.1f mm freezes before a wall of %.1f mm is packed.",
                                    plan.runner.diameterMm(), in.wallMm()))
                    .measured(plan.runner.diameterMm(), in.wallMm() + 1.5, "mm", Source.commonPractice("wall + 1.5 mm"))
                    .remedy("Accept it for thick parts, or cut it larger."));
    }

    private void balance() {
        if (in.cavities() > 2)
            out.add(
                    Finding.note(
                            "balance",
                            "The runners are balanced by length only; trial shots will show whether the cavities fill together."));
        double x = 0, y = 0, a = 0;
        for (var s : plan.spokes) {
            double area = s.outline().area();
            x += area * s.outline().centroid().x();
            y += area * s.outline().centroid().y();
            a += area;
        }
        double off = plan.lying() ? Math.hypot(x / a, y / a) : Math.hypot(x / a - plan.hub.x(), y / a - plan.hub.y());
        double limit = ECCENTRIC_SHARE * Math.max(plan.widthMm, plan.heightMm);
        if (off > limit)
            out.add(Finding.watch(
                            "off-centre",
                            f("The melt pushes %.1f mm beside the middle, so the mold opens on one side first.", off))
                    .measured(off, limit, "mm", Source.commonPractice("a tenth of the span"))
                    .remedy(
                            plan.lying()
                                    ? "Set the mold in the press so that the cavity lies under the clamp's middle."
                                    : "Take two cavities across from each other, or a sprue straight onto the part."));
    }
}
