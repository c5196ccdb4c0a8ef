package shotwright.report;

import java.util.LinkedHashMap;
import java.util.Map;
import shotwright.cool.CoolResult;
import shotwright.fill.FillResult;

/** Says filling and cooling in rows of words and numbers. */
final class FlowText {
    private FlowText() {}

    static Map<String, String> fillRows(FillResult f, Numbers show) {
        Map<String, String> rows = new LinkedHashMap<>();
        String verdict =
                switch (f.verdict()) {
                    case FILLS -> "fills";
                    case DOUBTFUL -> "may stay short";
                    case SHORT -> "stays short";
                };
        rows.put(
                "Fill",
                "first-order estimate: " + verdict + " in " + Numbers.time(f.fillTimeS()) + " (window "
                        + Numbers.time(f.fillWindowS().low()) + " to "
                        + Numbers.time(f.fillWindowS().high()) + "); takes " + show.pressure(f.pressureBandMpa())
                        + " of the " + show.pressure(f.pressureAvailableMpa())
                        + " the press gives");
        rows.put(
                "Flow",
                show.coarse(f.flowLengthMm()) + " from the gate to the last corner, "
                        + Numbers.figures(f.flowLengthRatio(), 2) + " times the wall; this resin reaches about "
                        + Numbers.figures(f.flowLengthLimitRatio(), 2) + " times here");
        rows.put("Gate seals", "after about " + Numbers.time(f.gateSealS()));
        rows.put("Pushed open", "by " + show.force(f.clampPeakKn()) + " at the worst moment");
        return rows;
    }

    static Map<String, String> coolRows(CoolResult c, Numbers show) {
        Map<String, String> rows = new LinkedHashMap<>();
        rows.put(
                "Cooling",
                "first-order estimate: " + Numbers.time(c.coolingTimeS()) + " ("
                        + Numbers.time(c.coolingBandS().low()) + " to "
                        + Numbers.time(c.coolingBandS().high()) + "), cycle " + Numbers.time(c.cycleTimeS()));
        rows.put("Mold runs at", moldRuns(c, show));
        return rows;
    }

    private static String moldRuns(CoolResult c, Numbers show) {
        String alone = show.temperature(c.moldSteadyC()),
                held = show.temperature(c.moldByShotC().getLast());
        String wants = "the resin wants " + show.temperature(c.moldTargetC());
        if (c.pauseS() > 0)
            return held + " at the most, with a pause of " + Numbers.time(c.pauseS())
                    + " a shot; without pauses it would reach " + alone + "; " + wants;
        boolean heated = c.warmUpShots() == 0 && c.moldByShotC().getLast() > c.moldSteadyC() + 1;
        return heated
                ? held + " when heated; left alone it would settle at " + alone + "; " + wants
                : alone + warmUp(c.warmUpShots()) + "; " + wants;
    }

    private static String warmUp(int shots) {
        return switch (shots) {
            case 0 -> " from the first shot";
            case 1 -> " after about 1 shot";
            default -> " after about " + shots + " shots";
        };
    }
}
