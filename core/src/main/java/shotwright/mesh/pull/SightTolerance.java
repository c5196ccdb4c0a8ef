package shotwright.mesh.pull;

import java.util.List;

/**
 * What counts as standing along the pull.
 *
 * @param leanDeg a facet leaning no more than this off the pull is free
 * @param widthShare a facet whose shadow is narrower than this share of the part's diagonal is free: its normal means nothing
 */
public record SightTolerance(double leanDeg, double widthShare) {
    /** From fine to coarse: the first with which the halves come out sound is taken. */
    public static final List<SightTolerance> LADDER =
            List.of(new SightTolerance(0.1, 1e-5), new SightTolerance(0.3, 2e-5), new SightTolerance(1, 5e-5));

    public SightTolerance {
        if (!(leanDeg > 0) || !(widthShare > 0))
            throw new IllegalArgumentException("sight tolerance: " + leanDeg + "°, " + widthShare);
    }
}
