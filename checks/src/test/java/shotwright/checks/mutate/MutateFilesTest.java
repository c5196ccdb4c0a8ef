package shotwright.checks.mutate;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shotwright.checks.Repository;

class MutateFilesTest {
    @Test
    void damagedFilesEndInAPartAFindingOrAComplaint(@TempDir Path folder) throws IOException {
        Path shared = Repository.root().resolveSibling("shared").resolve("parts");
        MutateFiles run = new MutateFiles(folder, shared);
        for (long seed = 1; seed <= 2000; seed++) run.one(seed);
        assertThat(run.endings().failures()).isEmpty();
        // the damage is neither so mild that all is accepted nor so rough that nothing gets past the first look
        assertThat(run.endings().count("part")).isBetween(100, 1200);
        assertThat(run.endings().count("refused")).isGreaterThan(200);
        assertThat(run.endings().count("complaint")).isGreaterThan(300);
    }
}
