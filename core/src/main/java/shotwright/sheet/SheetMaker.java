package shotwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import shotwright.fill.FillResult;
import shotwright.measure.Source;
import shotwright.measure.Units;
import shotwright.press.Press;
import shotwright.resin.Resin;

/** Collects and rounds what the stations found into the sheet that starts the press, and holds it to the resin's limits. */
public final class SheetMaker {
    private static final String OURS = "worked out from filling and cooling";
    private static final String PRACTICE = "common practice";

    private final SheetInput in;
    private final Resin r;
    private final SetPoints set;

    private SheetMaker(SheetInput in) {
        this.in = in;
        r = in.resin();
        set = SetPoints.of(in);
    }

    /** Melt temperature the press sheet will ask for, °C; filling and cooling are worked out at it. */
    public static double meltC(Resin resin, Press press) {
        return SetPoints.meltC(resin, press);
    }

    /** Makes the sheet. */
    public static PressSheet make(SheetInput in) {
        return new SheetMaker(in).sheet();
    }

    private PressSheet sheet() {
        List<String> first = new ArrayList<>(in.fill().ladder());
        first.add(
                "Flash at the parting line before the part is full: the faces are not clean or the clamp is low; stop and look.");
        return new PressSheet(
                in.part() + ", " + r.name() + ", " + in.press().name(),
                r.dryC().mid(),
                r.dryH().high(),
                set.rearC(),
                set.middleC(),
                set.frontC(),
                set.nozzleC(),
                set.moldC(),
                in.shotG(),
                in.fill().fillTimeS(),
                set.holdMpa(),
                set.holdS(),
                in.cool().coolingTimeS(),
                in.cool().cycleTimeS(),
                settings(),
                steps(),
                first,
                ChangeOver.sentences(in.before(), r, in.press()),
                Cautions.of(r, in.press(), set.moldC()),
                new SheetFindings(in, set).all());
    }

    private static String say(String format, Object... args) {
        return String.format(Locale.ROOT, format, args);
    }

    private static String seconds(double timeS) {
        return timeS < 1 ? say("%.2f", timeS) : say("%.1f", timeS);
    }

    private static String temp(double c) {
        return say("%.0f °C (%.0f °F)", c, Units.cToF(c));
    }

    private static String source(Source s) {
        return s.toString();
    }

    private List<PressSheet.Setting> settings() {
        List<PressSheet.Setting> out = new ArrayList<>();
        out.add(new PressSheet.Setting(
                "dry",
                say(
                        "%.0f–%.0f °C, %.0f–%.0f h",
                        r.dryC().low(),
                        r.dryC().high(),
                        r.dryH().low(),
                        r.dryH().high()),
                temp(r.dryC().high()),
                source(r.dryC().source()) + "; dry it: " + r.dryNeed()));
        barrel(out);
        out.add(new PressSheet.Setting(
                "mold",
                temp(set.moldC()),
                temp(r.moldC().high()),
                source(r.moldC().source())));
        double kn = Math.max(in.clampNeededKn(), in.fill().clampPeakKn());
        out.add(new PressSheet.Setting(
                "clamp",
                say("%.0f kN (%.1f short tons)", kn, Units.knToShortTons(kn)),
                say("%.0f kN", in.press().usableKn()),
                OURS));
        fillAndHold(out);
        shot(out);
        out.add(new PressSheet.Setting("cycle", say("%.0f s", in.cool().cycleTimeS()), "", OURS + ", ±25 %"));
        return out;
    }

    private void barrel(List<PressSheet.Setting> out) {
        String limit =
                temp(Math.min(r.maxMeltC().value(), in.press().maxBarrelC().value()));
        String from = source(r.settings().nozzleC().source());
        out.add(new PressSheet.Setting("melt, nozzle", temp(set.nozzleC()), limit, from));
        if (in.press().injection() == Press.Injection.PLUNGER) {
            out.add(new PressSheet.Setting(
                    "chamber, whole", temp(set.rearC()), limit, "nozzle value and 5 to 10 K, common practice"));
            return;
        }
        out.add(new PressSheet.Setting("melt, front", temp(set.frontC()), limit, from));
        out.add(new PressSheet.Setting("melt, middle", temp(set.middleC()), limit, from));
        out.add(new PressSheet.Setting("melt, rear", temp(set.rearC()), limit, from));
        out.add(new PressSheet.Setting(
                "back pressure",
                say(
                        "%.1f–%.1f MPa",
                        r.settings().backMpa().low(), r.settings().backMpa().high()),
                "",
                source(r.settings().backMpa().source())));
    }

    private void fillAndHold(List<PressSheet.Setting> out) {
        FillResult f = in.fill();
        String speed = "speed " + r.settings().speed();
        out.add(new PressSheet.Setting(
                "fill time",
                seconds(f.fillTimeS()) + " s",
                seconds(f.fillWindowS().low()) + "–" + seconds(f.fillWindowS().high()) + " s",
                OURS + "; " + speed));
        out.add(new PressSheet.Setting(
                "fill pressure",
                say("about %.0f MPa", f.pressurePeakMpa()),
                say("%.0f MPa", f.pressureAvailableMpa()),
                OURS
                        + say(
                                ", %.0f to %.0f MPa",
                                f.pressureBandMpa().low(), f.pressureBandMpa().high())));
        out.add(new PressSheet.Setting("change over", "95–98 % full", "", PRACTICE));
        out.add(new PressSheet.Setting(
                "hold pressure",
                say("%.0f MPa in the melt", set.holdMpa()),
                say("%.0f MPa", set.holdLimitMpa()),
                source(r.settings().holdMpa().source()) + "; start at half"));
        out.add(new PressSheet.Setting(
                "hold",
                say("%.1f s, then weigh", set.holdS()),
                "",
                "gate seal " + seconds(f.gateSealS()) + " s and 0.75 s more; real gates take 1 to 3 times as long"));
        out.add(new PressSheet.Setting(
                "cooling after hold",
                say("%.0f s", Math.ceil(set.coolS())),
                "",
                OURS
                        + say(
                                "; %.0f s from the end of filling, ±25 %%",
                                Math.ceil(in.cool().coolingTimeS()))));
    }

    private void shot(List<PressSheet.Setting> out) {
        out.add(new PressSheet.Setting(
                "shot",
                say("%.1f g (%.2f oz)", in.shotG(), Units.gToOz(in.shotG())),
                say("%.0f g polystyrene rated", in.press().shotGPs().value()),
                OURS));
        out.add(new PressSheet.Setting(
                "stroke",
                say("%.1f mm", set.strokeMm() + set.cushionMm()),
                say("%.0f mm", in.press().strokeMm().value()),
                say("%.1f mm to fill and the cushion", set.strokeMm())));
        out.add(new PressSheet.Setting(
                "cushion", say("%.0f mm", set.cushionMm()), "above 0 at the end of hold", PRACTICE));
    }

    /** Start-up in order (common practice). */
    private List<String> steps() {
        FillResult f = in.fill();
        return List.of(
                say(
                        "Resin and lot checked; dried at %.0f–%.0f °C for %.0f–%.0f h (dry it: %s; %s).",
                        r.dryC().low(),
                        r.dryC().high(),
                        r.dryH().low(),
                        r.dryH().high(),
                        r.dryNeed(),
                        r.dryMethod()),
                "Last resin known and purged as below.",
                "Mold: faces clean, no burr beside the dowels, vents open, screws tight, nozzle seat fits, thermometer in both halves.",
                say("Mold at %.0f °C, both halves within 3 K.", set.moldC()),
                say(
                        "Barrel up to %.0f °C, 15 to 30 minutes to soak, nozzle last; melt probed on the purge within 10 K.",
                        set.nozzleC()),
                "Shot into the air into a metal tray: smooth, no bubbles, no hiss, no streaks.",
                say(
                        "Clamp %.0f kN; parting faces blued: they touch all round the cavities.",
                        Math.max(in.clampNeededKn(), f.clampPeakKn())),
                say(
                        "First shot at half the stroke (%.0f mm), hold off; then about ten per cent more each shot.",
                        set.strokeMm() / 2),
                "Stop growing at 95 to 98 % full by filling alone.",
                say(
                        "Add hold from %.0f MPa in steps, no higher than %.0f MPa, until sinks are gone or flash starts.",
                        set.holdMpa() / 2, set.holdLimitMpa()),
                say(
                        "Gate seal: same cycle, three shots at each hold time, weigh; set 0.5 to 1 s past where the mass stays (first guess %.1f s).",
                        set.holdS()),
                warmUp(in.cool().warmUpShots()),
                "Three parts of each cavity measured after 16 to 24 h at 23 °C.",
                "End: run empty and leave PE or PP in the barrel; mold dry, oiled, closed without clamp.");
    }

    private static String warmUp(int shots) {
        if (shots == 0) return "Then thirty shots without a touch.";
        return say("%d warm-up %s, not for sale; then thirty without a touch.", shots, shots == 1 ? "shot" : "shots");
    }
}
