package shotwright.kernel;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Where the engine's own files lie: a folder {@code exact} beside this module's jar or classes, or the one named by the system property
 * {@code shotwright.exact}.
 *
 * @param folder the folder
 * @param nativeLibrary the V8 library for this computer, when there is one
 */
record EngineFiles(Path folder, Optional<Path> nativeLibrary) {
    static EngineFiles find() {
        String named = System.getProperty("shotwright.exact");
        Path folder = named != null ? Path.of(named) : besideThisModule();
        return new EngineFiles(folder, library(folder));
    }

    private static Path besideThisModule() {
        try {
            return Path.of(EngineFiles.class
                            .getProtectionDomain()
                            .getCodeSource()
                            .getLocation()
                            .toURI())
                    .resolveSibling("exact");
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Optional<Path> library(Path folder) {
        String system = System.getProperty("os.name").toLowerCase(java.util.Locale.ROOT);
        String os = system.contains("win") ? "windows" : system.contains("mac") ? "macos" : "linux";
        String arch = System.getProperty("os.arch").equals("aarch64") ? "arm64" : "x86_64";
        if (!Files.isDirectory(folder)) return Optional.empty();
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(p -> p.getFileName().toString().contains("javet-v8-" + os + "-" + arch))
                    .findFirst();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** What keeps the engine from starting, in a sentence; empty when nothing does. */
    Optional<String> whatIsMissing() {
        if (!Files.isReadable(folder.resolve("replicad_single.wasm")))
            return Optional.of(
                    "The files of the exact-solid engine are not at " + folder + "; build Shotwright again.");
        if (nativeLibrary.isEmpty())
            return Optional.of("There is no exact-solid engine for this computer ("
                    + System.getProperty("os.name") + ", " + System.getProperty("os.arch")
                    + "), so STEP cannot be read or written here. Ask for STL or 3MF; everything else works.");
        return Optional.empty();
    }
}
