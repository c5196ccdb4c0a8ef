package shotwright.machining.setup;

import java.util.Locale;
import shotwright.stock.Stock;

/**
 * What is sawn off a bar for one half. In the mill it lies with the bar's length along x, so that the sawn ends are the free ones and the jaws
 * hold the sides of the bar.
 *
 * @param half the finished half
 * @param bar bar or plate
 * @param turned true when the half's height, not its width, lies along the bar
 * @param lengthMm finished size along the bar
 * @param acrossMm finished size across the bar
 * @param sawnLengthMm length to saw
 * @param blankAcrossMm width of the blank
 * @param edges what is done to the two sides the jaws hold
 * @param back what is done to the back face
 * @param backOffMm metal that comes off the back face
 * @param partingOffMm metal that comes off the other side, above the parting face or the cores
 */
public record Blank(
        HalfBlock half,
        Stock bar,
        boolean turned,
        double lengthMm,
        double acrossMm,
        double sawnLengthMm,
        double blankAcrossMm,
        FaceWork edges,
        FaceWork back,
        double backOffMm,
        double partingOffMm)
        implements BlankChoice {
    /** Width of a band saw's cut (common practice). */
    public static final double KERF_MM = 1;

    /** Sizes nearer than this are the size as sold: drawn sides are held to a few tenths (common practice). */
    private static final double AS_SOLD_MM = 0.3;

    /** Least metal a face mill takes to clean a face up (common practice). */
    private static final double SKIM_MM = 0.3;

    /** A drawn face is used as it is only when nothing is left to take off it; up to this it is cleaned by hand. */
    private static final double BY_HAND_MM = 0.1;

    /** Left on each sawn side of a plate. */
    private static final double SAWN_SIDE_MM = 1;

    /**
     * The blank for a half.
     *
     * @param sawAllowanceMm added to the finished length for the kerf and both ends
     */
    public static BlankChoice of(HalfBlock half, Stock bar, double sawAllowanceMm) {
        if (!(sawAllowanceMm > KERF_MM))
            throw new IllegalArgumentException(
                    "sawAllowanceMm: " + sawAllowanceMm + " leaves nothing beside the kerf of " + KERF_MM + " mm");
        boolean plate = bar.shape() == Stock.Shape.PLATE;
        double side = plate ? 2 * SAWN_SIDE_MM : 0, barWidth = bar.widthMm().value();
        double narrow = Math.min(half.widthMm(), half.heightMm()), wide = Math.max(half.widthMm(), half.heightMm());
        double across = wide + side <= barWidth + AS_SOLD_MM && !plate ? wide : narrow;
        if (across + side > barWidth + AS_SOLD_MM)
            return no(half, bar, "it is %.1f mm wide and %.1f mm are needed", barWidth, across + side);
        double length = across == narrow ? wide : narrow;
        double sawn = length + sawAllowanceMm - KERF_MM;
        if (sawn + KERF_MM > bar.lengthMm().value())
            return no(
                    half,
                    bar,
                    "it is sold %.0f mm long and %.0f mm are needed",
                    bar.lengthMm().value(),
                    sawn + KERF_MM);
        double off = bar.thicknessMm().value() - half.overallMm();
        if (off < SKIM_MM)
            return no(
                    half,
                    bar,
                    "it is %.2f mm thick and %.2f mm are needed to clean the parting face up",
                    bar.thicknessMm().value(),
                    half.overallMm() + SKIM_MM);
        FaceWork back = off >= 2 * SKIM_MM
                ? FaceWork.SKIMMED
                : off > SKIM_MM + BY_HAND_MM ? FaceWork.BY_HAND : FaceWork.AS_DRAWN;
        double backOff = back == FaceWork.SKIMMED ? off / 2 : 0;
        double blankAcross = plate ? across + side : barWidth;
        FaceWork edges = plate || blankAcross - across > AS_SOLD_MM ? FaceWork.MILLED : FaceWork.AS_DRAWN;
        boolean turned = length == half.heightMm() && half.heightMm() != half.widthMm();
        return new Blank(half, bar, turned, length, across, sawn, blankAcross, edges, back, backOff, off - backOff);
    }

    private static NoBlank no(HalfBlock half, Stock bar, String why, double has, double needs) {
        return new NoBlank(bar.name() + " gives no blank for " + half.name() + ": "
                + String.format(Locale.ROOT, why, has, needs) + ".");
    }

    /** Left on each sawn end. */
    public double endOffMm() {
        return (sawnLengthMm - lengthMm) / 2;
    }

    /** Left on each side the jaws hold; 0 when the side is used as drawn. */
    public double edgeOffMm() {
        return edges == FaceWork.MILLED ? (blankAcrossMm - acrossMm) / 2 : 0;
    }

    /** Thickness of the blank. */
    public double thicknessMm() {
        return bar.thicknessMm().value();
    }

    /** What to saw, in words. */
    public String words() {
        return String.format(
                Locale.ROOT,
                "%s: saw %.1f mm off %s%s; sides %s; back face %s.",
                half.name(),
                sawnLengthMm,
                bar.name(),
                bar.shape() == Stock.Shape.PLATE ? String.format(Locale.ROOT, ", %.1f mm wide", blankAcrossMm) : "",
                edges.words(),
                back.words());
    }
}
