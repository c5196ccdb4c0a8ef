package shotwright.sizing;

import shotwright.press.Press;

/**
 * Feed before the layout: from the edge a 4 mm half-round runner over the 15 mm to the first cavity and 12 mm past each further one; through
 * the back a 4 mm sprue as long as half the mold and 4 mm runners when there are several cavities (common practice).
 *
 * @param areaMm2 projected area outside the cavities' shadow
 * @param volumeMm3 volume
 */
public record FeedEstimate(double areaMm2, double volumeMm3) {
    private static final double RUNNER_MM = 4;
    private static final double GATE_ROOM_MM = 6;

    /** Estimate for a press, a number of cavities and a block. */
    static FeedEstimate of(Press press, int cavities, MoldEstimate mold) {
        double round = Math.PI * RUNNER_MM * RUNNER_MM / 4;
        double arms =
                cavities == 1 ? 0 : cavities * GATE_ROOM_MM + (cavities / 2 - 1) * mold.heightMm() / mold.rowsCount();
        if (press.nozzleMeets() == Press.NozzleMeets.PARTING_EDGE) {
            double length = MoldEstimate.EDGE_MM + Math.max(0, arms);
            return new FeedEstimate(length * RUNNER_MM, length * round);
        }
        double sprue = mold.thicknessMm() / 2 * Math.PI * 5 * 5 / 4;
        return new FeedEstimate(Math.max(0, arms) * RUNNER_MM, sprue + Math.max(0, arms) * round);
    }
}
