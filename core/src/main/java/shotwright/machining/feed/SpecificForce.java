package shotwright.machining.feed;

import java.util.List;
import shotwright.measure.Band;
import shotwright.stock.Machinability;

/**
 * Force per square millimetre of chip, N/mm², by three accepted ways that differ by up to two and more: the band they give is kept.
 *
 * <p>Power law kc = kc1·h^(−mc) (key VDI3323); edge forces kc = Ktc + Kte/h, a chip of thickness h having an edge of 1/h of its area (key
 * AVAL); unit power times its factor for thin chips (key MHB, from memory). h is the chip's thickness in mm. Below 0.01 mm the power law is a
 * lower bound; without edge forces on the rack the upper end is then twice the power law.
 */
public final class SpecificForce {
    /** Thickness from which on the unit power's factor for thin chips is tabled: 0.001 in. */
    private static final double UNIT_POWER_FROM_MM = 0.0254;

    private static final List<Double> FACTOR_AT_MM = List.of(0.0254, 0.0508, 0.0762, 0.1016);
    private static final List<Double> THIN_FACTOR = List.of(1.6, 1.4, 1.3, 1.25);

    private SpecificForce() {}

    /** kc1·h^(−mc). */
    public static double powerLawNPerMm2(double kc1NPerMm2, double mcExponent, double chipMm) {
        if (!(chipMm > 0)) throw new IllegalArgumentException("chipMm: " + chipMm + " is not above zero");
        return kc1NPerMm2 * Math.pow(chipMm, -mcExponent);
    }

    /** Ktc + Kte/h. */
    public static double edgeNPerMm2(double cuttingNPerMm2, double edgeNPerMm, double chipMm) {
        if (!(chipMm > 0)) throw new IllegalArgumentException("chipMm: " + chipMm + " is not above zero");
        return cuttingNPerMm2 + edgeNPerMm / chipMm;
    }

    /** Unit power times the factor for thin chips, J/mm³ being 1000 N/mm²; from 0.0254 mm on. */
    static double unitPowerNPerMm2(double unitPowerJPerMm3, double chipMm) {
        return 1000 * unitPowerJPerMm3 * FeedTable.interpolate(FACTOR_AT_MM, THIN_FACTOR, chipMm);
    }

    /** By the power law, between the lowest and the highest of all ways known for the alloy. */
    public static Band bandNPerMm2(Machinability alloy, double chipMm) {
        double law =
                powerLawNPerMm2(alloy.kc1NPerMm2().value(), alloy.mcExponent().value(), chipMm);
        double low = law, high = alloy.edgeForces().isEmpty() ? 2 * law : law;
        for (Machinability.EdgeForce e : alloy.edgeForces()) {
            double edge = edgeNPerMm2(
                    e.tangentialNPerMm2().value(), e.tangentialEdgeNPerMm().value(), chipMm);
            low = Math.min(low, edge);
            high = Math.max(high, edge);
        }
        if (chipMm >= UNIT_POWER_FROM_MM) {
            double unit = unitPowerNPerMm2(alloy.unitPowerJPerMm3().value(), chipMm);
            low = Math.min(low, unit);
            high = Math.max(high, unit);
        }
        return new Band(low, law, high);
    }

    /**
     * Mean forces on the cutter while it mills a slot with z teeth, N: along the feed F = z·ap·(Krc·fz/4 + Kre/π) against it, across it
     * F = z·ap·(Ktc·fz/4 + Kte/π). Average-force model of milling (Altintas), full slot.
     *
     * @param cuttingNPerMm2 Ktc or Krc
     * @param edgeNPerMm Kte or Kre
     */
    public static double meanSlotN(
            double cuttingNPerMm2, double edgeNPerMm, int teeth, double depthMm, double feedPerToothMm) {
        return teeth * depthMm * (cuttingNPerMm2 * feedPerToothMm / 4 + edgeNPerMm / Math.PI);
    }
}
