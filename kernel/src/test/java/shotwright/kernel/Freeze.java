package shotwright.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Stops a process where it stands, so that it neither works nor ends: the nearest thing to one that hangs. */
final class Freeze {
    private Freeze() {}

    static void process(long pid) throws IOException, InterruptedException {
        Path kill = Path.of("/bin/kill");
        assumeTrue(Files.isExecutable(kill), "a process can be stopped so only where there is /bin/kill");
        assertThat(new ProcessBuilder(kill.toString(), "-STOP", Long.toString(pid))
                        .start()
                        .waitFor())
                .isZero();
    }
}
