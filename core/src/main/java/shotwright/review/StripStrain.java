package shotwright.review;

/**
 * How far a part stretches when it is stripped off an undercut instead of being let go: ε = (D − d) / d, the hoop strain of a closed rim of
 * size d that must pass size D. Some texts divide by D, which is the smaller figure; the strain of the plastic is over its own size. Source:
 * definition of strain. At ejection temperature; open rims and springy arms bear more.
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
