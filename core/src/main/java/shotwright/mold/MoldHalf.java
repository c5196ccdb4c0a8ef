package shotwright.mold;

import shotwright.layout.Half;
import shotwright.mesh.TriMesh;

/**
 * One finished half as a closed solid in the mold frame.
 *
 * @param half A or B
 * @param mesh closed facets, mm
 * @param plain the half before feed, vents and holes are cut: cavity and parting face alone
 * @param volumeMm3 metal that remains
 * @param openEdges unmatched edges; 0 or the half is not delivered
 * @param lockShare share of the columns under the part where this half is not one piece of metal
 * @param opening whether it comes off the part
 */
public record MoldHalf(
        Half half, TriMesh mesh, TriMesh plain, double volumeMm3, int openEdges, double lockShare, Opening opening) {
    /** False when undercuts lock it. */
    public boolean canOpen() {
        return opening != Opening.LOCKED;
    }
}
