package shotwright.sizing;

import java.util.List;
import shotwright.press.Press;

/**
 * What one press says to the job.
 *
 * @param press the press
 * @param verdict worst of its checks
 * @param firstReason first check that is not plain yes, in words; empty when all are
 * @param checks every check in order
 */
public record PressVerdict(Press press, Verdict verdict, String firstReason, List<PressCheck> checks) {
    public PressVerdict {
        checks = List.copyOf(checks);
    }

    /** Puts the checks together: the worst verdict, and the first check that has it. */
    public static PressVerdict of(Press press, List<PressCheck> checks) {
        Verdict worst = Verdict.FITS;
        for (PressCheck c : checks) worst = worst.and(c.verdict());
        String reason = "";
        for (PressCheck c : checks) {
            if (reason.isEmpty() && worst != Verdict.FITS && c.verdict() == worst) reason = c.words();
        }
        return new PressVerdict(press, worst, reason, checks);
    }

    /** How far it is from serving: 1000 for every respect in which it fails, and by how many times it falls short there; 0 when it serves. */
    double shortfallScore() {
        double score = 0;
        for (PressCheck c : checks) {
            if (c.verdict() == Verdict.NO)
                score += 1000 + Math.min(100, c.needed().value() / c.available().value());
        }
        return score;
    }

    /** The check of one subject. */
    public PressCheck check(PressCheck.Subject subject) {
        return checks.stream()
                .filter(c -> c.subject() == subject)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("subject: " + subject + " was not checked"));
    }
}
