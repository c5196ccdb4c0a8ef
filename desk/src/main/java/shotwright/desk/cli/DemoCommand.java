package shotwright.desk.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import shotwright.job.JobCard;
import shotwright.job.JobFolder;
import shotwright.job.LayoutCard;
import shotwright.job.Shop;
import shotwright.job.Station;

/** The whole line on the demo part: an invented loom maker's tension knob. */
@Command(
        name = "demo",
        mixinStandardHelpOptions = true,
        description = "the whole line on the demo part, from file to job folder")
@SuppressWarnings("NullAway.Init") // picocli fills the fields
final class DemoCommand implements Callable<Integer> {
    private static final String PART = "tension-knob.stl";

    @Option(
            names = "--out",
            paramLabel = "DIR",
            defaultValue = "demo-job",
            description = "job folder (default: ${DEFAULT-VALUE})")
    Path out;

    @Option(
            names = "--lengths",
            paramLabel = "mm|in",
            defaultValue = "mm",
            description = "lengths on the pages in mm or in inches (default: ${DEFAULT-VALUE})")
    String lengths;

    @Option(names = "--json", description = "print the results as JSON, always in metric units")
    boolean json;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        JobFolder.open(out).write("part/" + PART, to -> {
            try (InputStream in = DemoCommand.class.getResourceAsStream("/shotwright/examples/" + PART)) {
                if (in == null) throw new IOException("the demo part is missing from this build");
                in.transferTo(to);
            }
        });
        return LineRun.intoFolder(
                out.resolve("part").resolve(PART),
                card(),
                Shop.standard(),
                Station.SHEET,
                out,
                json,
                spec.commandLine().getOut());
    }

    private JobCard card() {
        return new JobCard(
                JobCard.KIND,
                "Tension knob, warp beam",
                "Ostrander Looms (invented)",
                "mm",
                Set.of(),
                null,
                List.of(),
                List.of("abs", "pp-copo", "pom-c"),
                "electric-10t",
                null,
                1,
                List.of(50, 100, 500),
                null,
                List.of(),
                LayoutCard.EMPTY,
                null,
                null,
                lengths,
                null);
    }
}
