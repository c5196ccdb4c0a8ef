package shotwright.review.remedy;

import java.util.Optional;
import shotwright.brep.ExactFace;
import shotwright.measure.Digits;
import shotwright.review.DraftRule;
import shotwright.review.FaceReview;
import shotwright.review.FaceReview.FormedBy;
import shotwright.review.FaceReview.Need;
import shotwright.review.RackCutters;

/** Why a wall is not leaned, and what else can be done about it. */
final class Refusals {
    private final DraftWish wish;
    private final RackCutters cutters;

    Refusals(DraftWish wish, RackCutters cutters) {
        this.wish = wish;
        this.cutters = cutters;
    }

    /** What can be told without trying. */
    Optional<String> atOnce(FaceReview f) {
        if (f.formedBy() == FormedBy.NEITHER) return Optional.of("Neither half reaches it.");
        if (f.need() == Need.CANNOT_HELP)
            return Optional.of(
                    "It is round and lies across the pull: straight along one line only, and draft added to it changes nothing.");
        boolean sort = f.kind() == ExactFace.Kind.PLANE
                || f.kind() == ExactFace.Kind.CYLINDER
                || f.kind() == ExactFace.Kind.CONE;
        if (!sort)
            return Optional.of("Only flat, round and conical walls can be leaned exactly; this one is none of these.");
        if (!Chain.canLean(f)) return Optional.of("Its axis does not stand along the pull.");
        return Optional.empty();
    }

    String remedy(FaceReview f) {
        if (f.formedBy() == FormedBy.NEITHER) return "Open the part there, or form it with an insert loaded by hand.";
        if (f.need() == Need.CANNOT_HELP)
            return "Leave it as drawn, with the parting along its widest line; polish the metal along the draw.";
        String deg = Digits.fixed(wish.draftDeg(), 2) + "°";
        String cutter = cutters.taperAtLeast(wish.draftDeg() - DraftRule.BAND_DEG);
        String with =
                cutter.isEmpty() ? "a tapered end mill of " + deg + ", which is not on the rack" : "the " + cutter;
        return "Leave the drawing and cut it in " + f.formedBy().words() + " with " + with
                + "; or ask the customer to lean it.";
    }
}
