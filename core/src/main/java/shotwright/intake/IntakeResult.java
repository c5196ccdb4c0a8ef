package shotwright.intake;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.finding.Finding;
import shotwright.part.Part;

/**
 * What intake leaves behind.
 *
 * @param part the accepted part; null when the solid was refused, and then a finding of severity stop says why
 * @param facts what could be measured in any case
 * @param findings what there is to say
 */
public record IntakeResult(@Nullable Part part, IntakeFacts facts, List<Finding> findings) {
    public IntakeResult {
        findings = List.copyOf(findings);
    }
}
