package shotwright.review;

/**
 * How far a part stretches when it is stripped off an undercut instead of being let go: ε = (D − d) / d, D the larger and d the smaller size
 * the same rim must pass, as remembered from the literature on mold making. Holds at ejection temperature for closed rims; open rims and
 * springy arms bear more.
 */
public final class StripStrain {
    private StripStrain() {}

    /** In per cent of the smaller size. */
    public static double percent(double largeMm, double smallMm) {
        if (!(smallMm > 0) || !(largeMm >= smallMm))
            throw new IllegalArgumentException("sizes: " + largeMm + " over " + smallMm);
        return 100 * (largeMm - smallMm) / smallMm;
    }
}
