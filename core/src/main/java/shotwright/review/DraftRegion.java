package shotwright.review;

import shotwright.geom.Vec3;

/**
 * Walls of one kind and one lean: a row of the draft table.
 *
 * @param finding number of the finding that speaks of it, counted from 1; 0 when none does
 * @param name what a person would call it, for example {@code "wall of the 6.4 mm hole"}
 * @param shape kind of wall
 * @param side the half that forms it
 * @param faces how many such walls there are
 * @param areaMm2 their area
 * @param depthMm how deep the deepest of them is along the pull
 * @param hasDeg their lean by area; below zero when they lean against the pull
 * @param leastDeg the lean of the worst face among them
 * @param askedDeg the lean a wall like this should have
 * @param shortAreaMm2 how much of the area has less than asked, by more than the band of 0.05°
 * @param at a place on it, axes of the file
 * @param facets the facets it is made of
 */
public record DraftRegion(
        int finding,
        String name,
        WallShape shape,
        Side side,
        int faces,
        double areaMm2,
        double depthMm,
        double hasDeg,
        double leastDeg,
        double askedDeg,
        double shortAreaMm2,
        Vec3 at,
        int[] facets) {
    DraftRegion withFinding(int number) {
        return new DraftRegion(
                number,
                name,
                shape,
                side,
                faces,
                areaMm2,
                depthMm,
                hasDeg,
                leastDeg,
                askedDeg,
                shortAreaMm2,
                at,
                facets);
    }
}
