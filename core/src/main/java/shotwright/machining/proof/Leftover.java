package shotwright.machining.proof;

import java.util.List;
import shotwright.geom.Vec3;

/**
 * How far what is left lies from the half, along the normal.
 *
 * @param bins area by distance
 * @param worstMm most metal left
 * @param share95Mm 95 % of the area has less left
 * @param deepestMm most metal cut away from the half, above zero; 0 when none
 * @param places the places with most left, worst first
 */
public record Leftover(List<Bin> bins, double worstMm, double share95Mm, double deepestMm, List<Place> places) {
    /** Bounds of the bins (handbook 8.3), µm; below the first and above the last are two more. */
    static final double[] BOUNDS_UM = {-50, -20, -8, 8, 20, 50, 100, 200};

    /** Area whose distance lies between two bounds; infinite at the ends. */
    public record Bin(double fromUm, double toUm, double areaMm2) {}

    /** A place and what is left there. */
    public record Place(Vec3 at, double leftMm) {}

    public Leftover {
        bins = List.copyOf(bins);
        places = List.copyOf(places);
    }

    /** Area looked at. */
    public double areaMm2() {
        return bins.stream().mapToDouble(Bin::areaMm2).sum();
    }
}
