package shotwright.checks.mutate;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import shotwright.finding.Severity;
import shotwright.intake.IntakeException;
import shotwright.intake.IntakeResult;
import shotwright.mesh.Edges;
import shotwright.part.Part;

/** How the readings of damaged files ended, counted, and every reading that ended otherwise than it may. */
final class Endings {
    private final Path folder;
    private final double longestS;
    private final Predicate<IntakeException> saysWhere;
    private final Map<String, int[]> tally = new TreeMap<>();
    private final List<String> failures = new ArrayList<>();
    private double slowestS;
    private long slowestSeed;

    /** A damaged file that was read wrongly is kept in the folder; a reading may take so many seconds and a complaint must say enough. */
    Endings(Path folder, double longestS, Predicate<IntakeException> saysWhere) {
        this.folder = folder;
        this.longestS = longestS;
        this.saysWhere = saysWhere;
    }

    /** Writes the damaged bytes, reads them and judges how that ended. */
    void one(long seed, String madeFrom, byte[] damaged, Function<Path, IntakeResult> reader) throws IOException {
        Path file = folder.resolve("damaged-" + seed);
        Files.write(file, damaged);
        long start = System.nanoTime();
        String fault = "";
        try {
            fault = judged(reader.apply(file));
        } catch (IntakeException e) {
            fault = judged(e);
        } catch (Throwable t) { // whatever else it is, that is what is looked for
            fault = t + " at " + (t.getStackTrace().length == 0 ? "?" : t.getStackTrace()[0]);
        }
        double s = (System.nanoTime() - start) * 1e-9;
        if (s > slowestS) {
            slowestS = s;
            slowestSeed = seed;
        }
        if (s > longestS) fault += String.format(Locale.ROOT, " took %.1f s", s);
        if (fault.isEmpty()) Files.delete(file);
        else failures.add("seed " + seed + " (" + madeFrom + ", kept as " + file + "): " + fault);
    }

    private String judged(IntakeResult result) {
        Part part = result.part();
        boolean stop = result.findings().stream().anyMatch(f -> f.severity() == Severity.STOP);
        if (part == null) {
            told("refused");
            return stop ? "" : "refused without a finding that says stop";
        }
        told("part");
        if (stop) return "a part in spite of a finding that says stop";
        if (Edges.of(part.mesh()).unmatchedCount() != 0) return "an open part";
        double v = part.mass().volumeMm3(), a = part.mass().surfaceAreaMm2();
        return v > 0 && a > 0 && Double.isFinite(v) && Double.isFinite(a) ? "" : "volume " + v + ", area " + a;
    }

    private String judged(IntakeException e) {
        told("complaint");
        boolean plain = !String.valueOf(e.getMessage()).matches("(?s).*(\n|java\\.|Exception).*");
        return plain && !e.remedy().isBlank() && saysWhere.test(e) ? "" : "message: " + e.getMessage();
    }

    private void told(String ending) {
        tally.computeIfAbsent(ending, k -> new int[1])[0]++;
    }

    /** Adds what else went wrong. */
    void fail(String what) {
        failures.add(what);
    }

    List<String> failures() {
        return List.copyOf(failures);
    }

    int count(String ending) {
        return tally.getOrDefault(ending, new int[1])[0];
    }

    String report(double seconds) {
        StringBuilder s = new StringBuilder();
        tally.forEach((ending, n) -> s.append(ending).append(' ').append(n[0]).append(", "));
        s.append(failures.size()).append(" failures; ");
        s.append(String.format(Locale.ROOT, "%.0f s, slowest %.2f s (seed %d)", seconds, slowestS, slowestSeed));
        for (String f : failures) s.append('\n').append(f);
        return s.toString();
    }
}
