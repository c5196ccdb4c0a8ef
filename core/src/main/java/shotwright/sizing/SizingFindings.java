package shotwright.sizing;

import static shotwright.sizing.Figures.kn;
import static shotwright.sizing.Figures.mm2;
import static shotwright.sizing.Figures.number;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import shotwright.finding.Finding;
import shotwright.finding.Severity;
import shotwright.measure.Quantity;
import shotwright.measure.Source;
import shotwright.press.Press;
import shotwright.resin.Resin;

/** What the station has to say, from its own result. */
final class SizingFindings {
    private SizingFindings() {}

    static SizingResult addTo(SizingResult r, SizingInput input) {
        List<Finding> all = new ArrayList<>();
        if (!r.pressGiven() && r.ours().verdict() == Verdict.NO && !r.cavitiesGiven()) all.add(noneServes(r));
        clamp(r, input).ifPresent(all::add);
        for (PressCheck c : r.ours().checks()) {
            if (c.subject() != PressCheck.Subject.CLAMP && c.verdict() != Verdict.FITS) all.add(check(c, r, input));
        }
        if (r.second() != null) second(r.second()).ifPresent(all::add);
        if (r.press().clampIsEstimate()) all.add(estimated(r));
        offCentre(r, input).ifPresent(all::add);
        doubt(r).ifPresent(all::add);
        more(r).ifPresent(all::add);
        resins(input, all);
        for (ResinRow row : r.resinRows()) other(r, row).ifPresent(all::add);
        all.sort(Comparator.comparing(Finding::severity));
        return new SizingResult(
                r.resin(),
                r.press(),
                r.pressGiven(),
                r.secondPress(),
                r.cavities(),
                r.cavitiesGiven(),
                r.projectedAreaShotMm2(),
                r.feedKnown(),
                r.feedAreaMm2(),
                r.feedVolumeMm3(),
                r.clamp(),
                r.shotG(),
                r.shotVolumeMm3(),
                r.injectedCm3(),
                r.strokeMm(),
                r.utilisationShare(),
                r.residenceS(),
                r.cycleS(),
                r.roughMpa(),
                r.mold(),
                r.verdict(),
                r.ours(),
                r.second(),
                r.presses(),
                r.cavityRows(),
                r.resinRows(),
                all);
    }

    private static Optional<Finding> clamp(SizingResult r, SizingInput input) {
        PressCheck c = r.ours().check(PressCheck.Subject.CLAMP);
        if (c.verdict() == Verdict.FITS) return Optional.empty();
        Source rule = Source.commonPractice(number(r.clamp().shortTonsPerIn2()) + " short tons per square inch, bare");
        double has = r.press().nameplateKn();
        String area = mm2(r.projectedAreaShotMm2());
        if (c.verdict() == Verdict.TIGHT)
            return Optional.of(Finding.watch(
                            "clamp-tight",
                            r.press().name() + " will just hold " + area + ": " + kn(r.clampNeededKn()) + " of "
                                    + kn(has) + ", so it may flash at full pressure.")
                    .measured(r.clampNeededKn(), has, "kN", rule)
                    .remedy("Fill at the lowest pressure that fills and hold gently; go to " + larger(r)
                            + " for a run."));
        double fitsMm2 = ClampForce.areaMm2(has, r.clamp().shortTonsPerIn2()) / r.cavities();
        String fewer = r.cavities() > 1 && fitsMm2 * r.cavities() > input.projectedAreaMm2()
                ? "Cut one cavity, or take "
                : "Take ";
        return Optional.of(Finding.stop(
                        "clamp-short",
                        r.press().name() + " cannot hold " + area
                                + (r.cavities() > 1 ? ", " + r.cavities() + " up" : "") + ": it needs "
                                + kn(r.clampNeededKn()) + " and has " + kn(has) + ", so the mold would open and flash.")
                .measured(r.clampNeededKn(), has, "kN", rule)
                .remedy(fewer + larger(r) + "; this press holds " + mm2(fitsMm2) + " a cavity at " + r.cavities()
                        + " up."));
    }

    private static String larger(SizingResult r) {
        return better(r, PressCheck.Subject.CLAMP)
                .orElse("a press with " + kn(PressChecks.SPARE_FACTOR * r.clampNeededKn()));
    }

    /** The smallest press of the rack that can do the job and has room to spare in one respect; those that fit throughout first. */
    private static Optional<String> better(SizingResult r, PressCheck.Subject subject) {
        return r.presses().stream()
                .filter(p -> p.verdict() != Verdict.NO
                        && !p.press().id().equals(r.press().id()))
                .filter(p -> p.check(subject).verdict() == Verdict.FITS)
                .min(Comparator.comparing(PressVerdict::verdict))
                .map(p -> "“" + p.press().name() + "”");
    }

    private static Finding check(PressCheck c, SizingResult r, SizingInput input) {
        Severity severity = c.verdict() == Verdict.NO ? Severity.STOP : Severity.WATCH;
        Quantity needed = c.needed(), limit = c.available();
        String press = better(r, c.subject()).orElse("another press");
        String remedy =
                switch (c.subject()) {
                    case ENVELOPE -> "Take " + press + ", turn the part, or cut fewer cavities.";
                    case SHOT ->
                        r.utilisationShare() < 0.2
                                ? "Purge before the first good shot, or take a press with a smaller barrel"
                                        + better(r, c.subject())
                                                .map(p -> ", " + p)
                                                .orElse("") + "."
                                : "Cut fewer cavities or take " + press + ".";
                    case PRESSURE ->
                        "Take an easier-flowing grade, a thicker wall, a shorter way from the gate, or " + press + ".";
                    case SPEED -> "Fill a thicker wall or fewer cavities, or take " + press + ".";
                    case TEMPERATURE -> "Take a resin that melts lower, or " + press + ".";
                    case EJECTION -> "Take a press that opens at least " + number(2 * input.depthMm() + 10) + " mm.";
                    case CYCLE ->
                        r.press().injection() == Press.Injection.PLUNGER
                                ? "Shorten the cycle and charge the chamber for one shot at a time."
                                : "Shorten the cycle, purge between shots, or take " + press + ".";
                    case CLAMP, ENTRY -> "";
                };
        return Finding.of(severity, c.subject().words().replace(' ', '-'), c.words())
                .measured(needed.value(), limit.value(), limit.unit(), limit.source())
                .remedy(remedy);
    }

    private static Optional<Finding> second(PressVerdict v) {
        if (v.verdict() == Verdict.FITS) return Optional.empty();
        Severity severity = v.verdict() == Verdict.NO ? Severity.STOP : Severity.WATCH;
        return Optional.of(Finding.of(
                        severity,
                        "second-press",
                        "On the second press, " + v.press().name() + ": " + v.firstReason())
                .remedy("Change the mold so that it passes on both presses, or name another second press."));
    }

    private static Finding estimated(SizingResult r) {
        Press p = r.press();
        return Finding.watch(
                        "clamp-estimated",
                        "The clamp of " + p.name() + " is an estimate, " + kn(p.nameplateKn())
                                + ": it depends on the hand at the handle and on grease.")
                .measured(p.nameplateKn(), "kN", Source.computed("2π·η·T/lead of the vise screw with η = 0.3"))
                .remedy(FlashTest.words(p, r.projectedAreaShotMm2()));
    }

    private static Optional<Finding> offCentre(SizingResult r, SizingInput input) {
        @Nullable Quantity span = r.press().pillarSpanMm();
        double off = r.cavities() == 1 ? input.centreOffMm().length() : 0;
        if (span == null) return Optional.empty();
        double share = r.press().frame() == Press.Frame.C_FRAME
                ? EccentricLoad.THROAT_LIMIT_SHARE
                : EccentricLoad.PILLAR_LIMIT_SHARE;
        double limit = share * span.value();
        if (off <= limit) return Optional.empty();
        double near = EccentricLoad.nearShare(off, span.value());
        return Optional.of(Finding.watch(
                        "off-centre",
                        "The pressure would act " + number(off)
                                + " mm off the middle if the outline is centred; the nearer side then carries "
                                + Figures.percent(near)
                                + " and the mold may flash on it.")
                .measured(off, limit, "mm", Source.commonPractice(Figures.percent(share) + " of the span"))
                .remedy("Centre the middle of the projected area under the clamp, not the outline."));
    }

    private static Optional<Finding> doubt(SizingResult r) {
        double high = r.clampBandKn().high(), has = r.press().nameplateKn();
        if (high <= has || r.ours().check(PressCheck.Subject.CLAMP).verdict() == Verdict.NO) return Optional.empty();
        return Optional.of(Finding.note(
                        "clamp-band",
                        "Packed hard, " + r.resin().name() + " could ask for up to " + kn(high) + ", more than the "
                                + kn(has) + " of the press; the press would flash before that.")
                .measured(high, has, "kN", r.resin().clampShortTonsPerIn2().source())
                .remedy("Stop raising the hold pressure as soon as a film of flash shows."));
    }

    private static Optional<Finding> more(SizingResult r) {
        if (r.cavitiesGiven() || r.verdict() == Verdict.NO) return Optional.empty();
        return r.cavityRows().stream()
                .filter(c -> c.cavitiesCount() > r.cavities() && c.verdict() == Verdict.NO)
                .findFirst()
                .map(c -> Finding.note(
                                "cavities-refused",
                                c.cavitiesCount() + " up is refused on "
                                        + r.press().name() + ". " + c.refusal())
                        .remedy("For " + c.cavitiesCount() + " up name a press with at least "
                                + kn(PressChecks.SPARE_FACTOR * c.clampNeededKn()) + " and room for a mold of "
                                + number(c.moldWidthMm()) + " × " + number(c.moldHeightMm()) + " mm."));
    }

    private static Finding noneServes(SizingResult r) {
        return Finding.stop(
                        "no-press",
                        "No press on the rack can mold this in " + r.resin().name() + "; nearest comes "
                                + r.press().name() + ".")
                .remedy("See what each press lacks; change the part, take another resin, or name your own press.");
    }

    private static void resins(SizingInput input, List<Finding> all) {
        Resin r = input.resin();
        if (r.benchtopClass() == Resin.BenchtopClass.E)
            all.add(Finding.ask(
                            "resin-avoid",
                            r.name() + " is a resin to avoid on a benchtop press: "
                                    + r.hazards().getFirst())
                    .remedy("Take another resin, or have it molded on a press built for it."));
        for (Resin one : input.resins()) {
            List<String> enemies = input.resins().stream()
                    .filter(o ->
                            one.forbiddenWith().contains(o.id()) && one.id().compareTo(o.id()) < 0)
                    .map(Resin::name)
                    .collect(Collectors.toList());
            if (!enemies.isEmpty())
                all.add(
                        Finding.stop(
                                        "resins-never-meet",
                                        one.name() + " and " + String.join(", ", enemies)
                                                + " must never meet, hot or as pellets: the breakdown is violent.")
                                .remedy(
                                        "Try only one of them on this press; changing over needs a full purge through PE or PP and a stripped barrel."));
        }
    }

    private static Optional<Finding> other(SizingResult r, ResinRow row) {
        if (row.verdict() == Verdict.FITS) return Optional.empty();
        return Optional.of(Finding.of(
                        row.verdict() == Verdict.NO ? Severity.ASK : Severity.NOTE,
                        "other-resin",
                        "In " + row.resin().name() + " on " + r.press().name() + ": " + row.words())
                .remedy("Try it last, or leave it out."));
    }
}
