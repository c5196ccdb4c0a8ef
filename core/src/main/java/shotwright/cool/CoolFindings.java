package shotwright.cool;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import shotwright.finding.Finding;
import shotwright.measure.Source;
import shotwright.resin.Resin;

/** Says what the cooling estimate means. */
final class CoolFindings {
    private static final Source METHOD =
            Source.computed("conduction through the wall; heat balance of the mold as one lump");
    private static final double HEAT_UP_S = 900;
    /** Seconds a shot that are worth a change of the part. */
    private static final double WORTH_S = 3;

    private final CoolInput in;
    private final FirstOrderCool.Run run;
    private final CoolResult r;
    private final List<Finding> out = new ArrayList<>();

    CoolFindings(CoolInput in, FirstOrderCool.Run run, CoolResult bare) {
        this.in = in;
        this.run = run;
        this.r = bare;
    }

    CoolResult complete() {
        moldTemperature();
        thickSpot();
        feed();
        warmUp();
        return new CoolResult(
                r.resin(),
                r.coolingTimeS(),
                r.coolingBandS(),
                r.regions(),
                r.cycleTimeS(),
                r.cycle(),
                r.moldSteadyC(),
                r.moldTargetC(),
                r.warmUpShots(),
                r.moldByShotC(),
                r.pauseS(),
                out);
    }

    private static String say(String format, Object... args) {
        return String.format(Locale.ROOT, format, args);
    }

    /** Heater power that brings the mold to a temperature in a quarter of an hour and holds it there, W. */
    private double heaterW() {
        LumpedMold l = run.lump();
        double rise = run.moldC() - in.roomC();
        return l.massKg() * l.heatCapacityJPerKgK() * rise / HEAT_UP_S + l.lossWPerK() * rise;
    }

    private void moldTemperature() {
        Resin resin = in.resin();
        switch (run.held()) {
            case HEATED ->
                out.add(Finding.watch(
                                "mold-wants-heat",
                                say(
                                        "Left alone the mold settles at about %.0f °C; %s wants %.0f to %.0f °C.",
                                        r.moldSteadyC(),
                                        resin.name(),
                                        resin.moldC().low(),
                                        resin.moldC().high()))
                        .measured(
                                r.moldSteadyC(),
                                resin.moldC().low(),
                                "°C",
                                resin.moldC().source())
                        .remedy(say(
                                "Heat it: about %.0f W bring it to %.0f °C in 15 minutes and hold it.",
                                heaterW(), run.moldC())));
            case BY_PAUSES ->
                out.add(Finding.watch(
                                "mold-gets-hot",
                                say(
                                        "Without a pause the mold climbs to about %.0f °C; parts stick, sink and change size above %.0f °C.",
                                        r.moldSteadyC(), run.moldC()))
                        .measured(r.moldSteadyC(), run.moldC(), "°C", METHOD)
                        .remedy(say(
                                "A pause of %.0f s each shot%s, or a heavier block.",
                                r.pauseS(), in.press().fan() ? "" : ", a fan on the mold")));
            case BY_ITSELF ->
                out.add(Finding.note(
                                "mold-settles",
                                say(
                                        "The mold settles at about %.0f °C by itself, inside what %s wants (%.0f to %.0f °C).",
                                        r.moldSteadyC(),
                                        resin.name(),
                                        resin.moldC().low(),
                                        resin.moldC().high()))
                        .measured(r.moldSteadyC(), "°C", METHOD));
        }
    }

    private void thickSpot() {
        WallClasses.WallClass thickest = WallClasses.of(in.walls()).getLast();
        if (!thickest.name().equals("thickest place")) return;
        double usual = r.regions().stream()
                .filter(x -> x.name().equals("usual wall"))
                .mapToDouble(CoolResult.Region::timeS)
                .findFirst()
                .orElse(r.coolingTimeS());
        if (r.coolingTimeS() < 1.5 * usual || r.coolingTimeS() - usual < WORTH_S) return;
        out.add(Finding.watch(
                        "thick-spot-rules-cooling",
                        say(
                                "A place %.1f mm thick rules the cooling: %.0f s where the usual wall needs %.0f s.",
                                thickest.wallMm(), r.coolingTimeS(), usual))
                .at(thickest.atMm())
                .measured(r.coolingTimeS(), usual, "s", METHOD)
                .remedy(
                        "Core it out to the usual wall.",
                        "",
                        say("About %.0f s each shot.", r.coolingTimeS() - usual)));
    }

    private void feed() {
        for (CoolResult.Region x : r.regions()) {
            if (!x.name().startsWith("feed") || x.timeS() <= r.coolingTimeS()) continue;
            out.add(Finding.note(
                    "feed-cools-longest",
                    say(
                            "The feed (%.1f mm) needs about %.0f s until it can be taken hold of, longer than the part; take the part out first or let it string.",
                            x.wallMm(), x.timeS())));
        }
    }

    private void warmUp() {
        if (r.warmUpShots() > 0)
            out.add(Finding.note(
                    "warm-up",
                    say(
                            "The first %d shots warm the mold by %.0f K; do not measure or sell them.",
                            r.warmUpShots(), Math.abs(r.moldByShotC().getLast() - in.roomC()))));
        if (run.moldC() > 60)
            out.add(Finding.note(
                    "hot-mold", say("The mold runs at about %.0f °C: gloves when it is opened.", run.moldC())));
    }
}
