package shotwright.kernel;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.jspecify.annotations.Nullable;
import shotwright.brep.ExactEngine;
import shotwright.brep.ExactFailure;
import shotwright.progress.Progress;

/** The engine in a process of its own: started when first needed, kept warm, ended when it takes too long or is no longer wanted, started anew. */
public final class WorkerEngine implements ExactEngine {
    private static final long LOOK_EVERY_MS = 40;

    /**
     * How far one operation may go.
     *
     * @param longest time for one operation
     * @param memoryMib memory for all shapes together
     */
    public record Allowance(Duration longest, int memoryMib) {
        /** A minute and a half, and 1.25 GiB; with the process around it that stays under 2 GB. */
        public static final Allowance USUAL = new Allowance(Duration.ofSeconds(90), 1280);
    }

    private final EngineFiles files;
    private final Allowance allowance;
    private @Nullable WorkerProcess worker;

    public WorkerEngine(Allowance allowance) {
        this.files = EngineFiles.find();
        this.allowance = allowance;
    }

    /** What keeps the engine from starting on this computer, in a sentence; empty when nothing does. */
    public Optional<String> whatIsMissing() {
        return files.whatIsMissing();
    }

    @Override
    public synchronized List<Object> call(Progress watch, String operation, Object... values) throws ExactFailure {
        List<Object> message = new ArrayList<>(List.of(operation));
        message.addAll(List.of(values));
        WorkerProcess w = running();
        try {
            List<Object> out = Wire.values(waitFor(w, w.ask(Wire.bytes(message)), watch));
            if (out.getFirst().equals("done")) return out.subList(1, out.size());
            String said = String.valueOf(out.get(1));
            if (out.getFirst().equals("failed"))
                throw new ExactFailure(ExactFailure.Why.REFUSED, "The exact-solid engine says: " + said + ".");
            end();
            throw ended(said);
        } catch (RuntimeException e) { // the watcher wants no more of it
            end();
            throw e;
        }
    }

    @Override
    public synchronized void prepare() {
        try {
            running();
        } catch (ExactFailure laterToldByTheFirstCall) {
            worker = null;
        }
    }

    private byte[] waitFor(WorkerProcess w, CompletableFuture<byte[]> answer, Progress watch) throws ExactFailure {
        long until = System.nanoTime() + allowance.longest().toNanos();
        while (true) {
            try {
                return answer.get(LOOK_EVERY_MS, TimeUnit.MILLISECONDS);
            } catch (TimeoutException stillAtIt) {
                watch.at("on exact solids", 0);
                if (System.nanoTime() > until) {
                    end();
                    throw ended("it took longer than " + allowance.longest().toSeconds() + " s");
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new Progress.Cancelled();
            } catch (ExecutionException e) {
                String word = w.lastWord();
                end();
                throw ended(word);
            }
        }
    }

    private static ExactFailure ended(String why) {
        return new ExactFailure(
                ExactFailure.Why.ENDED,
                "The exact-solid engine ended (" + why + "). Nothing else is harmed, and the work can be tried again.");
    }

    private WorkerProcess running() throws ExactFailure {
        if (worker != null && worker.isAlive()) return worker;
        Optional<String> missing = whatIsMissing();
        if (missing.isPresent()) throw new ExactFailure(ExactFailure.Why.NO_ENGINE, missing.get());
        try {
            worker = WorkerProcess.start(files, allowance.memoryMib());
            return worker;
        } catch (IOException e) {
            throw new ExactFailure(
                    ExactFailure.Why.NO_ENGINE, "The exact-solid engine could not be started: " + e.getMessage());
        }
    }

    /** The process behind it, for looking at it from outside; empty when none runs. */
    public synchronized Optional<Long> pid() {
        return worker != null && worker.isAlive() ? Optional.of(worker.pid()) : Optional.empty();
    }

    private void end() {
        if (worker != null) worker.end();
        worker = null;
    }

    @Override
    public synchronized void close() {
        end();
    }
}
