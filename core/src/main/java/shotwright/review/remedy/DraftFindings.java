package shotwright.review.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import shotwright.brep.ExactFailure;
import shotwright.finding.Finding;
import shotwright.measure.Digits;
import shotwright.measure.Source;

/** What has to be said about a proposal. */
final class DraftFindings {
    private static final Source ASKED = Source.measured("exact faces of the proposed part, read back");

    private DraftFindings() {}

    static List<Finding> of(DraftWish wish, List<LeanedWall> leaned, List<RefusedWall> refused, double moreMm3) {
        String deg = Digits.fixed(wish.draftDeg(), 2) + "°";
        if (leaned.isEmpty() && refused.isEmpty())
            return List.of(Finding.note("draft-complete", "Every wall has " + deg + " of draft already."));
        List<Finding> out = new ArrayList<>();
        if (!leaned.isEmpty()) {
            double least =
                    leaned.stream().mapToDouble(LeanedWall::afterDeg).min().orElseThrow();
            double most = leaned.stream()
                    .mapToDouble(w -> Math.abs(w.movesMm()))
                    .max()
                    .orElseThrow();
            out.add(Finding.ask(
                            "draft-proposed",
                            "A part with " + deg + " on " + count(leaned.size(), "face") + " is proposed in "
                                    + DraftRemedy.FILE + ". It keeps its sizes "
                                    + wish.neutral().words()
                                    + "; the farthest edge moves by " + Digits.fixed(most, 2) + " mm, and there is "
                                    + Digits.fixed(Math.abs(moreMm3), 1) + " mm³ "
                                    + (moreMm3 < 0 ? "less" : "more") + " plastic.")
                    .measured(least, wish.draftDeg(), "deg", ASKED)
                    .remedy("Review that part too, then send it to the customer and ask whether it may be made so."));
        }
        if (!refused.isEmpty()) {
            String numbers =
                    refused.stream().map(r -> String.valueOf(r.face().number())).collect(Collectors.joining(", "));
            out.add(Finding.watch(
                            "draft-refused",
                            count(refused.size(), "face") + " could not be leaned: " + numbers
                                    + ". Each is listed with its reason and what else can be done.")
                    .remedy(refused.getFirst().remedy()));
        }
        return out;
    }

    static Finding missing(ExactFailure why) {
        return Finding.watch("draft-missing", "No part with draft could be made. " + why.getMessage())
                .remedy("Run it again; or lean the walls in the drawing, or cut them with tapered end mills.");
    }

    private static String count(int n, String what) {
        return n == 1 ? "one " + what : n + " " + what + "s";
    }
}
