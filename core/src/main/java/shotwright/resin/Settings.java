package shotwright.resin;

import shotwright.measure.Quantity;
import shotwright.measure.QuantityRange;

/**
 * Start settings of a screw press; a plunger press takes the nozzle value for its whole chamber and 5 to 10 °C more.
 *
 * @param rearC zone at the hopper
 * @param middleC middle zone
 * @param frontC zone at the nozzle
 * @param nozzleC nozzle
 * @param moldC mold
 * @param holdMpa hold pressure in the melt
 * @param backMpa back pressure in the melt
 * @param speed how fast to inject, in words
 * @param notes what else to mind, in words
 */
public record Settings(
        Quantity rearC,
        Quantity middleC,
        Quantity frontC,
        Quantity nozzleC,
        Quantity moldC,
        QuantityRange holdMpa,
        QuantityRange backMpa,
        String speed,
        String notes) {}
