package shotwright.review;

import shotwright.geom.Vec3;

/**
 * A corner or slot of the mold into which only a small cutter goes.
 *
 * @param finding number of the finding that speaks of it; 0 when none does
 * @param at where, axes of the file
 * @param side the half it is cut into
 * @param slot true for a slot with walls on both sides, false for a corner
 * @param needsMm largest cutter diameter that leaves less than 0.05 mm there; 0 when none on the rack does
 * @param widthMm width of the slot at that place
 * @param depthMm how far the place lies below the metal around it
 * @param restMm2 area left by the next larger cutter
 * @param cutter the cutter from the rack that reaches it; empty when none does
 */
public record InsideCorner(
        int finding,
        Vec3 at,
        Side side,
        boolean slot,
        double needsMm,
        double widthMm,
        double depthMm,
        double restMm2,
        String cutter) {
    InsideCorner withFinding(int number) {
        return new InsideCorner(number, at, side, slot, needsMm, widthMm, depthMm, restMm2, cutter);
    }
}
