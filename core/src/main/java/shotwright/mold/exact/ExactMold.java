package shotwright.mold.exact;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import shotwright.finding.Finding;

/**
 * Both halves as exact solids, or why there are none.
 *
 * @param a half A; null when none could be made
 * @param b half B; null when none could be made
 * @param partStep one cavity's part with its shrink, as a STEP file; empty when it could not be placed
 * @param balanceError |A + B + parts + cut-outs − block| / block, each weighed from its own exact surfaces
 * @param cutOutMm3 feed, vents and holes by their closed forms where nothing trims them, else as weighed
 * @param findings what has to be said
 */
public record ExactMold(
        @Nullable ExactHalf a,
        @Nullable ExactHalf b,
        byte[] partStep,
        double balanceError,
        double cutOutMm3,
        List<Finding> findings) {
    public ExactMold {
        findings = List.copyOf(findings);
    }

    /** The halves there are, A first. */
    public List<ExactHalf> halves() {
        return Stream.of(a, b).filter(Objects::nonNull).toList();
    }

    static ExactMold none(byte[] partStep, Finding why) {
        return new ExactMold(null, null, partStep, Double.NaN, 0, List.of(why));
    }
}
