package shotwright.machining.choice;

import java.util.BitSet;
import java.util.Map;
import shotwright.cutter.MountedCutter;
import shotwright.machining.contact.SurfaceKind;

/**
 * A cutter that may be taken.
 *
 * @param cutter as mounted
 * @param roughMm3PerMin metal it removes in roughing; 0 when it is not for roughing
 * @param roughReached cells of the surface whose roughing depth it gets down to
 * @param finishMm2PerMin surface it finishes, for each kind of surface it is for
 * @param reached cells it finishes within the tolerance, of those kinds
 */
public record Candidate(
        MountedCutter cutter,
        double roughMm3PerMin,
        BitSet roughReached,
        Map<SurfaceKind, Double> finishMm2PerMin,
        Map<SurfaceKind, BitSet> reached) {
    public Candidate {
        finishMm2PerMin = Map.copyOf(finishMm2PerMin);
        reached = Map.copyOf(reached);
        if (!reached.keySet().equals(finishMm2PerMin.keySet()))
            throw new IllegalArgumentException(
                    "candidate " + cutter.cutter().id() + ": reach and rates differ in kind");
    }
}
