package shotwright.progress;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import java.util.function.Supplier;

/** Numbered pieces of work on all processors; whatever one of them throws ends the whole. */
public final class Parallel {
    private Parallel() {}

    /**
     * Runs the pieces {@code 0 … count − 1}. Each thread makes itself one worker, with whatever it needs for itself, and takes piece after
     * piece; a result that depends only on the piece number therefore does not depend on the number of processors.
     */
    public static void run(int count, Supplier<IntConsumer> worker) {
        int threads = Math.clamp(Runtime.getRuntime().availableProcessors(), 1, Math.max(1, count));
        AtomicInteger next = new AtomicInteger();
        Runnable take = () -> {
            IntConsumer mine = worker.get();
            try {
                for (int i = next.getAndIncrement(); i < count; i = next.getAndIncrement()) mine.accept(i);
            } catch (RuntimeException | Error e) {
                next.set(count);
                throw e;
            }
        };
        List<ForkJoinTask<?>> others = new ArrayList<>();
        for (int t = 1; t < threads; t++) others.add(ForkJoinPool.commonPool().submit(take));
        RuntimeException failed = null;
        try {
            take.run();
        } catch (RuntimeException e) {
            failed = e;
        }
        for (ForkJoinTask<?> other : others) {
            try {
                other.get();
            } catch (ExecutionException e) {
                if (failed == null)
                    failed = e.getCause() instanceof RuntimeException r ? r : new IllegalStateException(e);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                failed = new Progress.Cancelled();
            }
        }
        if (failed != null) throw failed;
    }

    /** Tells after each of so many pieces, from whichever thread, how many are done. */
    public static Runnable steps(Progress progress, String doing, int count) {
        AtomicInteger done = new AtomicInteger();
        return () -> progress.at(doing, done.incrementAndGet() / (double) count);
    }
}
