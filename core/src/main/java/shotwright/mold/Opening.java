package shotwright.mold;

import java.util.List;
import shotwright.layout.Half;
import shotwright.review.Side;
import shotwright.review.Undercut;

/**
 * Whether a half comes off the part. What an undercut does is decided once, in the review; here the halves as cut are held against it:
 * metal caught behind the part that no undercut of the review accounts for locks a half all the same.
 */
public enum Opening {
    /** Nothing is in its way. */
    FREE,
    /** It leaves past small ledges that the review names. */
    PAST_LEDGES,
    /** It cannot open. */
    LOCKED;

    /** Share of the shadow's columns that a raster cannot tell from none. */
    static final double UNTOLD_SHARE = 5e-4;

    /** As said at the bench. */
    public String words() {
        return switch (this) {
            case FREE -> "opens freely";
            case PAST_LEDGES -> "opens past small ledges that strain the part";
            case LOCKED -> "CANNOT OPEN";
        };
    }

    /**
     * Judges one half.
     *
     * @param lockShare share of the columns under the part where this half is not one piece of metal
     * @param shadowMm2 the part's shadow, as the undercuts were measured on it
     */
    static Opening of(Half half, double lockShare, List<Undercut> undercuts, double shadowMm2) {
        List<Undercut> here = undercuts.stream()
                .filter(u -> u.blocks() == (half == Half.A ? Side.A : Side.B))
                .toList();
        if (here.stream().anyMatch(u -> u.hold() == Undercut.Hold.LOCKS)) return LOCKED;
        if (lockShare > allowedShare(undercuts, shadowMm2)) return LOCKED;
        return here.isEmpty() ? FREE : PAST_LEDGES;
    }

    /** What the columns may find locked: the ledges that do not lock, whichever half the parting gave them to, and what a raster cannot tell. */
    static double allowedShare(List<Undercut> undercuts, double shadowMm2) {
        double ledges = undercuts.stream()
                .filter(u -> u.hold() != Undercut.Hold.LOCKS)
                .mapToDouble(Undercut::shadowMm2)
                .sum();
        return UNTOLD_SHARE + ledges / shadowMm2;
    }
}
