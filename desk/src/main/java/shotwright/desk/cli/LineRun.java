package shotwright.desk.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import shotwright.brep.ExactEngine;
import shotwright.job.JobCard;
import shotwright.job.JobException;
import shotwright.job.JobFolder;
import shotwright.job.JobResult;
import shotwright.job.Line;
import shotwright.job.Shop;
import shotwright.job.Station;
import shotwright.kernel.WorkerEngine;
import shotwright.progress.Progress;
import shotwright.report.FirstAnswerPage;
import shotwright.report.JobPapers;
import shotwright.report.SummaryJson;
import shotwright.review.remedy.DraftRemedy;

/** Runs the line for a command: progress on the terminal, Ctrl-C heard, results printed, exit code found. */
final class LineRun {
    private static final Pattern STEP_NAME = Pattern.compile("(?i).*\\.(step|stp)");

    private LineRun() {}

    /** Up to a station, printing the first answer or JSON; nothing is written but a proposed part. */
    static int print(Path part, JobOptions options, Station last, PrintWriter out) {
        JobCard card = options.card();
        JobResult job = watched(
                part, (engine, progress) -> new Line(shop(options.shop), engine).run(part, card, last, null, progress));
        Path proposed = proposal(job.draft());
        out.print(options.json ? SummaryJson.text(job) : FirstAnswerPage.text(job));
        if (proposed != null && !options.json) {
            out.println();
            out.println("The proposed part is in " + proposed + ".");
        }
        out.flush();
        return code(job);
    }

    /** Leaves a proposed part in the folder one is in. */
    private static @Nullable Path proposal(@Nullable DraftRemedy draft) {
        if (draft == null || !draft.hasPart()) return null;
        JobFolder here = JobFolder.open(Path.of("").toAbsolutePath());
        here.write(DraftRemedy.FILE, to -> to.write(draft.partStep()));
        return here.path(DraftRemedy.FILE);
    }

    /** Up to a station into a job folder. */
    static int intoFolder(Path part, JobOptions options, Station last, Path folder, PrintWriter out) {
        return intoFolder(part, options.card(), () -> shop(options.shop), last, folder, options.json, out);
    }

    static int intoFolder(
            Path part, JobCard card, Supplier<Shop> shop, Station last, Path folder, boolean json, PrintWriter out) {
        JobFolder files = JobFolder.open(folder);
        JobResult job = watched(part, (engine, progress) -> {
            JobResult done = new Line(shop.get(), engine).run(part, card, last, files, progress.part(0, 0.9));
            JobPapers.write(done, files, progress.part(0.9, 1));
            return done;
        });
        if (json) out.print(SummaryJson.text(job));
        else {
            out.print(FirstAnswerPage.text(job));
            out.println();
            out.println("Everything is in " + folder.toAbsolutePath().normalize() + "; start with 00-summary.md.");
        }
        out.flush();
        return code(job);
    }

    /** The standard rack, with the rack of the shop's folder laid over it. */
    static Shop shop(@Nullable Path folder) {
        if (folder == null) return Shop.standard();
        Path rack = folder.resolve("rack");
        if (!Files.isDirectory(rack))
            throw new JobException(
                    "--shop " + folder + ": there is no folder " + rack + ". Put the rack files under it, as in "
                            + rack.resolve("press").resolve("ours.json") + ".",
                    null);
        return Shop.standard().withFolder(rack);
    }

    /** Why there are no exact solids on this computer, in a sentence; empty where there are. */
    static Optional<String> withoutEngine() {
        try (WorkerEngine engine = new WorkerEngine(WorkerEngine.Allowance.USUAL)) {
            return engine.whatIsMissing();
        }
    }

    private static int code(JobResult job) {
        return job.hasStop() ? Main.STOP : Main.DONE;
    }

    @FunctionalInterface
    private interface Work {
        JobResult run(ExactEngine engine, Progress progress);
    }

    /** An exact-solid engine takes a while to start; it does so while the rack is read. */
    private static JobResult watched(Path part, Work work) {
        return Stopping.watched(progress -> {
            try (ExactEngine engine = new WorkerEngine(WorkerEngine.Allowance.USUAL)) {
                if (STEP_NAME.matcher(part.toString()).matches()) engine.prepare();
                return work.run(engine, progress);
            }
        });
    }
}
