package shotwright.machining.choice;

import java.util.List;
import java.util.Map;
import shotwright.machining.contact.SurfaceKind;

/**
 * A set of cutters and the time it takes.
 *
 * @param shares what each cutter does, largest cutter first
 * @param changeS time for putting them in, one after the other
 * @param missedMm2 surface none of them finishes
 */
public record CutterSet(List<Share> shares, double changeS, double missedMm2) {
    /**
     * What one cutter does.
     *
     * @param candidate the cutter
     * @param roughMm3 metal it roughs away
     * @param finishMm2 surface it finishes that no larger one of the set does, by kind
     * @param timeS its time in the metal
     */
    public record Share(Candidate candidate, double roughMm3, Map<SurfaceKind, Double> finishMm2, double timeS) {
        public Share {
            finishMm2 = Map.copyOf(finishMm2);
        }
    }

    public CutterSet {
        shares = List.copyOf(shares);
    }

    /** Cutting and changes. */
    public double timeS() {
        return changeS + shares.stream().mapToDouble(Share::timeS).sum();
    }

    public int count() {
        return shares.size();
    }
}
