package shotwright.review;

import java.util.List;
import shotwright.finding.Finding;
import shotwright.geom.Vec2;
import shotwright.part.PulledPart;

/**
 * What station 20 leaves behind. Findings are in order stop, ask, watch, note; the number of a finding is its place in the list, counted
 * from 1, and stands in the {@code finding} component of every row it speaks of.
 *
 * @param pulled the part turned to its pull
 * @param pull which pull and why
 * @param projectedAreaMm2 exact projected area, holes taken off
 * @param projectedCentroidMm its centre, pulled frame
 * @param hiddenShare share of the shadow under a further layer
 * @param wall wall thickness
 * @param draft walls by kind and lean, worst first
 * @param undercuts places neither half can form, largest first
 * @param holes through holes along the pull
 * @param corners inside corners and slots of the mold
 * @param lettering marks
 * @param slender tall thin things
 * @param faces the part face by face; empty when it came as triangles
 * @param questions what to ask the customer, one sentence each
 * @param findings what has to be said
 */
public record ReviewResult(
        PulledPart pulled,
        PullChoice pull,
        double projectedAreaMm2,
        Vec2 projectedCentroidMm,
        double hiddenShare,
        WallReview wall,
        List<DraftRegion> draft,
        List<Undercut> undercuts,
        List<ThroughHole> holes,
        List<InsideCorner> corners,
        List<Lettering> lettering,
        List<Slender> slender,
        List<FaceReview> faces,
        List<String> questions,
        List<Finding> findings) {
    public ReviewResult {
        draft = List.copyOf(draft);
        undercuts = List.copyOf(undercuts);
        holes = List.copyOf(holes);
        corners = List.copyOf(corners);
        lettering = List.copyOf(lettering);
        slender = List.copyOf(slender);
        faces = List.copyOf(faces);
        questions = List.copyOf(questions);
        findings = List.copyOf(findings);
    }
}
