package shotwright.sizing;

import static shotwright.sizing.Figures.number;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.measure.Band;
import shotwright.measure.QuantityRange;
import shotwright.measure.Source;
import shotwright.press.Press;
import shotwright.resin.Resin;

/**
 * Clamp of one job three ways. The bare rule counts; nothing is multiplied on top of it. Doubt and allowances live in the band and in the
 * verdict, once.
 *
 * @param shortTonsPerIn2 what was taken per area: 2.5, moved into the resin's own range where that lies elsewhere
 * @param cavitiesKn what the cavities alone ask for
 * @param neededKn with the feed where it is known
 * @param bandKn lowest to highest of all ways, feed estimated where it is not known
 * @param ways the ways
 */
public record ClampNeed(double shortTonsPerIn2, double cavitiesKn, double neededKn, Band bandKn, List<ClampWay> ways) {
    /** Mean over hold pressure when the cavity has just filled (common practice: 0.4 to 0.6). */
    static final double FILLED_SHARE = 0.4;

    /** Mean over hold pressure when it is packed (common practice: 0.7, up to 0.9 in thick walls). */
    static final double PACKED_SHARE = 0.7;

    public ClampNeed {
        ways = List.copyOf(ways);
    }

    static ClampNeed of(Load load, @Nullable Double fillClampKn) {
        Resin resin = load.resin();
        QuantityRange own = resin.clampShortTonsPerIn2();
        double rule = own.clamp(ClampForce.RULE_SHORT_TONS_PER_IN2);
        double known = load.cavityAreaMm2() + load.knownFeedAreaMm2(),
                whole = load.cavityAreaMm2() + load.feedAreaMm2();
        double cavities = ClampForce.ruleKn(load.cavityAreaMm2(), rule), needed = ClampForce.ruleKn(known, rule);
        List<ClampWay> ways = new ArrayList<>();
        ways.add(byRule(resin, rule, known, whole));
        ways.add(byPressure(load.press(), resin, known, whole));
        ways.add(byResin(own, known, whole));
        if (fillClampKn != null)
            ways.add(new ClampWay(
                    "from filling",
                    Band.plusMinus(fillClampKn, 0.4),
                    "highest opening force while the cavity fills and packs",
                    Source.computed("pressure over area of the filling estimate, ±40 %")));
        double low = needed, high = needed;
        for (ClampWay w : ways) {
            low = Math.min(low, w.clampKn().low());
            high = Math.max(high, w.clampKn().high());
        }
        return new ClampNeed(rule, cavities, needed, new Band(low, needed, high), ways);
    }

    private static ClampWay byRule(Resin resin, double rule, double known, double whole) {
        double kn = ClampForce.ruleKn(known, rule);
        String why = rule == ClampForce.RULE_SHORT_TONS_PER_IN2
                ? "2.5 short tons per square inch of projected area"
                : number(rule) + " short tons per square inch: the rule of 2.5 moved into the range of " + resin.name();
        return new ClampWay("rule", new Band(kn, kn, ClampForce.ruleKn(whole, rule)), why, Source.COMMON_PRACTICE);
    }

    private static ClampWay byPressure(Press press, Resin resin, double known, double whole) {
        double top = press.maxMeltMpa().value();
        double hold = Math.min(top, resin.settings().holdMpa().mid());
        double low = FILLED_SHARE * hold, mid = ClampForce.stripMeanShare() * hold, high = PACKED_SHARE * hold;
        return new ClampWay(
                "mean cavity pressure",
                new Band(
                        ClampForce.meanPressureKn(low, known),
                        ClampForce.meanPressureKn(mid, known),
                        ClampForce.meanPressureKn(high, whole)),
                "a hold of " + number(hold) + " MPa on this press leaves " + number(low) + " to " + number(high)
                        + " MPa mean in the cavity",
                Source.commonPractice("0.4 to 0.7 of the hold pressure, one half at the end of filling a strip"));
    }

    private static ClampWay byResin(QuantityRange own, double known, double whole) {
        return new ClampWay(
                "resin table",
                new Band(
                        ClampForce.ruleKn(known, own.low()),
                        ClampForce.ruleKn(known, own.mid()),
                        ClampForce.ruleKn(whole, own.high())),
                number(own.low()) + " to " + number(own.high()) + " short tons per square inch for this resin",
                own.source());
    }
}
