package shotwright.desk.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;
import shotwright.job.Station;

/** A command that takes a part down the line to a station and leaves everything in a job folder. */
@SuppressWarnings("NullAway.Init") // picocli fills the fields
abstract class FolderCommand extends PartCommand {
    @Option(
            names = "--out",
            required = true,
            paramLabel = "DIR",
            description = "job folder; what is still valid in it is taken up again")
    Path folder;

    FolderCommand(Station last) {
        super(last);
    }

    @Override
    public Integer call() {
        return LineRun.intoFolder(part, options, last, folder, out());
    }
}
