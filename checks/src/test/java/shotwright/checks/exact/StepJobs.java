package shotwright.checks.exact;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import shotwright.brep.ExactEngine;
import shotwright.brep.ExactFailure;
import shotwright.brep.ExactShapes;
import shotwright.brep.Solid;
import shotwright.job.CardFile;
import shotwright.job.JobCard;
import shotwright.job.JobResult;
import shotwright.job.Line;
import shotwright.job.Shop;
import shotwright.job.Station;
import shotwright.progress.Progress;

/**
 * Runs the line as far as the review on parts made here or read from a file.
 *
 * @param engine what works on exact solids
 * @param folder where parts and cards are left
 */
record StepJobs(ExactEngine engine, Path folder) {
    /** Makes a part. */
    @FunctionalInterface
    interface Made {
        Solid by(ExactShapes x) throws ExactFailure;
    }

    /** Pulled along z, with other entries of the card besides. */
    JobResult alongZ(Made made, String more) throws ExactFailure, IOException {
        Path step = folder.resolve("part.step");
        try (ExactShapes x = new ExactShapes(engine, Progress.SILENT)) {
            Files.write(step, x.writeStep("part", List.of(made.by(x))));
        }
        return of(step, "\"pull\": [0, 0, 1]" + (more.isEmpty() ? "" : ", " + more));
    }

    JobResult of(Path step, String entries) throws IOException {
        Path card = folder.resolve("card.json");
        Files.writeString(
                card, "{\"card\": \"" + JobCard.KIND + "\"" + (entries.isEmpty() ? "" : ", " + entries) + "}");
        return new Line(Shop.standard(), engine).run(step, CardFile.read(card), Station.REVIEW, null, Progress.SILENT);
    }
}
