package shotwright.sizing;

/** What a load beside the middle of the press does. Plain statics; limits are common practice. */
public final class EccentricLoad {
    /** Off-centre share of the pillar span that a platen press should not exceed (common practice). */
    public static final double PILLAR_LIMIT_SHARE = 0.10;

    /** The same for a C-frame, of its throat (common practice). */
    public static final double THROAT_LIMIT_SHARE = 0.05;

    private EccentricLoad() {}

    /** Share of the force on the nearer of two supports a span apart, ½ + e/s. */
    public static double nearShare(double offCentreMm, double spanMm) {
        return 0.5 + offCentreMm / spanMm;
    }

    /** Share on the farther support, ½ − e/s; below zero it lifts. */
    public static double farShare(double offCentreMm, double spanMm) {
        return 0.5 - offCentreMm / spanMm;
    }

    /** How far off centre a force may act before one edge of a rectangular face of this length opens: a/6 (kern of the section). */
    public static double kernMm(double lengthMm) {
        return lengthMm / 6;
    }
}
