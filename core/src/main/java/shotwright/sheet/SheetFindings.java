package shotwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import shotwright.finding.Finding;
import shotwright.measure.Source;
import shotwright.press.Press;
import shotwright.resin.Resin;

/** The limits a press sheet is held to (common practice). */
final class SheetFindings {
    private static final double POM_WARN_C = 215;
    private static final double LEAST_USED = 0.2;
    private static final double MOST_USED = 0.8;

    private final SheetInput in;
    private final Resin r;
    private final SetPoints set;
    private final List<Finding> out = new ArrayList<>();

    SheetFindings(SheetInput in, SetPoints set) {
        this.in = in;
        this.r = in.resin();
        this.set = set;
    }

    List<Finding> all() {
        temperatures();
        changeOver();
        residence();
        shot();
        clamp();
        hold();
        return List.copyOf(out);
    }

    private static String say(String format, Object... args) {
        return String.format(Locale.ROOT, format, args);
    }

    private void temperatures() {
        double hottest = Math.max(Math.max(set.rearC(), set.middleC()), Math.max(set.frontC(), set.nozzleC()));
        Finding high = tooHot(r, hottest);
        if (high != null) out.add(high);
        double wanted = r.settings().nozzleC().value(),
                most = in.press().maxBarrelC().value();
        if (most < r.meltC().low())
            out.add(Finding.stop(
                            "barrel-too-cold",
                            say(
                                    "%s does not melt %s: its barrel reaches %.0f °C.",
                                    in.press().name(), r.name(), most))
                    .measured(most, r.meltC().low(), "°C", r.meltC().source())
                    .remedy("Another press or a resin that melts lower."));
        else if (most < wanted)
            out.add(Finding.watch(
                            "barrel-at-its-limit",
                            say(
                                    "The barrel stops at %.0f °C, %s starts at %.0f °C; expect more pressure.",
                                    most, r.name(), wanted))
                    .measured(most, wanted, "°C", r.settings().nozzleC().source()));
    }

    /** Temperatures no sheet may ask for; null when it is fine. */
    static @org.jspecify.annotations.Nullable Finding tooHot(Resin r, double hottestC) {
        double limit = r.maxMeltC().value();
        if (hottestC > limit)
            return Finding.stop(
                            "melt-too-hot",
                            say("%.0f °C breaks %s down; fumes and pressure in the barrel.", hottestC, r.name()))
                    .measured(hottestC, limit, "°C", r.maxMeltC().source())
                    .remedy(say("No zone above %.0f °C.", limit));
        if (r.id().startsWith("pom") && hottestC > POM_WARN_C)
            return Finding.watch("acetal-hot", say("Acetal at %.0f °C: short stops only, fumes drawn off.", hottestC))
                    .measured(hottestC, POM_WARN_C, "°C", Source.published("OSHA 29 CFR 1910.1048"));
        return null;
    }

    private void changeOver() {
        Resin before = in.before();
        if (before == null || !ChangeOver.forbidden(before, r)) return;
        out.add(
                Finding.stop(
                                "must-never-meet",
                                say(
                                        "%s must never meet %s, hot or as pellets: it breaks down violently.",
                                        before.name(), r.name()))
                        .remedy(
                                "Purge fully through PE-HD or PP, take barrel, nozzle and hopper apart and clean them, log it; or use another press."));
    }

    private void residence() {
        double limit = r.residenceMin().value();
        if (set.residenceMin() <= limit) return;
        out.add(Finding.watch(
                        "residence-long",
                        say(
                                "The melt stays about %.1f minutes in the barrel; %s stands %.0f.",
                                set.residenceMin(), r.name(), limit))
                .measured(set.residenceMin(), limit, "min", r.residenceMin().source())
                .remedy("Shorter cycle, a smaller barrel, or the rear zone 10 K colder; purge after every stop."));
    }

    private void shot() {
        double stroke = set.strokeMm() + set.cushionMm(),
                have = in.press().strokeMm().value();
        if (stroke > have)
            out.add(Finding.stop(
                            "shot-too-large",
                            say(
                                    "The shot needs %.0f mm of stroke, the press has %.0f mm: parts stay short.",
                                    stroke, have))
                    .measured(stroke, have, "mm", Source.computed("shot volume over plunger area"))
                    .remedy("Fewer cavities, a smaller feed or a larger plunger."));
        else if (set.usedShare() > MOST_USED)
            out.add(Finding.watch(
                            "shot-near-limit",
                            say("The shot uses %.0f %% of the press; the melt may be uneven.", 100 * set.usedShare()))
                    .measured(100 * set.usedShare(), 100 * MOST_USED, "%", Source.COMMON_PRACTICE)
                    .remedy("Longer soak between shots."));
        else if (set.usedShare() < LEAST_USED)
            out.add(Finding.note(
                            "shot-small",
                            say(
                                    "The shot uses %.0f %% of the press; the melt waits long in the barrel.",
                                    100 * set.usedShare()))
                    .measured(100 * set.usedShare(), 100 * LEAST_USED, "%", Source.COMMON_PRACTICE));
        if (in.press().injection() == Press.Injection.PLUNGER)
            out.add(
                    Finding.note(
                            "plunger-soak",
                            "A plunger chamber melts from the wall: let the first shot soak, and keep the pause between shots even."));
    }

    private void clamp() {
        double need = Math.max(in.clampNeededKn(), in.fill().clampFillKn()),
                have = in.press().usableKn();
        if (have >= need) return;
        String text = say(
                "The mold opens: %.0f kN needed, %s holds %.0f kN.",
                need, in.press().name(), have);
        Finding f = have < 0.8 * need ? Finding.stop("clamp-short", text) : Finding.watch("clamp-short", text);
        out.add(f.measured(need, have, "kN", Source.computed("clamp and filling estimates"))
                .remedy("Less hold, fewer cavities, or a press with more clamp."));
    }

    private void hold() {
        double usual = r.settings().holdMpa().low();
        if (set.holdMpa() >= usual) return;
        out.add(Finding.watch(
                        "hold-low",
                        say(
                                "Hold ends at %.0f MPa, %s wants %.0f MPa or more: expect sinks and more shrink.",
                                set.holdMpa(), r.name(), usual))
                .measured(set.holdMpa(), usual, "MPa", r.settings().holdMpa().source())
                .remedy("Thinner walls and ribs, or a resin that packs easier; allow for the shrink in the mold."));
    }
}
