package shotwright.review;

import shotwright.geom.Vec3;

/**
 * A place where metal of the mold would lie between two layers of the part and could not leave along the pull.
 *
 * @param finding number of the finding that speaks of it; 0 when none does
 * @param at middle of the trapped space, axes of the file
 * @param blocks the half that cannot leave
 * @param shadowMm2 how much of the projected area it takes
 * @param trappedMm3 metal held fast
 * @param heightMm how high the trapped space is, on average along the pull
 * @param ledgeMm how far the part reaches over it, across the pull
 * @param strainPercent how far the part must stretch to be stripped off it
 * @param facets facets that neither half can form
 */
public record Undercut(
        int finding,
        Vec3 at,
        Side blocks,
        double shadowMm2,
        double trappedMm3,
        double heightMm,
        double ledgeMm,
        double strainPercent,
        int[] facets) {
    Undercut withFinding(int number) {
        return new Undercut(number, at, blocks, shadowMm2, trappedMm3, heightMm, ledgeMm, strainPercent, facets);
    }
}
