package shotwright.stock;

import shotwright.measure.Quantity;
import shotwright.measure.QuantityRange;
import shotwright.rack.Rack;

/**
 * A mold alloy.
 *
 * @param id id on the rack
 * @param name name shown
 * @param densityGPerCm3 density
 * @param conductivityWPerMK thermal conductivity
 * @param heatCapacityJPerKgK heat capacity
 * @param modulusGpa elastic modulus
 * @param poissonRatio Poisson's ratio
 * @param expansionPerK linear expansion
 * @param yieldMpa Rp0.2
 * @param allowableMpa stress for a mold that runs long
 * @param shortRunAllowableMpa stress for fewer than 1000 shots
 * @param hotShare share of the strength left at 150 °C
 * @param life what to expect of it, in words
 * @param cutting how it mills, in words
 * @param machinability how it mills, in numbers
 */
public record MoldMaterial(
        String id,
        String name,
        Quantity densityGPerCm3,
        QuantityRange conductivityWPerMK,
        Quantity heatCapacityJPerKgK,
        Quantity modulusGpa,
        Quantity poissonRatio,
        Quantity expansionPerK,
        QuantityRange yieldMpa,
        QuantityRange allowableMpa,
        QuantityRange shortRunAllowableMpa,
        Quantity hotShare,
        String life,
        String cutting,
        Machinability machinability)
        implements Rack.Entry {}
