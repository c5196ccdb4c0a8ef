package shotwright.checks;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;

/** Where the repository and the test parts beside it lie. */
public final class Repository {
    private Repository() {}

    /** The folder that holds {@code docs/packages.puml}. */
    public static Path root() {
        for (Path p = Path.of("").toAbsolutePath(); p != null; p = p.getParent()) {
            if (Files.exists(p.resolve("docs/packages.puml"))) return p;
        }
        throw new IllegalStateException("run the tests inside the repository");
    }

    /** A file of the test parts beside the repository; the test is skipped where they are not. */
    public static Path sharedPart(String name) {
        String set = System.getProperty("shotwright.parts");
        Path folder =
                set != null ? Path.of(set) : root().resolveSibling("shared").resolve("parts");
        assumeTrue(Files.isDirectory(folder), "test parts are not on this machine: ../shared/parts");
        return folder.resolve(name);
    }
}
