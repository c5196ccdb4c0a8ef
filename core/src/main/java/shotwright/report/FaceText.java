package shotwright.report;

import shotwright.review.FaceReview;

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

    static String need(FaceReview f) {
        return switch (f.need()) {
            case LACKS -> "yes, " + Numbers.fixed(f.askedDeg() - f.leastDraftDeg(), 2) + "° more";
            case NO_WALL -> "no";
            case ENOUGH, GOES_ALONG, CANNOT_HELP -> "no, " + f.need().words();
        };
    }
}
