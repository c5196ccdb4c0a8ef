package shotwright.measure;

/**
 * Two lengths that travel with a part: what is numerical noise, and what a shop would call equal.
 *
 * @param noiseMm below this, two coordinates are the same number read twice (1e-7 of the part's diagonal)
 * @param shopMm below this, two sizes are the same at the bench (0.01 mm, or 1e-3 of the diagonal on tiny parts)
 */
public record Tolerance(double noiseMm, double shopMm) {
    public Tolerance {
        if (!(noiseMm > 0) || !(shopMm > 0)) throw new IllegalArgumentException("tolerances must be above zero");
    }

    /** The tolerance of a part whose bounding-box diagonal is given. */
    public static Tolerance ofDiagonal(double diagonalMm) {
        return new Tolerance(1e-7 * diagonalMm, Math.min(0.01, 1e-3 * diagonalMm));
    }
}
