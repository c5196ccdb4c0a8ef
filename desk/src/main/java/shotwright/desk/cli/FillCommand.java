package shotwright.desk.cli;

import picocli.CommandLine.Command;
import shotwright.job.Station;

/** Up to filling and cooling, first order. */
@Command(
        name = "fill",
        mixinStandardHelpOptions = true,
        description = "will it fill and how fast can it run (first-order estimate), without writing files")
final class FillCommand extends PartCommand {
    FillCommand() {
        super(Station.COOL);
    }
}
