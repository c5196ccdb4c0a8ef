package shotwright.desk.cli;

import picocli.CommandLine.Command;
import shotwright.job.Station;

/** The whole line into a job folder. */
@Command(
        name = "run",
        mixinStandardHelpOptions = true,
        description = "the whole line: halves, milling programs, quote, press sheet, pictures in a job folder")
final class RunCommand extends FolderCommand {
    RunCommand() {
        super(Station.SHEET);
    }
}
