package shotwright.machining.feed;

import shotwright.cutter.Cutter;

/**
 * How a cutter gets into the metal. Common practice for aluminium; ramps and helices at no more than half the feed (key MICRO); helix geometry
 * plane.
 */
public final class Entry {
    /** Holes entered on a helix, as multiples of the cutter: narrower packs chips. */
    public static final double NARROWEST_HELIX_HOLE_FACTOR = 1.3;

    /** Wider leaves a core in the middle. */
    public static final double WIDEST_HELIX_HOLE_FACTOR = 1.9;

    /** Feed in a ramp or helix over that of the cut. */
    public static final double RAMP_FEED_SHARE = 0.5;

    /** Cutters below this enter more gently, mm. */
    static final double TINY_MM = 1;

    private static final double PLUNGE_SHARE = 0.35;
    private static final double TINY_PLUNGE_SHARE = 0.2;
    private static final double RAMP_DEG = 3;
    private static final double TINY_RAMP_DEG = 1.25;

    private Entry() {}

    /** True when the cutter may go straight down: its edges reach the middle. */
    public static boolean plunges(Cutter cutter) {
        return cutter.shape() != Cutter.Shape.FACE;
    }

    /** Feed straight down, mm/min, from the feed in a slot. */
    public static double plungeMmPerMin(double slotFeedMmPerMin, double diaMm) {
        return (diaMm < TINY_MM ? TINY_PLUNGE_SHARE : PLUNGE_SHARE) * slotFeedMmPerMin;
    }

    /** Angle of a ramp. */
    public static double rampDeg(double diaMm) {
        return diaMm < TINY_MM ? TINY_RAMP_DEG : RAMP_DEG;
    }

    /** Drop for each turn of a helix, mm: π·d·tan γ, d the diameter of the path. */
    public static double helixPitchMm(double pathDiaMm, double rampRad) {
        return Math.PI * pathDiaMm * Math.tan(rampRad);
    }

    /** Angle of a helix: atan(pitch/(π·d)). */
    public static double helixRampRad(double pathDiaMm, double pitchMm) {
        return Math.atan(pitchMm / (Math.PI * pathDiaMm));
    }

    /** Way of one turn, mm: √((π·d)² + pitch²). */
    public static double helixTurnMm(double pathDiaMm, double pitchMm) {
        return Math.hypot(Math.PI * pathDiaMm, pitchMm);
    }

    /** Feed of the centre on a helix path d, mm/min, so that the edge keeps its feed: vf·d/(d + D). */
    public static double helixMmPerMin(double feedMmPerMin, double pathDiaMm, double cutterDiaMm) {
        return feedMmPerMin * pathDiaMm / (pathDiaMm + cutterDiaMm);
    }
}
