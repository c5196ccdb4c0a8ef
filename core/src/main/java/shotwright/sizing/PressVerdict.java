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

    /** The check of one subject. */
    public PressCheck check(PressCheck.Subject subject) {
        return checks.stream()
                .filter(c -> c.subject() == subject)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("subject: " + subject + " was not checked"));
    }
}
