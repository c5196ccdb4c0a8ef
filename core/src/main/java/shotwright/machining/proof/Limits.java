package shotwright.machining.proof;

/**
 * How much is too much.
 *
 * @param gougeMm cut into the half, along the normal: mesh, path, grid and rounding together (handbook 8.2)
 * @param leftoverMm metal left on the half, along the normal: planned cusp and 0.02 (handbook 8.3)
 * @param exactMm how far the tip may lie below the exact contact of the cutter made smaller by {@code shrinkMm}
 * @param shrinkMm on walls the path touches everywhere: the cutter is made so much smaller before it is asked
 * @param holeMm radius of a hole against its circle
 * @param levelMm depth of holes, vents and the like
 * @param clearanceMm air around shank and holder
 */
public record Limits(
        double gougeMm,
        double leftoverMm,
        double exactMm,
        double shrinkMm,
        double holeMm,
        double levelMm,
        double clearanceMm) {
    /** What a mold half is held to. */
    public static final Limits USUAL = new Limits(0.008, 0.0235, 0.002, 0.005, 0.005, 0.005, 0.2);
}
