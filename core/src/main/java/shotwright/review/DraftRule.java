package shotwright.review;

import shotwright.measure.Source;

/**
 * How much draft a wall should have.
 *
 * <p>Least draft of smooth walls (Ra ≤ 0.8 µm) by depth, common practice, molder tables agree within 0.5°:
 *
 * <pre>
 *  depth mm   ≤ 1.5   ≤ 12   ≤ 25   ≤ 50   ≤ 75   beyond
 *  least °     0.25    0.5    1      1.5    2      3
 * </pre>
 *
 * To this come 0.5° for inner walls and bosses deeper than 6 mm (the part shrinks onto them; common practice), 0.5° for resins that hardly
 * shrink (they do not let go of the cavity; published by molders), and the texture of the finish on outer walls. Walls deeper than 6 mm never
 * get less than the resin's own least draft; ribs, holes and pockets follow the depth alone.
 */
public final class DraftRule {
    /** Two drafts that differ by less than this are held to be the same: files are written in whole degrees and read in facets. */
    public static final double BAND_DEG = 0.05;

    /** Degrees of draft for each millimetre of texture depth: 1.5° per 0.025 mm, published by two molders; a third says 1°. */
    public static final double TEXTURE_DEG_PER_MM = 1.5 / 0.025;

    static final double SHALLOW_MM = 6;
    static final Source TABLE = Source.commonPractice("least draft by depth, smooth walls");

    private static final double[] DEPTH_MM = {1.5, 12, 25, 50, 75};
    private static final double[] LEAST_DEG = {0.25, 0.5, 1, 1.5, 2, 3};
    private static final double CORE_DEG = 0.5;

    private DraftRule() {}

    /** The table alone. */
    public static double byDepthDeg(double depthMm) {
        int i = 0;
        while (i < DEPTH_MM.length && depthMm > DEPTH_MM[i]) i++;
        return LEAST_DEG[i];
    }

    /** What a wall of this shape and depth should have. */
    public static double askedDeg(WallShape shape, double depthMm, MoldingLimits limits, Finish finish) {
        double deg = byDepthDeg(depthMm);
        if (depthMm > SHALLOW_MM) {
            if (shape.isCore()) deg += CORE_DEG;
            if (!shape.followsDepthAlone()) deg = Math.max(deg, limits.leastDraftDeg());
            deg += limits.lowShrinkDraftDeg();
        }
        return shape == WallShape.OUTER ? deg + finish.textureDraftDeg() : deg;
    }

    /** How much a size changes on one side over a depth: L · tan φ. Depth in mm, draft in degrees, 0 … 45. */
    public static double sideChangeMm(double depthMm, double draftDeg) {
        return depthMm * Math.tan(Math.toRadians(draftDeg));
    }

    /** Draft that a texture asks for on top: 1.5° for each 0.025 mm of its depth, up to 0.15 mm. */
    public static double textureDraftDeg(double textureDepthMm) {
        if (!(textureDepthMm >= 0 && textureDepthMm <= 0.15))
            throw new IllegalArgumentException("textureDepthMm: " + textureDepthMm + " is not from 0 to 0.15");
        return TEXTURE_DEG_PER_MM * textureDepthMm;
    }

    /**
     * Mean roughness of a spark-eroded surface by its grade N (VDI 3400): Ra = 10^(N/20) / 10 µm, N from 0 to 45.
     */
    public static double gradeRaUm(double grade) {
        if (!(grade >= 0 && grade <= 45))
            throw new IllegalArgumentException("grade: " + grade + " is not from 0 to 45");
        return Math.pow(10, grade / 20) / 10;
    }

    /** The grade of a mean roughness: N = 20 · log₁₀(10 · Ra). */
    public static double gradeOfRa(double raUm) {
        if (!(raUm > 0)) throw new IllegalArgumentException("raUm: " + raUm + " is not above zero");
        return 20 * Math.log10(10 * raUm);
    }
}
