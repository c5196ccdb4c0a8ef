package shotwright.job;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import org.jspecify.annotations.Nullable;

/** Tells one build of the program from another, so that results of an older one are not taken up. */
final class ProgramVersion {
    private static final String KEY = find();

    private ProgramVersion() {}

    static String key() {
        return KEY;
    }

    private static String find() {
        @Nullable CodeSource source = ProgramVersion.class.getProtectionDomain().getCodeSource();
        if (source == null) return "unknown";
        try {
            Path jar = Path.of(source.getLocation().toURI());
            return Files.size(jar) + "@" + Files.getLastModifiedTime(jar).toMillis();
        } catch (IOException | URISyntaxException | IllegalArgumentException e) {
            return "unknown";
        }
    }
}
