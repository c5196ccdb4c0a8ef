package shotwright.machining.feed;

/** Where a ball end cuts, and how fast its edge runs there. Geometry of the sphere. */
public final class BallContact {
    /** The feed per tooth grows by at most so much because a ball's or a corner's chip gets thinner (common practice). */
    public static final double MOST_THINNING_FACTOR = 2.5;

    private BallContact() {}

    /** Diameter that cuts on level ground at a depth: 2·√(ap·(D − ap)); the full diameter from half of it on. */
    public static double effectiveDiaMm(double diaMm, double depthMm) {
        double d = Math.min(depthMm, diaMm / 2);
        return 2 * Math.sqrt(d * (diaMm - d));
    }

    /** The same on a face that leans by an angle from level: D·sin(β + acos((D − 2·ap)/D)); the full diameter from a quarter turn on. */
    public static double effectiveDiaMm(double diaMm, double depthMm, double leanRad) {
        double up = leanRad + Math.acos(Math.clamp((diaMm - 2 * depthMm) / diaMm, -1, 1));
        return up >= Math.PI / 2 ? diaMm : diaMm * Math.sin(up);
    }

    /** By how much the feed per tooth may grow: D/D_eff, at most 2.5. */
    public static double thinningFactor(double diaMm, double effectiveDiaMm) {
        return Math.min(MOST_THINNING_FACTOR, diaMm / effectiveDiaMm);
    }
}
