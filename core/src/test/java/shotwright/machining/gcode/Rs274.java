package shotwright.machining.gcode;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the stand-alone RS274/NGC interpreter {@code rs274} (Debian package {@code linuxcnc-uspace}) makes of a program. Every cutter in its
 * table has no length and no diameter: without a machine's own settings it takes the table for inches. Each run has a home folder of its own,
 * because it leaves a shared file there; no variable file is given, because it would be written back.
 */
final class Rs274 {
    private static final Pattern CALL = Pattern.compile("^\\s*\\d+\\s+N\\S+\\s+([A-Z0-9_]+)\\((.*)\\)\\s*$");

    private Rs274() {}

    /** One canonical call: the name and what stands in its brackets. */
    record Call(String name, String arguments) {
        double number(int index) {
            return Double.parseDouble(arguments.split(",")[index].strip());
        }
    }

    /** How a run ended. */
    record Heard(int exit, List<Call> calls, String errors) {
        List<Call> moves() {
            return calls.stream()
                    .filter(c -> List.of("STRAIGHT_TRAVERSE", "STRAIGHT_FEED", "ARC_FEED")
                            .contains(c.name()))
                    .toList();
        }
    }

    static boolean isInstalled() {
        return Arrays.stream(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                .anyMatch(p -> Files.isExecutable(Path.of(p, "rs274")));
    }

    static Heard run(Path folder, String program) throws IOException, InterruptedException {
        assumeTrue(
                isInstalled(),
                "rs274 is not installed on this machine: programs were not read by an outside interpreter");
        Path home = Files.createTempDirectory(folder, "home");
        Path table = Files.writeString(
                home.resolve("tool.tbl"), "T1 P1 Z0 D0 ;\nT2 P2 Z0 D0 ;\nT3 P3 Z0 D0 ;\nT4 P4 Z0 D0 ;\n");
        Path file = Files.writeString(home.resolve("program.ngc"), program, StandardCharsets.US_ASCII);
        Path said = home.resolve("canon.txt"), errors = home.resolve("errors.txt");
        ProcessBuilder builder = new ProcessBuilder("rs274", "-g", "-t", table.toString(), file.toString());
        builder.environment().put("HOME", home.toString());
        builder.redirectOutput(said.toFile()).redirectError(errors.toFile()).redirectInput(new File("/dev/null"));
        Process process = builder.start();
        if (!process.waitFor(60, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new IllegalStateException("rs274 did not end within a minute");
        }
        List<Call> calls = new ArrayList<>();
        for (String line : Files.readAllLines(said)) {
            Matcher m = CALL.matcher(line);
            if (m.matches()) calls.add(new Call(m.group(1), m.group(2)));
        }
        return new Heard(process.exitValue(), calls, Files.readString(errors));
    }
}
