package shotwright.machining.time;

import shotwright.measure.Band;

/**
 * How long an operation runs, cutter changes left out.
 *
 * @param number its number on the papers
 * @param words what is done
 * @param cutterId the cutter
 * @param feedS moving at a feed
 * @param rapidS moving at the rapid
 * @param dwellS standing
 * @param lengthOverFeedS what length over feed, length over rapid and dwells alone would give
 */
public record OperationTime(
        int number, String words, String cutterId, double feedS, double rapidS, double dwellS, double lengthOverFeedS) {
    /** By how much programs run longer or shorter than the model says (key CHSE: measured times beside planned ones). */
    public static final double SPREAD_SHARE = 0.15;

    /** All of it. */
    public double allS() {
        return feedS + rapidS + dwellS;
    }

    /** All of it with its spread. */
    public Band bandS() {
        return Band.plusMinus(allS(), SPREAD_SHARE);
    }
}
