package shotwright.mold.export;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Objects;

/**
 * Writes a file under a passing name in its own folder and gives it its name when it is complete, so that stopping halfway leaves the old
 * file or none, never half a file.
 */
public final class WholeFile {
    private WholeFile() {}

    /** Puts out the content. */
    @FunctionalInterface
    public interface Content {
        void writeTo(OutputStream out) throws IOException;
    }

    /** Writes one file whole. @throws IOException when the folder cannot be written to; the old file is untouched */
    public static void write(Path file, Content content) throws IOException {
        Path folder = Objects.requireNonNullElse(file.toAbsolutePath().getParent(), Path.of("."));
        Path passing = folder.resolve(
                "." + file.getFileName() + "." + ProcessHandle.current().pid() + ".part");
        passing.toFile().deleteOnExit(); // when the program is stopped while writing
        try {
            try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(passing), 1 << 16)) {
                content.writeTo(out);
            }
            try {
                Files.move(passing, file, StandardCopyOption.ATOMIC_MOVE);
            } catch (AtomicMoveNotSupportedException e) {
                Files.move(passing, file, StandardCopyOption.REPLACE_EXISTING);
            }
        } finally {
            Files.deleteIfExists(passing);
        }
    }
}
