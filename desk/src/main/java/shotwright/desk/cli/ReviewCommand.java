package shotwright.desk.cli;

import picocli.CommandLine.Command;
import shotwright.job.Station;

/** First answer: intake, review, presses, price band. */
@Command(
        name = "review",
        mixinStandardHelpOptions = true,
        description = "first answer: can it be molded, on which press, for about what price")
final class ReviewCommand extends PartCommand {
    ReviewCommand() {
        super(Station.SIZING);
    }
}
