package shotwright.desk.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import shotwright.job.Station;

/** A command that takes a part down the line to a station and prints what was found; nothing is written but a proposed part. */
@SuppressWarnings("NullAway.Init") // picocli fills the fields
abstract class PartCommand implements Callable<Integer> {
    final Station last;

    @Parameters(paramLabel = "PART", description = "part file: STEP, STL, OBJ or 3MF")
    Path part;

    @Mixin
    JobOptions options;

    @Spec
    CommandSpec spec;

    PartCommand(Station last) {
        this.last = last;
    }

    final PrintWriter out() {
        return spec.commandLine().getOut();
    }

    @Override
    public Integer call() {
        return LineRun.print(part, options, last, out());
    }
}
