package shotwright.machining.hole;

import java.util.List;
import shotwright.stock.HoleLimits;

/**
 * Boring a hole to size by an end mill on a helix: rough, semi-finish, gauge, correct, finish, once more without a cut. Allowances common
 * practice.
 *
 * @param target limits of the hole
 * @param cutterDiaMm cutter as measured
 */
public record BoreSteps(HoleLimits target, double cutterDiaMm) {
    /** Left on the diameter after roughing. */
    public static final double ROUGH_LEFT_MM = 0.2;

    /** Left on the diameter when it is gauged. */
    public static final double GAUGE_LEFT_MM = 0.05;

    /** Drop of the roughing helix for each turn, over the cutter's diameter: middle of 0.1 … 0.2. */
    private static final double PITCH_FACTOR = 0.15;

    /** Two diameters across that differ by more than this speak of backlash: ream instead. */
    private static final double MOST_OUT_OF_ROUND_MM = 0.008;

    public BoreSteps {
        if (!(cutterDiaMm > 0) || !(cutterDiaMm < target.lowMm() - ROUGH_LEFT_MM))
            throw new IllegalArgumentException("a cutter of " + cutterDiaMm + " mm leaves no room to bore "
                    + target.middleMm() + " mm; take a smaller one");
    }

    /**
     * One pass.
     *
     * @param words what it is for
     * @param holeDiaMm hole it should leave
     * @param pathDiaMm diameter of the cutter's centre path
     * @param pitchMm drop for each turn; 0 when it runs level at full depth
     */
    public record Pass(String words, double holeDiaMm, double pathDiaMm, double pitchMm) {}

    /** The passes up to the gauge: rough helix, the same turn again, semi-finish. */
    public List<Pass> beforeGauging() {
        double rough = target.middleMm() - ROUGH_LEFT_MM, gauge = target.middleMm() - GAUGE_LEFT_MM;
        return List.of(
                pass("rough on a helix", rough, PITCH_FACTOR * cutterDiaMm),
                pass("once more without a cut", rough, 0),
                pass("semi-finish, then gauge", gauge, 0));
    }

    private Pass pass(String words, double holeDiaMm, double pitchMm) {
        return new Pass(words, holeDiaMm, holeDiaMm - cutterDiaMm, pitchMm);
    }

    /**
     * The passes after the gauge: the path grows by what is missing, the cutter's true size and its bending included.
     *
     * @param measuredMm what the gauge said
     */
    public List<Pass> afterGauging(double measuredMm) {
        if (!(measuredMm < target.highMm()))
            throw new IllegalArgumentException("the hole measures " + measuredMm + " mm and may be " + target.highMm()
                    + " mm at most; nothing can be cut back on");
        double path = target.middleMm() - GAUGE_LEFT_MM - cutterDiaMm + (target.middleMm() - measuredMm);
        return List.of(
                new Pass("finish", target.middleMm(), path, 0),
                new Pass("once more without a cut", target.middleMm(), path, 0));
    }

    /** By how much the path's radius changes: (target − measured)/2. */
    public double radiusCorrectionMm(double measuredMm) {
        return (target.middleMm() - measuredMm) / 2;
    }

    /** True when two diameters measured across each other are near enough to bore the hole with this mill. */
    public static boolean round(double acrossXMm, double acrossYMm) {
        return Math.abs(acrossXMm - acrossYMm) <= MOST_OUT_OF_ROUND_MM;
    }
}
