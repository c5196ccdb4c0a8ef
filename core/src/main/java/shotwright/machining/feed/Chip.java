package shotwright.machining.feed;

/**
 * Shape of the chip one tooth cuts on the side of an end mill. Diameter D, width of cut ae, feed per tooth fz, engagement φ; keys MILLF and
 * TOOLF. Widths above the diameter count as the diameter.
 */
public final class Chip {
    private Chip() {}

    /** Angle a tooth spends in the metal: φ = acos(1 − 2·ae/D); π in a slot. */
    public static double engagementRad(double widthMm, double diaMm) {
        if (!(widthMm >= 0) || !(diaMm > 0))
            throw new IllegalArgumentException("width " + widthMm + " mm of a cutter of " + diaMm + " mm");
        return Math.acos(1 - 2 * Math.min(1, widthMm / diaMm));
    }

    /** Width of cut that belongs to an engagement: ae = D·(1 − cos φ)/2. */
    public static double widthMm(double engagementRad, double diaMm) {
        return diaMm * (1 - Math.cos(engagementRad)) / 2;
    }

    /** Thickest chip for a feed per tooth of one: sin φ up to a quarter turn, then 1. */
    public static double largestShare(double engagementRad) {
        return engagementRad < Math.PI / 2 ? Math.sin(engagementRad) : 1;
    }

    /** Mean chip along the arc for a feed per tooth of one: (1 − cos φ)/φ. */
    public static double meanShare(double engagementRad) {
        return engagementRad < 1e-9 ? engagementRad / 2 : (1 - Math.cos(engagementRad)) / engagementRad;
    }

    /** Thickest chip, mm: h = 2·fz·√(q·(1 − q)) with q = ae/D up to one half, else fz. */
    public static double largestMm(double feedPerToothMm, double widthMm, double diaMm) {
        return feedPerToothMm * largestShare(engagementRad(widthMm, diaMm));
    }

    /** Mean chip, mm: h = fz·(2·ae/D)/φ. */
    public static double meanMm(double feedPerToothMm, double widthMm, double diaMm) {
        return feedPerToothMm * meanShare(engagementRad(widthMm, diaMm));
    }

    /** By how much the feed per tooth may grow so that the thickest chip is the one of a half-width cut: 1/sin φ, at least 1. */
    public static double thinningFactor(double widthMm, double diaMm) {
        return 1 / largestShare(engagementRad(widthMm, diaMm));
    }

    /**
     * What the longest tooth cuts when the cutter runs out: its own feed and the run-out, at most what all teeth together should cut in a
     * turn.
     *
     * @param runOutMm total reading of the indicator
     */
    public static double withRunOutMm(double feedPerToothMm, int teeth, double runOutMm) {
        return Math.min(teeth * feedPerToothMm, feedPerToothMm + runOutMm);
    }

    /** Most teeth in the metal at once: φ·z/2π, rounded up. */
    public static int teethInCut(double engagementRad, int teeth) {
        return Math.max(1, (int) Math.ceil(engagementRad * teeth / (2 * Math.PI) - 1e-9));
    }

    /**
     * Engagement while a cutter of radius r follows a concave wall of radius Rw, leaving none of a layer ae: cos φ =
     * (Rs² − p² − r²)/(2·p·r), p = Rw − r, Rs = Rw − ae. Plane geometry.
     */
    public static double concaveEngagementRad(double wallRadiusMm, double cutterRadiusMm, double widthMm) {
        double p = wallRadiusMm - cutterRadiusMm, before = wallRadiusMm - widthMm;
        if (!(p > 0))
            throw new IllegalArgumentException(
                    "a cutter of " + cutterRadiusMm + " mm radius does not fit into " + wallRadiusMm + " mm");
        double cos = (before * before - p * p - cutterRadiusMm * cutterRadiusMm) / (2 * p * cutterRadiusMm);
        return Math.acos(Math.clamp(cos, -1, 1));
    }
}
