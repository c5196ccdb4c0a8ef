package shotwright.desk.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import shotwright.job.Station;

/** First answer: intake, review, presses, price band. */
@Command(
        name = "review",
        mixinStandardHelpOptions = true,
        description = "first answer: can it be molded, on which press, for about what price")
@SuppressWarnings("NullAway.Init") // picocli fills the fields
final class ReviewCommand implements Callable<Integer> {
    @Parameters(paramLabel = "PART", description = "part file: STEP, STL, OBJ or 3MF")
    Path part;

    @Mixin
    JobOptions options;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        return LineRun.print(part, options, Station.SIZING, spec.commandLine().getOut());
    }
}
