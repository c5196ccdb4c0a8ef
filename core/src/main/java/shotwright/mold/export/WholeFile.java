package shotwright.mold.export;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Writes a file under a passing name in its own folder and gives it its name when it is complete, so that stopping halfway leaves the old
 * file or none, never half a file.
 */
public final class WholeFile {
    private static final String PASSING = ".part";
    private static final Pattern PASSING_NAME = Pattern.compile("\\..+\\.(\\d+)\\.part");

    private WholeFile() {}

    /** Removes from a folder what programs that were killed while writing left there. */
    public static void sweep(Path folder) throws IOException {
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder, "*" + PASSING)) {
            for (Path p : all) {
                Matcher name = PASSING_NAME.matcher(String.valueOf(p.getFileName()));
                if (name.matches() && !isRunning(name.group(1))) Files.deleteIfExists(p);
            }
        }
    }

    private static boolean isRunning(String pid) {
        return pid.length() < 18
                && ProcessHandle.of(Long.parseLong(pid))
                        .filter(ProcessHandle::isAlive)
                        .isPresent();
    }

    /** Puts out the content. */
    @FunctionalInterface
    public interface Content {
        void writeTo(OutputStream out) throws IOException;
    }

    /** Writes one file whole. @throws IOException when the folder cannot be written to; the old file is untouched */
    public static void write(Path file, Content content) throws IOException {
        Path folder = Objects.requireNonNullElse(file.toAbsolutePath().getParent(), Path.of("."));
        Path passing = folder.resolve(
                "." + file.getFileName() + "." + ProcessHandle.current().pid() + PASSING);
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
