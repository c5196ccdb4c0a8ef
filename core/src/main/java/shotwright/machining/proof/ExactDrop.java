package shotwright.machining.proof;

import shotwright.cutter.CutterProfile;

/** Where a cutter let down on the half comes to rest, without a grid. */
@FunctionalInterface
public interface ExactDrop {
    /** Tip heights of one cutter; the answer belongs to one thread. */
    TipHeight under(CutterProfile profile);

    /** Lowest height of the tip over a place at which the cutter just touches the half. */
    @FunctionalInterface
    interface TipHeight {
        double tipMm(double x, double y);
    }
}
