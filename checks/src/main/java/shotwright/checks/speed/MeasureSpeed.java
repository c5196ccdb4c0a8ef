package shotwright.checks.speed;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;
import shotwright.intake.IntakeException;

/** Prints rates of the ground's heavy work. {@code MeasureSpeed PART…}; the parting includes the sight of every facet and the area union. */
public final class MeasureSpeed {
    private MeasureSpeed() {}

    public static void main(String[] args) throws RunnerException, IntakeException {
        if (args.length == 0) {
            System.err.println("usage: MeasureSpeed PART…");
            System.exit(2);
        }
        for (String part : args) {
            if (!Files.isReadable(Path.of(part))) {
                System.err.println("cannot read " + part);
                System.exit(2);
            }
            int facets = GroundBench.read(part).facetCount();
            System.out.printf("%n%s, %,d facets%n", Path.of(part).getFileName(), facets);
            var options = new OptionsBuilder()
                    .include(GroundBench.class.getName())
                    .param("part", part)
                    .forks(1)
                    .jvmArgsAppend("-Xmx2g")
                    .warmupIterations(3)
                    .warmupTime(TimeValue.seconds(1))
                    .measurementIterations(5)
                    .measurementTime(TimeValue.seconds(1))
                    .verbosity(VerboseMode.SILENT)
                    .build();
            for (RunResult r : new Runner(options).run()) System.out.println(line(r, facets));
        }
    }

    private static String line(RunResult r, int facets) {
        String name = r.getPrimaryResult().getLabel();
        double ms = r.getPrimaryResult().getScore(),
                error = r.getPrimaryResult().getScoreError();
        double each = ms / 1000;
        String rate =
                switch (name) {
                    case "memoryCopy" ->
                        "%.1f GB/s read and written".formatted(2.0 * 8 * GroundBench.COPIED / each / 1e9);
                    case "raysThroughWalls" -> "%,.0f rays/s".formatted(GroundBench.RAYS / each);
                    default -> "%,.0f facets/s".formatted(facets / each);
                };
        return String.format(Locale.ROOT, "%-18s %10.2f ms ± %-8.2f %s", name, ms, error, rate);
    }
}
