package shotwright.review;

import shotwright.geom.Vec3;

/**
 * A place where metal of the mold would lie between two layers of the part and could not leave along the pull.
 *
 * @param finding number of the finding that speaks of it; 0 when none does
 * @param at middle of the trapped space, axes of the file
 * @param blocks the half that cannot leave
 * @param shadowMm2 how much of the projected area it takes
 * @param trappedMm3 metal that lies behind the part
 * @param inTheWayMm3 plastic between that metal and its way out: what a height map of the half has more than the half itself
 * @param heightMm how high the trapped space is, on average along the pull
 * @param ledgeMm how far the part reaches over it, across the pull
 * @param strainPercent how far the part must stretch to be stripped off it
 * @param hold how firmly it holds
 * @param facets facets that neither half can form
 */
public record Undercut(
        int finding,
        Vec3 at,
        Side blocks,
        double shadowMm2,
        double trappedMm3,
        double inTheWayMm3,
        double heightMm,
        double ledgeMm,
        double strainPercent,
        Hold hold,
        int[] facets) {
    /** How firmly an undercut holds the half that it blocks. Decided here, in the review; the halves go by it. */
    public enum Hold {
        /** The part springs over it unharmed. */
        SPRINGS_OFF,
        /** The half opens, but the part is strained, marked or torn there; the customer is asked. */
        STRAINS_PART,
        /** Metal is locked in: the mold does not open, or the part is destroyed. */
        LOCKS
    }

    Undercut withFinding(int number) {
        return new Undercut(
                number, at, blocks, shadowMm2, trappedMm3, inTheWayMm3, heightMm, ledgeMm, strainPercent, hold, facets);
    }
}
