package shotwright.layout.runner;

/** A standing sprue that widens from the nozzle to the runner. Source of the standard taper: ½ inch on diameter per foot, key of SOURCES.md: PT. */
public final class SprueTaper {
    /** Standard included angle, 2·atan(½ / 24) degrees. */
    public static final double STANDARD_INCLUDED_DEG = Math.toDegrees(2 * Math.atan(0.5 / 24));

    private SprueTaper() {}

    /** Growth in diameter over a length, mm. */
    public static double growthMm(double lengthMm, double includedDeg) {
        return 2 * lengthMm * Math.tan(Math.toRadians(includedDeg) / 2);
    }

    /** Included angle between two diameters over a length, degrees. */
    public static double includedDeg(double mouthMm, double endMm, double lengthMm) {
        return Math.toDegrees(2 * Math.atan((endMm - mouthMm) / (2 * lengthMm)));
    }
}
