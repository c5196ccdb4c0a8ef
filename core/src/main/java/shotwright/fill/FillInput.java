package shotwright.fill;

import shotwright.layout.LayoutResult;

/**
 * What station 60 needs.
 *
 * @param melt the resin at its set-points
 * @param press the press
 * @param layout gates, feed, vents and cavities
 * @param field the part's own flow picture from the gate of cavity 1
 * @param cavityVolumeMm3 volume of one cavity
 * @param projectedAreaMm2 projected area of one cavity
 * @param holdMpa hold pressure planned, in the melt
 * @param fillTimeS fill time wanted by a person, 0 to let the scan choose
 */
public record FillInput(
        Melt melt,
        PressLimits press,
        LayoutResult layout,
        FlowField field,
        double cavityVolumeMm3,
        double projectedAreaMm2,
        double holdMpa,
        double fillTimeS) {
    public FillInput {
        if (layout.cavities().isEmpty()) throw new IllegalArgumentException("layout: has no cavity");
        if (!(cavityVolumeMm3 > 0))
            throw new IllegalArgumentException("cavity volume: " + cavityVolumeMm3 + " mm³ is not above zero");
    }
}
