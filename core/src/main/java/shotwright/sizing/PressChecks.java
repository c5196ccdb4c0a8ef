package shotwright.sizing;

import static shotwright.sizing.Figures.kn;
import static shotwright.sizing.Figures.number;
import static shotwright.sizing.Figures.percent;
import static shotwright.sizing.PressCheck.Subject.CLAMP;
import static shotwright.sizing.PressCheck.Subject.CYCLE;
import static shotwright.sizing.PressCheck.Subject.EJECTION;
import static shotwright.sizing.PressCheck.Subject.ENTRY;
import static shotwright.sizing.PressCheck.Subject.ENVELOPE;
import static shotwright.sizing.PressCheck.Subject.PRESSURE;
import static shotwright.sizing.PressCheck.Subject.SHOT;
import static shotwright.sizing.PressCheck.Subject.SPEED;
import static shotwright.sizing.PressCheck.Subject.TEMPERATURE;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.measure.Quantity;
import shotwright.measure.Source;
import shotwright.press.MoldSize;
import shotwright.press.Press;
import shotwright.resin.Resin;

/** Asks one press everything, in the order in which a mold maker would give up on it. */
final class PressChecks {
    /** Nameplate over need from which a press has room to spare (common practice: allowance of 1.1 to 1.2). */
    static final double SPARE_FACTOR = 1.2;

    /** How far cavities and feed together may go over the nameplate while the cavities alone do not: what the rule is worth. */
    static final double FEED_OVER_FACTOR = 1.1;

    /** What the rough melt pressure is worth: ±40 % in flow length is a factor of two in pressure. */
    static final double ROUGH_FACTOR = 2;

    private static final Source RULE =
            Source.commonPractice("2.5 short tons per square inch; 1.2 over the need is room to spare");
    private static final Source BLOCK = Source.commonPractice("least block before the layout");

    private PressChecks() {}

    static PressVerdict of(Load load, ClampNeed need, Press.@Nullable NozzleMeets entryOfOurs) {
        List<PressCheck> checks = new ArrayList<>();
        checks.add(clamp(load, need));
        if (entryOfOurs != null) checks.add(entry(load.press(), entryOfOurs));
        checks.add(envelope(load));
        checks.add(shot(load));
        checks.add(pressure(load));
        checks.add(speed(load));
        checks.add(temperature(load));
        checks.add(ejection(load));
        checks.add(cycle(load));
        return PressVerdict.of(load.press(), checks);
    }

    /** Need over nameplate up to which there is room to spare: the press's own share or 1/1.2, whichever asks for more; never both. */
    static double spareShare(Press press) {
        return Math.min(press.usableShare().value(), 1 / SPARE_FACTOR);
    }

    private static PressCheck clamp(Load load, ClampNeed need) {
        Press press = load.press();
        double has = press.nameplateKn();
        boolean over = need.cavitiesKn() > has || need.neededKn() > FEED_OVER_FACTOR * has;
        Verdict v = over ? Verdict.NO : need.neededKn() > spareShare(press) * has ? Verdict.TIGHT : Verdict.FITS;
        String up = load.cavitiesCount() == 1 ? "" : load.cavitiesCount() + " up ";
        String estimate = press.clampIsEstimate() ? ", itself only an estimate from the torque on the vise" : "";
        String words =
                switch (v) {
                    case FITS -> "Clamp: " + up + "needs " + kn(need.neededKn()) + " of " + kn(has) + estimate + ".";
                    case TIGHT ->
                        "Clamp: " + up + "needs " + kn(need.neededKn()) + " of " + kn(has) + estimate
                                + ", so the usual allowance is used up; it may flash at full pressure.";
                    case NO ->
                        "Clamp: " + up + "needs " + kn(need.neededKn()) + " but the press has " + kn(has) + estimate
                                + "; the mold would open and flash.";
                };
        return check(CLAMP, v, words, need.neededKn(), has, "kN", RULE);
    }

    private static PressCheck entry(Press press, Press.NozzleMeets ours) {
        boolean same = press.nozzleMeets() == ours;
        String words = same
                ? "Nozzle entry: the nozzle meets the mold "
                        + press.nozzleMeets().words() + ", as on our press."
                : "Nozzle entry: this nozzle meets the mold "
                        + press.nozzleMeets().words() + ", ours " + ours.words()
                        + "; one mold cannot be fed both ways.";
        return check(
                ENTRY,
                same ? Verdict.FITS : Verdict.NO,
                words,
                1,
                same ? 1 : 0,
                "1",
                Source.computed("the presses' own nozzles"));
    }

    private static PressCheck envelope(Load load) {
        MoldEstimate mold = load.mold();
        MoldSize most = load.press().moldMaxMm();
        double wide = mold.widthMm() - most.widthMm().value(),
                high = mold.heightMm() - most.heightMm().value();
        double thick = mold.thicknessMm() - most.thicknessMm().value();
        double face = Math.max(wide, high);
        boolean daylight = load.press().fixtureGuided()
                && mold.thicknessMm() + load.input().depthMm()
                        > load.press().daylightMm().value();
        boolean no = face > 2 * MoldEstimate.GIVE_MM || thick > 0 || daylight;
        Verdict v = no ? Verdict.NO : face > 0 ? Verdict.TIGHT : Verdict.FITS;
        String size =
                number(most.widthMm().value()) + " × " + number(most.heightMm().value()) + " × "
                        + number(most.thicknessMm().value()) + " mm";
        String words = "Mold size: about " + mold.words() + " of at most " + size;
        if (face > 0 || thick > 0)
            words += no
                    ? "; it is " + number(Math.max(face, thick)) + " mm too large."
                    : "; it goes in only with thinner walls round the cavities.";
        else if (daylight)
            words += "; the press opens " + number(load.press().daylightMm().value())
                    + " mm, too little to take the part out.";
        else words += ".";
        if (thick > face && thick > 0)
            return check(
                    ENVELOPE, v, words, mold.thicknessMm(), most.thicknessMm().value(), "mm", BLOCK);
        return wide >= high
                ? check(ENVELOPE, v, words, mold.widthMm(), most.widthMm().value(), "mm", BLOCK)
                : check(ENVELOPE, v, words, mold.heightMm(), most.heightMm().value(), "mm", BLOCK);
    }

    private static PressCheck shot(Load load) {
        double used = load.utilisationShare();
        double swept = load.injectedCm3() / load.press().sweptCm3();
        boolean little = used < 0.2 && !load.plunger();
        Verdict v = Math.max(used, swept) > 1
                ? Verdict.NO
                : little || used > 0.8 || swept > 0.9 ? Verdict.TIGHT : Verdict.FITS;
        String base = "Shot: " + number(load.shotG()) + " g is " + percent(used) + " of the " + number(load.ratingG())
                + " g this press shoots of " + load.resin().name();
        String words =
                switch (v) {
                    case FITS -> base + (used < 0.2 ? "; charge the chamber for a few shots only." : ".");
                    case NO ->
                        swept > 1 && used <= 1
                                ? base + ", but it needs " + number(load.injectedCm3()) + " cm³ of the "
                                        + number(load.press().sweptCm3()) + " cm³ of its stroke."
                                : base + "; it is too small.";
                    case TIGHT ->
                        base
                                + (little
                                        ? "; so little leaves the melt long in the barrel."
                                        : "; so much leaves little cushion and uneven melt.");
                };
        return check(
                SHOT, v, words, load.shotG(), load.ratingG(), "g", Source.commonPractice("20 to 80 % of the rating"));
    }

    private static PressCheck pressure(Load load) {
        Resin resin = load.resin();
        double has = load.press().maxMeltMpa().value(), rough = load.roughMpa();
        double least = resin.minUsefulMpa().low(), good = resin.minUsefulMpa().high();
        Verdict byResin = has < least ? Verdict.NO : has < good ? Verdict.TIGHT : Verdict.FITS;
        Verdict byPart =
                rough > ROUGH_FACTOR * has ? Verdict.NO : rough > has / ROUGH_FACTOR ? Verdict.TIGHT : Verdict.FITS;
        String words;
        if (byResin == Verdict.NO || (byResin == Verdict.TIGHT && byPart == Verdict.FITS))
            words = "Melt pressure: the press reaches " + number(has) + " MPa; " + resin.name() + " wants "
                    + number(least) + " to " + number(good) + " MPa.";
        else
            words = "Melt pressure: " + number(load.flowLengthMm()) + " mm of flow in a "
                    + number(load.input().wallMm())
                    + " mm wall asks for roughly " + (rough < 10 ? "less than 10" : number(rough))
                    + " MPa, within a factor of two, of "
                    + number(has) + " MPa"
                    + (byPart == Verdict.NO
                            ? "; it would not fill."
                            : byPart == Verdict.TIGHT ? "; the filling estimate decides." : ".");
        return check(
                PRESSURE,
                byResin.and(byPart),
                words,
                Math.max(rough, least),
                has,
                "MPa",
                resin.minUsefulMpa().source());
    }

    private static PressCheck speed(Load load) {
        double fills = load.leastFillS(), freezes = load.freezeS();
        double share = fills / freezes;
        Verdict v = share > 1.5 ? Verdict.NO : share > 0.5 ? Verdict.TIGHT : Verdict.FITS;
        String words =
                "Filling speed: " + number(load.injectedCm3()) + " cm³ take at least " + number(fills) + " s, the "
                        + number(load.input().wallMm()) + " mm wall freezes through in about " + number(freezes) + " s"
                        + (v == Verdict.FITS
                                ? "."
                                : v == Verdict.TIGHT
                                        ? "; fill hot and at full speed."
                                        : "; it would freeze before it is full.");
        return check(SPEED, v, words, fills, freezes, "s", Source.commonPractice("fill within half the freezing time"));
    }

    private static PressCheck temperature(Load load) {
        double has = load.press().maxBarrelC().value(), wants = load.meltC();
        Verdict v = has < load.resin().meltC().low() ? Verdict.NO : has < wants ? Verdict.TIGHT : Verdict.FITS;
        String words = "Temperature: " + load.resin().name() + " wants " + number(wants) + " °C, the barrel reaches "
                + number(has) + " °C" + (v == Verdict.TIGHT ? "; it runs at the cold end of its window." : ".");
        return check(
                TEMPERATURE, v, words, wants, has, "°C", load.resin().meltC().source());
    }

    private static PressCheck ejection(Load load) {
        Press press = load.press();
        if (!press.fixtureGuided()) {
            String words = "Taking out: " + press.release().words() + ".";
            return check(
                    EJECTION,
                    Verdict.FITS,
                    words,
                    0,
                    0,
                    "mm",
                    press.openStrokeMm().source());
        }
        double needs = 2 * load.input().depthMm() + 10,
                has = press.openStrokeMm().value();
        Verdict v = needs > has ? Verdict.NO : Verdict.FITS;
        String words = "Taking out: " + press.release().words() + "; the part and a hand need " + number(needs)
                + " mm of the " + number(has) + " mm the press opens.";
        return check(
                EJECTION, v, words, needs, has, "mm", Source.commonPractice("twice the depth of the part and 10 mm"));
    }

    private static PressCheck cycle(Load load) {
        double min = load.residenceS() / 60, limit = load.resin().residenceMin().value();
        int shots = load.chargeShots();
        Verdict v = load.plunger()
                ? shots < 1 ? Verdict.NO : shots < 2 ? Verdict.TIGHT : Verdict.FITS
                : min > 3 * limit ? Verdict.NO : min > limit ? Verdict.TIGHT : Verdict.FITS;
        String words = "Time in the barrel: about " + number(min) + " min at a cycle of " + number(load.cycleS())
                + " s, " + load.resin().name() + " may stay " + number(limit) + " min";
        if (load.plunger())
            words += shots < 1 ? "; even one shot stays too long." : "; charge for " + Math.min(shots, 3) + " at most.";
        else
            words += v == Verdict.FITS
                    ? "."
                    : v == Verdict.TIGHT ? "; purge between shots or take a smaller barrel." : "; it would burn.";
        return check(
                CYCLE, v, words, min, limit, "min", load.resin().residenceMin().source());
    }

    private static PressCheck check(
            PressCheck.Subject subject,
            Verdict v,
            String words,
            double needed,
            double available,
            String unit,
            Source source) {
        Source ours = Source.computed("this station");
        return new PressCheck(
                subject, v, words, new Quantity(needed, unit, ours), new Quantity(available, unit, source));
    }
}
