package shotwright.fill;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import shotwright.finding.Finding;
import shotwright.layout.Gate;
import shotwright.layout.gate.GateShear;
import shotwright.measure.Source;

/** Says what the filling estimate means. */
final class FillFindings {
    private static final Source METHOD = Source.computed("first-order filling along the part's own way, cold walls");
    private static final double UNBALANCED_SHARE = 0.15;
    private static final double FROZEN_WATCH = 0.35;

    private final FillInput in;
    private final FeedWay feed;
    private final List<FeedWay> feeds;
    private final FillScan scan;
    private final FillResult r;
    private final double peakMpa;
    private final boolean longWay;
    private final List<Finding> out = new ArrayList<>();

    FillFindings(
            FillInput in,
            FeedWay feed,
            List<FeedWay> feeds,
            FillScan scan,
            FillResult bare,
            double peakMpa,
            boolean longWay) {
        this.in = in;
        this.feed = feed;
        this.feeds = feeds;
        this.scan = scan;
        this.r = bare;
        this.peakMpa = peakMpa;
        this.longWay = longWay;
    }

    FillResult complete() {
        pressure();
        window();
        gateShear();
        stress();
        warming();
        clamp();
        air();
        balance();
        data();
        return r.withFindings(out);
    }

    private static String say(String format, Object... args) {
        return String.format(Locale.ROOT, format, args);
    }

    private void pressure() {
        if (r.verdict() == FillResult.Verdict.FILLS) return;
        String cure = new FillCures(in, feed, r.fillTimeS()).sentence(peakMpa);
        double available = r.pressureAvailableMpa();
        Finding f;
        if (!Double.isFinite(peakMpa)) {
            f = Finding.stop(
                    "freezes-short",
                    say(
                            "%s freezes on the way before the last corner fills, at every fill time tried.",
                            in.melt().name()));
        } else if (r.verdict() == FillResult.Verdict.SHORT) {
            f = Finding.stop(
                    "pressure-short",
                    say(
                            "The part comes out short: %s needs about %.0f MPa to the last corner, the press gives %.0f MPa.",
                            in.melt().name(), peakMpa, available));
        } else if (longWay && r.pressureBandMpa().high() <= available) {
            f = Finding.watch(
                    "flow-length-long",
                    say(
                            "The way is longer against its wall (%.0f) than the trade expects of %s at this pressure (%.0f), although the pressure adds up.",
                            r.flowLengthRatio(), in.melt().name(), r.flowLengthLimitRatio()));
        } else {
            f = Finding.watch(
                    "pressure-doubtful",
                    say(
                            "It may come out short: about %.0f MPa needed (%.0f to %.0f MPa), the press gives %.0f MPa.",
                            peakMpa,
                            r.pressureBandMpa().low(),
                            r.pressureBandMpa().high(),
                            available));
        }
        out.add(f.measured(r.pressurePeakMpa(), available, "MPa", METHOD).remedy(cure));
    }

    private void window() {
        if (!scan.open())
            out.add(Finding.watch(
                            "fill-window-closed",
                            say(
                                    "No fill time suits: slower than %.1f s takes more pressure than the press has, faster than %.1f s is held up by %s.",
                                    scan.slowestS(), scan.fastestS(), scan.fastLimit()))
                    .remedy("Open what holds up the fast side first: gate, vents, then the wall."));
        if (r.fillTimeS() < scan.fastestS() * 0.99 && in.fillTimeS() > 0)
            out.add(Finding.watch(
                    "fill-too-fast",
                    say(
                            "A fill time of %.2f s is faster than %s allows (%.2f s).",
                            r.fillTimeS(), scan.fastLimit(), scan.fastestS())));
        if (r.frozenAtEndShare() > FROZEN_WATCH && Double.isFinite(peakMpa))
            out.add(Finding.watch(
                            "freezing-in",
                            say(
                                    "At %.1f s up to %.0f %% of the wall is frozen before the last corner fills.",
                                    r.fillTimeS(), 100 * r.frozenAtEndShare()))
                    .remedy(
                            scan.fastestS() < 0.9 * r.fillTimeS()
                                    ? say(
                                            "Fill faster (down to %.1f s), or run melt or mold 10 K hotter.",
                                            scan.fastestS())
                                    : "Run melt or mold 10 K hotter."));
    }

    private void gateShear() {
        double limit = in.melt().shearRateLimitPerS();
        for (FillResult.PressureStep s : r.steps()) {
            if (!s.name().equals("gate") || s.shearRatePerS() <= limit) continue;
            Gate g = in.layout().gates().getFirst();
            double flow = in.cavityVolumeMm3() / r.fillTimeS();
            double deep = GateShear.slotDepthMm(flow, g.widthMm(), limit);
            out.add(Finding.watch(
                            "gate-shear",
                            say(
                                    "The gate shears %s harder than it stands; expect splay or a dull ring at the gate.",
                                    in.melt().name()))
                    .measured(s.shearRatePerS(), limit, "1/s", Source.fromMemory("shear limits of gating handbooks"))
                    .remedy(say("Cut the gate %.2f mm deep at the same width, or fill slower.", deep)));
        }
    }

    private void stress() {
        double limit = in.melt().shearStressLimitMpa();
        for (FillResult.PressureStep s : r.steps()) {
            if (!s.name().startsWith("cavity") || s.shearStressMpa() <= limit) continue;
            out.add(Finding.note(
                            "wall-stress",
                            say(
                                    "In the %s of the cavity the melt drags on the wall at %.2f MPa; thin walls may crack or warp later.",
                                    s.name().replaceAll("^cavity, | of the way$", ""), s.shearStressMpa()))
                    .measured(s.shearStressMpa(), limit, "MPa", Source.fromMemory("shear limits of gating handbooks"))
                    .remedy("Melt or mold 10 K hotter, or fill slower."));
            return;
        }
    }

    private void warming() {
        double hot = in.melt().meltC() + r.meltWarmingK(), limit = in.melt().hottestMeltC();
        if (!Double.isFinite(peakMpa) || hot <= limit) return;
        out.add(Finding.watch(
                        "shear-heat",
                        say(
                                "Its own shear can warm the melt by up to %.0f K, to %.0f °C; %.0f °C is the most for %s.",
                                r.meltWarmingK(), hot, limit, in.melt().name()))
                .measured(hot, limit, "°C", Source.computed("pressure over density and heat capacity, nothing lost"))
                .remedy("Start 10 K colder or open the gate."));
    }

    private void clamp() {
        double have = in.press().clampKn(), need = r.clampPeakKn();
        if (!(have > 0) || need <= have) return;
        String press = in.press().name();
        if (r.clampFillKn() > have) {
            String text = say(
                    "The mold opens while it fills: about %.0f kN, %s holds %.0f kN.", r.clampFillKn(), press, have);
            boolean far = have < 0.8 * r.clampFillKn();
            Finding f = far ? Finding.stop("clamp-short", text) : Finding.watch("clamp-short", text);
            out.add(f.measured(r.clampFillKn(), have, "kN", METHOD)
                    .remedy("Fill slower or hotter, fewer cavities, or a press with more clamp."));
        } else {
            String text = say(
                    "Held at %.0f MPa the mold opens and flashes: about %.0f kN, %s holds %.0f kN.",
                    in.holdMpa(), need, press, have);
            out.add(Finding.watch("hold-opens-mold", text)
                    .measured(need, have, "kN", METHOD)
                    .remedy(say("Hold no higher than %.0f MPa.", Math.floor(in.holdMpa() * have / need))));
        }
    }

    private void air() {
        if (in.layout().vents().isEmpty()) {
            out.add(Finding.watch(
                            "no-vents",
                            "The layout shows no vents; trapped air burns the last corner and stops the front.")
                    .remedy("Cut a vent where the front arrives last."));
            return;
        }
        List<CaughtAir> caught = CaughtAir.of(in.layout(), in.field());
        if (caught.isEmpty()) return;
        CaughtAir worst = caught.stream()
                .max(Comparator.comparingDouble(CaughtAir::nearestMm))
                .orElseThrow();
        String text = caught.size() == 1
                ? say(
                        "A place fills late (%.0f %%) and the nearest vent is %.0f mm away; air may burn there.",
                        100 * worst.place().arrivalShare(), worst.nearestMm())
                : say(
                        "%d places fill late and no vent reaches them, the worst is %.0f mm from the nearest; air may burn there.",
                        caught.size(), worst.nearestMm());
        out.add(Finding.watch("air-caught", text)
                .at(worst.place().atMm())
                .measured(worst.nearestMm(), worst.reachMm(), "mm", Source.COMMON_PRACTICE)
                .remedy("A vent there, or a pin with clearance."));
    }

    private void balance() {
        double low = Double.POSITIVE_INFINITY, high = 0;
        for (FeedWay f : feeds) {
            double p = FirstOrderFill.feedMpa(in, f);
            low = Math.min(low, p);
            high = Math.max(high, p);
        }
        if (feeds.size() < 2) return;
        if (high > (1 + UNBALANCED_SHARE) * low)
            out.add(Finding.watch(
                            "cavities-unbalanced",
                            say(
                                    "The cavities do not fill together: their feeds take %.1f MPa and %.1f MPa.",
                                    low, high))
                    .remedy("Same length and size of runner to every cavity."));
        else if (feeds.size() > 2)
            out.add(
                    Finding.note(
                            "balanced-by-length",
                            "The cavities are balanced by length only; with more than two, sheared hot melt still favours the inner ones."));
    }

    private void data() {
        if (in.field().reachedShare() < 0.985)
            out.add(Finding.watch(
                            "walls-not-seen",
                            say(
                                    "%.1f %% of the plastic lies in walls too thin for this estimate to follow (it looks in steps of %.2f mm); it may fill worse there.",
                                    100 * (1 - in.field().reachedShare()),
                                    in.field().cellMm()))
                    .measured(
                            100 * (1 - in.field().reachedShare()),
                            1.5,
                            "%",
                            Source.computed("cells against the part's volume")));
        if (!in.melt().grade())
            out.add(Finding.note(
                    "generic-viscosity",
                    say(
                            "Viscosity of %s is that of the family, not of your grade: the pressure may be anything from %.0f to %.0f MPa.",
                            in.melt().name(),
                            r.pressureBandMpa().low(),
                            r.pressureBandMpa().high())));
    }
}
