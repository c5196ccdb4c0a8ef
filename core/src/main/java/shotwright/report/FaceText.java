package shotwright.report;

import java.util.LinkedHashMap;
import java.util.Map;
import shotwright.review.FaceReview;
import shotwright.review.remedy.DraftRemedy;
import shotwright.review.remedy.LeanedWall;

/** Faces in the words of a table. */
final class FaceText {
    private static final double SAME_DEG = 0.005;

    private FaceText() {}

    /** One figure where the draft is even, else from least to most. */
    static String draft(FaceReview f) {
        String least = Numbers.fixed(f.leastDraftDeg(), 2) + "°";
        return f.mostDraftDeg() - f.leastDraftDeg() < SAME_DEG
                ? least
                : least + " to " + Numbers.fixed(f.mostDraftDeg(), 2) + "°";
    }

    static String half(LeanedWall w) {
        return w.bothWays() ? "both, from the parting" : w.face().formedBy().words();
    }

    /** The proposal in a few rows. */
    static Map<String, String> rows(DraftRemedy d, Numbers show) {
        Map<String, String> rows = new LinkedHashMap<>();
        String deg = Numbers.fixed(d.wish().draftDeg(), 2) + "°";
        rows.put(
                "Draft added",
                deg + " on " + FirstAnswerPage.count(d.leaned().size(), "face") + ", sizes kept "
                        + d.wish().neutral().words() + "; "
                        + FirstAnswerPage.count(d.refused().size(), "face")
                        + " stay" + (d.refused().size() == 1 ? "s" : "") + " as drawn");
        if (d.hasPart())
            rows.put(
                    "Proposed part",
                    show.box(d.sizeAfter()) + " instead of " + show.box(d.sizeBefore()) + ", "
                            + show.volume(d.volumeAfterMm3()) + " instead of " + show.volume(d.volumeBeforeMm3())
                            + ", in "
                            + DraftRemedy.FILE);
        return rows;
    }

    static String need(FaceReview f) {
        return switch (f.need()) {
            case LACKS -> "yes, " + Numbers.fixed(f.askedDeg() - f.leastDraftDeg(), 2) + "° more";
            case NO_WALL -> "no";
            case ENOUGH, GOES_ALONG, CANNOT_HELP -> "no, " + f.need().words();
        };
    }
}
