package shotwright.mesh.complex;

/**
 * All lengths below which the complex takes two things for one, derived in this one place from one length.
 *
 * @param diagonal diagonal of the box around the part
 */
public record Grain(double diagonal) {
    public Grain {
        if (!(diagonal > 0) || !Double.isFinite(diagonal))
            throw new IllegalArgumentException("diagonal: " + diagonal + " is not a size");
    }

    /** A vertex nearer than this to a cutting surface lies on it. */
    public double snap() {
        return 2e-7 * diagonal;
    }

    /** A corner of a cap that folds back closer than this is a spike. */
    public double spike() {
        return 2e-5 * diagonal;
    }

    /** Vertices in one column are moved apart by this in the plane of the triangulation, never in space. */
    public double nudge() {
        return 1e-9 * diagonal;
    }

    /** Three points in a row within this are on one straight line: rounding of an interpolated point. */
    public double straight() {
        return 1e-11 * diagonal;
    }
}
