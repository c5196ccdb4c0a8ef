package shotwright.desk.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import shotwright.job.Station;

/** Up to filling and cooling, first order. */
@Command(
        name = "fill",
        mixinStandardHelpOptions = true,
        description = "will it fill and how fast can it run (first-order estimate), without writing files")
@SuppressWarnings("NullAway.Init") // picocli fills the fields
final class FillCommand implements Callable<Integer> {
    @Parameters(paramLabel = "PART", description = "part file: STEP, STL, OBJ or 3MF")
    Path part;

    @Mixin
    JobOptions options;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        return LineRun.print(part, options, Station.COOL, spec.commandLine().getOut());
    }
}
