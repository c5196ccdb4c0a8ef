package shotwright.machining.feed;

/** Grooves of engravers and V cutters: tip flat t, included angle A. Plane geometry of the cone. */
public final class Groove {
    private Groove() {}

    /** Width at the top of a groove: t + 2·d·tan(A/2). */
    public static double widthMm(double tipMm, double includedRad, double depthMm) {
        return tipMm + 2 * depthMm * Math.tan(includedRad / 2);
    }

    /** Depth for a width at the top: (w − t)/(2·tan(A/2)); 0 when the tip alone is wider. */
    public static double depthMm(double tipMm, double includedRad, double widthMm) {
        return Math.max(0, (widthMm - tipMm) / (2 * Math.tan(includedRad / 2)));
    }
}
