package shotwright.desk.cli;

import picocli.CommandLine.Command;
import shotwright.job.Station;

/** Up to the two mold halves. */
@Command(
        name = "halves",
        mixinStandardHelpOptions = true,
        description = "up to the two mold halves: STL, 3MF, STEP, outlines (DXF), drawings (SVG)")
final class HalvesCommand extends FolderCommand {
    HalvesCommand() {
        super(Station.HALVES);
    }
}
