package shotwright.quote;

/**
 * Milling time of a mold before its programs exist: roughing t = V/MRR, finishing t = A/(stepover·feed), a share for small cutters, set-ups.
 *
 * <p>MRR Q = ap·ae·vf/1000 and vf = fz·z·n of one roughing cutter; stepover s = 2·√(2·R·h − h²) of a ball for a cusp h. Symbols: ap, ae mm, vf
 * mm/min, fz mm, n 1/min, V mm³, A mm². Allowance 1.2 because moves never reach their feed (measured times lie 1.14 to 1.22 above
 * length over feed in a published test, CIRP J. 48 (2024) 28). Source: common practice; the choice of cutters common practice.
 * Range: aluminium, small mill; an estimate of −30 to +60 %.
 *
 * @param roughingH cutting the volume away
 * @param finishingH walking the surface
 * @param smallCutterH corners and lettering the usual cutters do not reach
 * @param setUpH clamping, touching off, cutter changes
 */
public record MillingGuess(double roughingH, double finishingH, double smallCutterH, double setUpH) {
    private static final double ALLOWANCE = 1.2;
    private static final double LIGHT_MILL = 0.5;
    private static final double SPINDLE_RPM = 18_000;
    private static final double ROUGH_MM = 4;
    private static final double ROUGH_FZ_MM = 0.032;
    private static final int ROUGH_TEETH = 3;
    private static final double BALL_RADIUS_MM = 1;
    private static final double BALL_FZ_MM = 0.016 * 0.7;
    private static final int BALL_TEETH = 2;
    private static final double CUSP_MM = 0.005;
    /** Two faces of each half are clamped; half an hour to an hour each. */
    private static final double FACE_H = 0.75;

    /**
     * Guesses.
     *
     * @param removedMm3 metal to cut away in both halves
     * @param surfaceMm2 molding surface to finish in both halves
     * @param smallestCornerMm smallest inside radius; 0 when not known
     */
    public static MillingGuess of(double removedMm3, double surfaceMm2, double smallestCornerMm) {
        double feed = ROUGH_FZ_MM * ROUGH_TEETH * SPINDLE_RPM;
        double mrrMm3PerMin = 0.5 * ROUGH_MM * (0.4 * ROUGH_MM) * feed * LIGHT_MILL;
        double stepover = 2 * Math.sqrt(2 * BALL_RADIUS_MM * CUSP_MM - CUSP_MM * CUSP_MM);
        double finishMm2PerMin = stepover * BALL_FZ_MM * BALL_TEETH * SPINDLE_RPM;
        double rough = ALLOWANCE * removedMm3 / mrrMm3PerMin / 60;
        double finish = ALLOWANCE * surfaceMm2 / finishMm2PerMin / 60;
        double small = smallestCornerMm <= 0 ? 0.3 : Math.clamp(0.5 * (1 - smallestCornerMm), 0, 0.5);
        return new MillingGuess(rough, finish, small * finish, 4 * FACE_H);
    }

    /** Hours the spindle runs. */
    public double spindleH() {
        return roughingH + finishingH + smallCutterH;
    }

    /** Hours the mill is taken. */
    public double allH() {
        return spindleH() + setUpH;
    }
}
