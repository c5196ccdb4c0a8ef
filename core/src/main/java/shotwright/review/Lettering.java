package shotwright.review;

import shotwright.geom.Vec3;

/**
 * A mark of even depth: a letter, an arrow, a logo.
 *
 * @param finding number of the finding that speaks of it; 0 when none does
 * @param at its middle, axes of the file
 * @param side the half that forms it
 * @param raised true when it stands up from the part (milled into the mold), false when it is sunk (stands up in the mold)
 * @param depthMm height or depth
 * @param strokeMm width of its strokes
 * @param areaMm2 its area
 * @param sizeMm the longer side of the box round it
 */
public record Lettering(
        int finding,
        Vec3 at,
        Side side,
        boolean raised,
        double depthMm,
        double strokeMm,
        double areaMm2,
        double sizeMm) {
    Lettering withFinding(int number) {
        return new Lettering(number, at, side, raised, depthMm, strokeMm, areaMm2, sizeMm);
    }
}
