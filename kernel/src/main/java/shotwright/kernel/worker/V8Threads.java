package shotwright.kernel.worker;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * V8's own threads in this process. For seconds after a STEP file was read they compile anew what reading it took, while the review next door
 * wants the processors.
 */
final class V8Threads {
    private static final Path THREADS = Path.of("/proc/self/task");

    private V8Threads() {}

    /** On Linux they leave the processors to whoever else has work; elsewhere nothing happens. */
    static void giveWay() {
        if (!Files.isDirectory(THREADS)) return;
        try (Stream<Path> threads = Files.list(THREADS)) {
            List<String> command = new ArrayList<>(List.of("renice", "-n", "10", "-p"));
            threads.filter(V8Threads::isOne)
                    .map(t -> String.valueOf(t.getFileName()))
                    .forEach(command::add);
            new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
        } catch (IOException | UncheckedIOException slowerAtMost) {
            // a thread has ended, or there is no renice
        }
    }

    private static boolean isOne(Path thread) {
        try {
            return Files.readString(thread.resolve("comm")).startsWith("V8 ");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
