package shotwright.machining.feed;

import shotwright.cutter.Cutter;
import shotwright.mill.Mill;
import shotwright.stock.MoldMaterial;

/**
 * A cut asked for.
 *
 * @param cutter the cutter
 * @param stickoutMm how far it stands out of its holder
 * @param alloy what is cut
 * @param mill the mill
 * @param kind what the cut is for
 * @param depthMm deepest single pass wanted; the table may give less
 * @param widthMm widest pass wanted; the table may give less
 */
public record Cut(
        Cutter cutter, double stickoutMm, MoldMaterial alloy, Mill mill, CutKind kind, double depthMm, double widthMm) {
    public Cut {
        if (!cutter.shape().mills())
            throw new IllegalArgumentException(
                    "cutter " + cutter.id() + " only makes holes; ask HoleData for its feed");
        if (!(stickoutMm >= cutter.fluteLengthMm().value()) || !Double.isFinite(stickoutMm))
            throw new IllegalArgumentException(
                    "stickout of cutter " + cutter.id() + ": " + stickoutMm + " mm is less than its cutting length "
                            + cutter.fluteLengthMm().value() + " mm");
        if (!(depthMm > 0) || !(widthMm > 0))
            throw new IllegalArgumentException(
                    "depth " + depthMm + " mm and width " + widthMm + " mm must be above zero");
    }
}
