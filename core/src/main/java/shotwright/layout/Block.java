package shotwright.layout;

/**
 * The block that becomes the two halves, centred on x = y = 0 of the mold frame; A fills 0 … thicknessA, B fills −thicknessB … 0.
 *
 * @param widthMm size along x
 * @param heightMm size along y, +y is the nozzle edge
 * @param thicknessAMm thickness of half A
 * @param thicknessBMm thickness of half B
 * @param stockA id of the bar or plate half A is sawn from
 * @param stockB id of the bar or plate half B is sawn from
 * @param sawAllowanceMm added to each sawn length for kerf and cleaning up
 * @param riseAMm how far cores of half A stand out of its parting face; its blank is that much thicker
 * @param riseBMm how far cores of half B stand out of its parting face
 * @param soldAsA what the bar or plate of half A is called; empty when none on the rack is large enough
 * @param soldAsB what the bar or plate of half B is called
 */
public record Block(
        double widthMm,
        double heightMm,
        double thicknessAMm,
        double thicknessBMm,
        String stockA,
        String stockB,
        double sawAllowanceMm,
        double riseAMm,
        double riseBMm,
        String soldAsA,
        String soldAsB) {
    /** A block without standing cores. */
    public Block(
            double widthMm,
            double heightMm,
            double thicknessAMm,
            double thicknessBMm,
            String stockA,
            String stockB,
            double sawAllowanceMm) {
        this(widthMm, heightMm, thicknessAMm, thicknessBMm, stockA, stockB, sawAllowanceMm, 0, 0, stockA, stockB);
    }

    public double volumeMm3() {
        return widthMm * heightMm * (thicknessAMm + thicknessBMm);
    }
}
