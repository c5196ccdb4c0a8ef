package shotwright.review;

import java.util.List;
import shotwright.geom.Vec3;
import shotwright.mesh.WallThickness;

/**
 * How thick the walls are.
 *
 * @param medianMm half of the surface has less behind it, half more (straight through the wall)
 * @param minMm the thinnest wall, edges and corners left aside
 * @param maxMm the thickest place: diameter of the largest ball that fits (all but the uppermost hundredth)
 * @param samples the samples behind these numbers, pulled frame
 * @param spots thin and thick places, worst first
 * @param steps places where thick meets thin, worst first
 */
public record WallReview(
        double medianMm, double minMm, double maxMm, WallThickness samples, List<Spot> spots, List<Step> steps) {
    /**
     * A thin or a thick place.
     *
     * @param finding number of the finding that speaks of it; 0 when none does
     * @param thick true for a thick place
     * @param at where, axes of the file
     * @param wallMm wall there: through the wall when thin, the largest ball when thick
     * @param toMedianRatio that over the median wall
     * @param areaMm2 surface it takes
     */
    public record Spot(int finding, boolean thick, Vec3 at, double wallMm, double toMedianRatio, double areaMm2) {
        Spot withFinding(int number) {
            return new Spot(number, thick, at, wallMm, toMedianRatio, areaMm2);
        }
    }

    /**
     * A step from thick to thin.
     *
     * @param finding number of the finding that speaks of it; 0 when none does
     * @param at where, axes of the file
     * @param thickMm wall on the thick side
     * @param thinMm wall on the thin side
     */
    public record Step(int finding, Vec3 at, double thickMm, double thinMm) {
        /** Thick over thin. */
        public double stepRatio() {
            return thickMm / thinMm;
        }

        Step withFinding(int number) {
            return new Step(number, at, thickMm, thinMm);
        }
    }

    public WallReview {
        spots = List.copyOf(spots);
        steps = List.copyOf(steps);
    }
}
