package shotwright.desk.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import shotwright.job.Station;

/** The whole line into a job folder. */
@Command(
        name = "run",
        mixinStandardHelpOptions = true,
        description = "the whole line: halves, press sheet, quote, pictures in a job folder")
@SuppressWarnings("NullAway.Init") // picocli fills the fields
final class RunCommand implements Callable<Integer> {
    @Parameters(paramLabel = "PART", description = "part file: STEP, STL, OBJ or 3MF")
    Path part;

    @Option(
            names = "--out",
            required = true,
            paramLabel = "DIR",
            description = "job folder; what is still valid in it is taken up again")
    Path out;

    @Mixin
    JobOptions options;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        return LineRun.intoFolder(
                part, options, Station.SHEET, out, spec.commandLine().getOut());
    }
}
