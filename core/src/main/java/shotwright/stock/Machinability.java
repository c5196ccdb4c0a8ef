package shotwright.stock;

import java.util.List;
import shotwright.measure.Quantity;
import shotwright.measure.QuantityRange;

/**
 * How an alloy cuts.
 *
 * @param hardnessHb Brinell hardness
 * @param kc1NPerMm2 specific cutting force at a chip of 1 mm
 * @param mcExponent by which power of the chip's thickness it falls
 * @param unitPowerJPerMm3 energy to cut a volume, before the factor for thin chips
 * @param edgeForces forces by chip area and edge length, one set for each measurement known; may be none
 * @param carbideMPerMin surface speed of carbide cutters
 * @param hssMPerMin surface speed of high-speed steel cutters
 * @param drillMPerMin surface speed of high-speed steel drills; carbide takes twice as much
 * @param reamMPerMin surface speed of high-speed steel reamers
 * @param feedTable id of the table of chip loads and depths
 */
public record Machinability(
        QuantityRange hardnessHb,
        Quantity kc1NPerMm2,
        Quantity mcExponent,
        Quantity unitPowerJPerMm3,
        List<EdgeForce> edgeForces,
        QuantityRange carbideMPerMin,
        QuantityRange hssMPerMin,
        QuantityRange drillMPerMin,
        QuantityRange reamMPerMin,
        String feedTable) {
    /**
     * Forces of one measurement: F = K·a + K_e·b, a area of the chip, b length of edge in the cut.
     *
     * @param name what was cut
     * @param tangentialNPerMm2 K along the speed
     * @param tangentialEdgeNPerMm K_e along the speed
     * @param radialNPerMm2 K towards the axis
     * @param radialEdgeNPerMm K_e towards the axis
     */
    public record EdgeForce(
            String name,
            Quantity tangentialNPerMm2,
            Quantity tangentialEdgeNPerMm,
            Quantity radialNPerMm2,
            Quantity radialEdgeNPerMm) {}

    public Machinability {
        edgeForces = List.copyOf(edgeForces);
        if (!(kc1NPerMm2.value() > 0)) throw new IllegalArgumentException("kc1NPerMm2: must be above zero");
        if (!(mcExponent.value() > 0 && mcExponent.value() < 1))
            throw new IllegalArgumentException("mcExponent: " + mcExponent.value() + " is not between 0 and 1");
    }
}
