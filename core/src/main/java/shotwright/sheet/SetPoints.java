package shotwright.sheet;

import shotwright.cool.CoolResult;
import shotwright.press.Press;
import shotwright.resin.Resin;

/**
 * The numbers that are set at the press, worked out once.
 *
 * <p>Plunger presses run the whole chamber at the nozzle value and 5 to 10 °C more (common practice, 7.5 here, rounded to 5). Shot volume
 * V = m/ρm·(1 + leak), stroke s = 4V/(πD²), utilisation u = m/m_max with m_max = rated·ρm/ρ_PS (common practice, 2.5; App. A
 * F08 to F10). Hold: the middle of the resin's start range, no more than 80 % of the fill peak when that is known to be
 * higher, than the press gives, or than the clamp stands. Hold time: gate seal and 0.75 s.
 */
record SetPoints(
        double rearC,
        double middleC,
        double frontC,
        double nozzleC,
        double moldC,
        double holdMpa,
        double holdLimitMpa,
        double holdS,
        double coolS,
        double shotMm3,
        double strokeMm,
        double cushionMm,
        double usedShare,
        double residenceMin) {
    /** Melt density polystyrene presses are rated with, g/cm³ (middle of 0.94 to 0.97). */
    private static final double RATED_G_PER_CM3 = 0.955;

    private static final double PLUNGER_MORE_K = 7.5;
    private static final double PLUNGER_LEAK = 0.035;
    private static final double SCREW_LEAK = 0.02;
    private static final double AFTER_SEAL_S = 0.75;
    private static final double CLAMP_KEEP = 0.95;

    static SetPoints of(SheetInput in) {
        Resin r = in.resin();
        Press p = in.press();
        boolean plunger = p.injection() == Press.Injection.PLUNGER;
        double nozzle = meltC(r, p);
        double rear = plunger ? nozzle : r.settings().rearC().value();
        double middle = plunger ? nozzle : r.settings().middleC().value();
        double front = plunger ? nozzle : r.settings().frontC().value();
        double density = r.meltDensityGPerCm3(nozzle, 50);
        double volume = in.shotG() / density * 1000 * (1 + (plunger ? PLUNGER_LEAK : SCREW_LEAK));
        double bore = p.plungerDiaMm().value(), stroke = 4 * volume / (Math.PI * bore * bore);
        double used = in.shotG() / (p.shotGPs().value() * density / RATED_G_PER_CM3);
        double holdLimit = holdLimit(in), hold = Math.min(r.settings().holdMpa().mid(), holdLimit);
        double holdS = in.fill().gateSealS() + AFTER_SEAL_S;
        return new SetPoints(
                rear,
                middle,
                front,
                nozzle,
                moldC(r, in.cool()),
                hold,
                holdLimit,
                holdS,
                Math.max(0, in.cool().coolingTimeS() - holdS),
                volume,
                stroke,
                plunger ? 2 : Math.clamp(0.08 * stroke, 2, 6),
                used,
                in.residenceS() / 60);
    }

    /** Melt temperature to start at: the nozzle value, for a plunger 5 to 10 °C more, inside the resin's window and what the press reaches. */
    static double meltC(Resin r, Press p) {
        double more = p.injection() == Press.Injection.PLUNGER ? PLUNGER_MORE_K : 0;
        double set = 5 * Math.round((r.settings().nozzleC().value() + more) / 5);
        double most = Math.min(
                Math.max(r.meltC().high(), r.settings().nozzleC().value()),
                r.maxMeltC().value());
        return Math.min(Math.min(set, most), p.maxBarrelC().value());
    }

    private static double moldC(Resin r, CoolResult cool) {
        return r.moldC().clamp(Math.max(cool.moldTargetC(), r.moldC().low()));
    }

    /** The most hold the press, the fill peak and the clamp allow. */
    private static double holdLimit(SheetInput in) {
        double byPress = in.press().maxMeltMpa().value();
        double byClamp = Double.POSITIVE_INFINITY, holdKn = in.fill().clampHoldKn();
        // clampHoldKn belongs to the hold the filling was worked out with: the middle of the resin's range, as far as
        // the press goes
        double planned = Math.min(in.resin().settings().holdMpa().mid(), byPress);
        if (holdKn > 0) byClamp = CLAMP_KEEP * planned * in.press().usableKn() / holdKn;
        return Math.min(
                Math.min(byPress, byClamp), in.resin().settings().holdMpa().high());
    }
}
