package shotwright.checks.reread;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What ADMESH, an independent open-source mesh tool (Debian package {@code admesh}), says of an STL file: edges matched exactly, facets turned
 * alike, volume by its own sum.
 *
 * @param facets facets it read
 * @param disconnected facets that lack a neighbour
 * @param mended facets it would have to drop, add or turn, edges it would have to move or that run backwards
 * @param parts connected pieces
 * @param volumeMm3 its volume, summed in single precision
 */
record Admesh(int facets, int disconnected, int mended, int parts, double volumeMm3) {
    static Admesh of(Path stl) throws IOException {
        assumeTrue(isInstalled(), "admesh is not installed on this machine: the halves were not read again by it");
        Process run = new ProcessBuilder("admesh", "--exact", "--normal-directions", "--normal-values", stl.toString())
                .redirectErrorStream(true)
                .start();
        String said = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        int mended = 0;
        for (String row : new String[] {
            "Degenerate facets", "Edges fixed", "Facets removed", "Facets added", "Facets reversed", "Backwards edges"
        }) mended += (int) number(said, row);
        return new Admesh(
                (int) number(said, "Number of facets"),
                (int) number(said, "Total disconnected facets"),
                mended,
                (int) number(said, "Number of parts"),
                number(said, "Volume"));
    }

    private static boolean isInstalled() {
        String path = System.getenv("PATH");
        return path != null
                && Arrays.stream(path.split(File.pathSeparator))
                        .anyMatch(p -> Files.isExecutable(Path.of(p, "admesh")));
    }

    private static double number(String said, String row) {
        Matcher m = Pattern.compile(Pattern.quote(row) + "\\s*:\\s*(-?[0-9.]+)").matcher(said);
        if (!m.find()) throw new IllegalStateException("admesh says nothing of \"" + row + "\":\n" + said);
        return Double.parseDouble(m.group(1));
    }
}
