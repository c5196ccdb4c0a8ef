package shotwright.layout;

import shotwright.geom.Vec3;

/**
 * A place where the plastic could enter, with its score.
 *
 * @param rank counted from 1, best first
 * @param kind gate kind
 * @param atMm place on cavity 1, mold frame
 * @param score 0 … 1, more is better
 * @param wallMm wall there
 * @param flowLengthMm longest way the melt goes from there
 * @param keepClear true when it lies in an area the customer keeps clear
 * @param reason what speaks for or against it, in a sentence
 */
public record GateCandidate(
        int rank,
        Gate.Kind kind,
        Vec3 atMm,
        double score,
        double wallMm,
        double flowLengthMm,
        boolean keepClear,
        String reason) {}
