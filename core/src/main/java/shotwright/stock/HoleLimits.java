package shotwright.stock;

/**
 * Smallest and largest size a hole may have.
 *
 * @param lowMm smallest
 * @param highMm largest
 */
public record HoleLimits(double lowMm, double highMm) {
    public HoleLimits {
        if (!(lowMm > 0 && lowMm < highMm))
            throw new IllegalArgumentException("hole from " + lowMm + " to " + highMm + " mm");
    }

    /** Limits of a class at a nominal size. */
    public static HoleLimits of(Fit fit, double nominalMm) {
        return new HoleLimits(nominalMm + fit.lowUm(nominalMm) / 1000.0, nominalMm + fit.highUm(nominalMm) / 1000.0);
    }

    /** What is aimed at. */
    public double middleMm() {
        return (lowMm + highMm) / 2;
    }

    /** True when every hole within the other limits is within these. */
    public boolean takes(HoleLimits other) {
        return other.lowMm >= lowMm - 1e-9 && other.highMm <= highMm + 1e-9;
    }

    /** True when a size is within the limits. */
    public boolean takes(double diaMm) {
        return diaMm >= lowMm && diaMm <= highMm;
    }
}
