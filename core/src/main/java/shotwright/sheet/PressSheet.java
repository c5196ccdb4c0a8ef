package shotwright.sheet;

import java.util.List;
import shotwright.finding.Finding;

/**
 * The sheet that starts the press.
 *
 * @param title part, resin, press
 * @param dryC drying temperature
 * @param dryH drying hours
 * @param rearC barrel set-points from the hopper
 * @param middleC middle zone
 * @param frontC front zone
 * @param meltC melt and nozzle temperature
 * @param moldC mold temperature to start at
 * @param shotG shot mass
 * @param fillS fill time
 * @param holdMpa hold pressure in the melt
 * @param holdS hold time
 * @param coolS cooling time
 * @param cycleS whole cycle
 * @param settings every setting as it is written on the sheet
 * @param steps start-up steps in order
 * @param firstShots what the first shots should look like
 * @param purge purging and change-over
 * @param cautions cautions, printed on every copy
 * @param findings what has to be said
 */
public record PressSheet(
        String title,
        double dryC,
        double dryH,
        double rearC,
        double middleC,
        double frontC,
        double meltC,
        double moldC,
        double shotG,
        double fillS,
        double holdMpa,
        double holdS,
        double coolS,
        double cycleS,
        List<Setting> settings,
        List<String> steps,
        List<String> firstShots,
        List<String> purge,
        List<String> cautions,
        List<Finding> findings) {
    /**
     * One line of settings.
     *
     * @param name what is set
     * @param value the value with its unit in both systems where that helps
     * @param notPast the limit that must not be passed, empty when there is none
     * @param source where it comes from
     */
    public record Setting(String name, String value, String notPast, String source) {}

    public PressSheet {
        settings = List.copyOf(settings);
        steps = List.copyOf(steps);
        firstShots = List.copyOf(firstShots);
        purge = List.copyOf(purge);
        cautions = List.copyOf(cautions);
        findings = List.copyOf(findings);
    }
}
