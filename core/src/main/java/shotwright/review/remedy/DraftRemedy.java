package shotwright.review.remedy;

import java.util.List;
import shotwright.finding.Finding;
import shotwright.geom.Vec3;

/**
 * The proposal.
 *
 * @param wish what was asked for
 * @param volumeBeforeMm3 volume of the part as it came
 * @param volumeAfterMm3 volume of the proposed part, measured in the file that was written
 * @param sizeBefore its sizes along the axes of the file
 * @param sizeAfter those of the proposed part
 * @param leaned walls that have their draft now
 * @param refused walls that stay as they are
 * @param partStep the proposed part as a STEP file; empty when no wall was leaned
 * @param findings what has to be said
 */
public record DraftRemedy(
        DraftWish wish,
        double volumeBeforeMm3,
        double volumeAfterMm3,
        Vec3 sizeBefore,
        Vec3 sizeAfter,
        List<LeanedWall> leaned,
        List<RefusedWall> refused,
        byte[] partStep,
        List<Finding> findings) {
    /** Name of the file it is written to. */
    public static final String FILE = "part-with-draft.step";

    public DraftRemedy {
        leaned = List.copyOf(leaned);
        refused = List.copyOf(refused);
        findings = List.copyOf(findings);
    }

    public boolean hasPart() {
        return partStep.length > 0;
    }
}
