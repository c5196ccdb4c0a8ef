package shotwright.checks.mutate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shotwright.checks.Repository;

class MutateStepTest {
    @Test
    void damagedStepEndsInAPartAFindingOrAComplaintThatSaysWhere(@TempDir Path folder) throws IOException {
        Path shared = Repository.root().resolveSibling("shared").resolve("parts");
        try (MutateStep run = new MutateStep(folder, shared)) {
            assumeTrue(run.hasParts(), "the shared parts are not beside the repository");
            assumeTrue(run.whatIsMissing().isEmpty(), () -> run.whatIsMissing().orElse(""));
            for (long seed = 1; seed <= 200; seed++) run.one(seed);
            assertThat(run.endings().failures()).isEmpty();
            // neither so mild that all is accepted nor so rough that the engine sees nothing of it
            assertThat(run.endings().count("part")).isBetween(10, 120);
            assertThat(run.endings().count("complaint")).isGreaterThan(60);
        }
    }
}
