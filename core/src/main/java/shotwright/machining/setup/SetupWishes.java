package shotwright.machining.setup;

/**
 * What the setups must leave room for.
 *
 * @param facingDiaMm diameter of the cutter that faces
 * @param outsideDiaMm diameter of the cutter that mills the outside
 * @param deepestSideMm how far features on the sides reach below the parting face: vents, runner or nozzle at the edge, pry slots
 * @param deepestCutMm how far any cut goes below the face that lies up
 * @param longestStickoutMm stickout of the longest cutter
 * @param shortestStickoutMm stickout of the shortest cutter
 * @param sideForceN greatest side force of a cut
 */
public record SetupWishes(
        double facingDiaMm,
        double outsideDiaMm,
        double deepestSideMm,
        double deepestCutMm,
        double longestStickoutMm,
        double shortestStickoutMm,
        double sideForceN) {
    public SetupWishes {
        if (!(facingDiaMm > 0 && outsideDiaMm > 0 && deepestSideMm >= 0 && deepestCutMm > 0 && sideForceN >= 0))
            throw new IllegalArgumentException("wishes: diameters and depth must be above zero");
        if (!(longestStickoutMm >= shortestStickoutMm && shortestStickoutMm > 0))
            throw new IllegalArgumentException(
                    "stickouts from " + shortestStickoutMm + " to " + longestStickoutMm + " mm");
    }
}
