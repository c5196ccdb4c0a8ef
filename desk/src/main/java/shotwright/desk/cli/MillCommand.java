package shotwright.desk.cli;

import picocli.CommandLine.Command;
import shotwright.job.Station;

/** Up to the programs of both halves and their proof. */
@Command(
        name = "mill",
        mixinStandardHelpOptions = true,
        description =
                "up to milling programs for both halves, proved against their stock, with set-up sheets and a kit list")
final class MillCommand extends FolderCommand {
    MillCommand() {
        super(Station.MILLING);
    }
}
