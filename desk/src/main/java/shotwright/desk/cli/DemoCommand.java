package shotwright.desk.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
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
    private static final String EXACT = "tension-knob.step", FACETS = "tension-knob.stl";

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
        JobFolder folder = JobFolder.open(out);
        Optional<String> missing = LineRun.withoutEngine();
        missing.ifPresent(
                why -> spec.commandLine().getErr().println(why + " The demo runs from the STL file of the part."));
        String part = missing.isEmpty() ? EXACT : FACETS;
        for (String other : List.of(EXACT, FACETS)) if (!other.equals(part)) folder.remove("part/" + other);
        folder.write("part/" + part, to -> {
            try (InputStream in = DemoCommand.class.getResourceAsStream("/shotwright/examples/" + part)) {
                if (in == null) throw new IOException("the demo part is missing from this build");
                in.transferTo(to);
            }
        });
        return LineRun.intoFolder(
                folder.path("part/" + part),
                card(),
                Shop::standard,
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
                null,
                null,
                LayoutCard.EMPTY,
                null,
                null,
                lengths,
                null);
    }
}
