package shotwright.cool;

import java.util.List;
import shotwright.finding.Finding;
import shotwright.measure.Band;

/**
 * First-order answer of station 70.
 *
 * @param resin id of the resin
 * @param coolingTimeS longest cooling time over the regions that must be firm to eject
 * @param coolingBandS its band
 * @param regions cooling by region
 * @param cycleTimeS close, inject, cool, open, take out, reload
 * @param cycle pieces of the cycle
 * @param moldSteadyC mold temperature it settles at without pauses
 * @param moldTargetC mold temperature the resin wants
 * @param warmUpShots shots until it repeats within 2 K
 * @param moldByShotC mold temperature after each shot, starting from the room
 * @param pauseS pause per shot that keeps the mold at its limit, 0 when none is needed
 * @param findings what has to be said
 */
public record CoolResult(
        String resin,
        double coolingTimeS,
        Band coolingBandS,
        List<Region> regions,
        double cycleTimeS,
        List<CyclePiece> cycle,
        double moldSteadyC,
        double moldTargetC,
        int warmUpShots,
        List<Double> moldByShotC,
        double pauseS,
        List<Finding> findings) {
    /**
     * A region of like wall.
     *
     * @param name which, in words
     * @param wallMm its wall
     * @param areaShare share of the part's surface
     * @param timeS cooling time
     */
    public record Region(String name, double wallMm, double areaShare, double timeS) {}

    /**
     * A piece of the cycle.
     *
     * @param name which, in words
     * @param timeS how long
     */
    public record CyclePiece(String name, double timeS) {}

    public CoolResult {
        regions = List.copyOf(regions);
        cycle = List.copyOf(cycle);
        moldByShotC = List.copyOf(moldByShotC);
        findings = List.copyOf(findings);
    }
}
