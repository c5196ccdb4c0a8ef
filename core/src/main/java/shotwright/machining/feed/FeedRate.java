package shotwright.machining.feed;

/** Spindle speed from surface speed, feed from chip, and how both change on arcs. Keys MILLF and TOOLF; plane geometry on arcs. */
public final class FeedRate {
    /** How much faster than on a straight wall the cutter's centre may go around a convex one (common practice). */
    static final double MOST_OUTSIDE_FACTOR = 1.5;

    private FeedRate() {}

    /** Spindle speed, 1/min: n = 1000·vc/(π·D). */
    public static double speedRpm(double surfaceMPerMin, double diaMm) {
        if (!(diaMm > 0)) throw new IllegalArgumentException("diaMm: " + diaMm + " is not above zero");
        return 1000 * surfaceMPerMin / (Math.PI * diaMm);
    }

    /** Surface speed, m/min: π·D·n/1000. */
    public static double surfaceMPerMin(double speedRpm, double diaMm) {
        return Math.PI * diaMm * speedRpm / 1000;
    }

    /** Feed, mm/min: fz·z·n. */
    public static double mmPerMin(double feedPerToothMm, int teeth, double speedRpm) {
        return feedPerToothMm * teeth * speedRpm;
    }

    /** Feed of the cutter's centre along a concave wall, the edge keeping its feed: vf·(Rw − r)/Rw. */
    public static double insideArcMmPerMin(double feedMmPerMin, double wallRadiusMm, double cutterRadiusMm) {
        if (!(wallRadiusMm > cutterRadiusMm))
            throw new IllegalArgumentException(
                    "a cutter of " + cutterRadiusMm + " mm radius does not fit into " + wallRadiusMm + " mm");
        return feedMmPerMin * (wallRadiusMm - cutterRadiusMm) / wallRadiusMm;
    }

    /** Feed of the cutter's centre around a convex wall: vf·(Rw + r)/Rw, at most half as much again. */
    public static double outsideArcMmPerMin(double feedMmPerMin, double wallRadiusMm, double cutterRadiusMm) {
        return feedMmPerMin * Math.min(MOST_OUTSIDE_FACTOR, (wallRadiusMm + cutterRadiusMm) / wallRadiusMm);
    }
}
