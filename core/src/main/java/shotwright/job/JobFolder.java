package shotwright.job;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import shotwright.mold.export.WholeFile;

/**
 * The folder a job is left in. Every file is written beside its place and moved there whole, so that a stop, a full disk or a power cut leaves
 * the old file or the new one, never a half. Names are fixed by the program; nothing read from a part file becomes a path.
 */
public final class JobFolder {
    private final Path root;

    private JobFolder(Path root) {
        this.root = root;
    }

    /**
     * Opens a folder, making it where it does not exist, and clears away what a run that was killed left half written in it.
     *
     * @throws JobException when the folder cannot be made or written in
     */
    public static JobFolder open(Path root) {
        try {
            Files.createDirectories(root);
        } catch (FileAlreadyExistsException e) {
            throw new JobException("“" + root + "” is a file, not a folder. Name another folder with --out.", e);
        } catch (IOException e) {
            throw new JobException(
                    "The folder “" + root + "” cannot be made: " + reason(e) + ". Name another folder with --out.", e);
        }
        if (!Files.isWritable(root))
            throw new JobException(
                    "The folder “" + root + "” cannot be written in. Name another folder with --out.", null);
        try (Stream<Path> folders = Files.find(root, 2, (p, a) -> a.isDirectory())) {
            for (Path folder : folders.toList()) WholeFile.sweep(folder);
        } catch (IOException | UncheckedIOException unreadable) {
            // they are in nobody's way
        }
        return new JobFolder(root.toAbsolutePath().normalize());
    }

    public Path root() {
        return root;
    }

    /** A path inside the folder. */
    public Path path(String name) {
        Path p = root.resolve(name).normalize();
        if (!p.startsWith(root)) throw new IllegalArgumentException("name: '" + name + "' leaves the folder");
        return p;
    }

    /** Writes a file that is not there yet, or replaces one, whole. */
    @FunctionalInterface
    public interface FileWriter {
        void writeTo(Path file) throws IOException;
    }

    /** Writes one file whole. */
    public void write(String name, WholeFile.Content content) {
        writeFile(name, file -> WholeFile.write(file, content));
    }

    /** Lets a writer that writes whole files by itself write one. */
    public void writeFile(String name, FileWriter writer) {
        Path target = path(name);
        try {
            Files.createDirectories(target.getParent());
            writer.writeTo(target);
        } catch (IOException e) {
            throw new JobException(
                    "“" + target + "” could not be written: " + reason(e) + ". What was there before is untouched.", e);
        }
    }

    /** Writes a text file whole, in UTF-8. */
    public void writeText(String name, String text) {
        write(name, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
    }

    /** Removes a file that an earlier run left and this one no longer makes. */
    public void remove(String name) {
        try {
            Files.deleteIfExists(path(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Removes what earlier runs made in a folder of the job and this one did not.
     *
     * @param own names such a run gives; whatever else lies there is the shop's
     * @param made names of files that stay
     */
    public void removeOthers(String folder, Pattern own, Set<String> made) {
        if (!Files.isDirectory(path(folder))) return;
        try (Stream<Path> files = Files.list(path(folder))) {
            for (Path f : files.toList()) {
                String name = String.valueOf(f.getFileName());
                if (own.matcher(name).matches() && !made.contains(name)) Files.deleteIfExists(f);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String reason(IOException e) {
        String m = e.getMessage();
        return switch (e) {
            case java.nio.file.AccessDeniedException a -> "permission denied";
            case java.nio.file.NoSuchFileException n -> "there is no such place";
            default -> m == null ? "the disk refused" : m;
        };
    }
}
