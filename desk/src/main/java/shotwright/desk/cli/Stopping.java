package shotwright.desk.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import shotwright.progress.Progress;

/** What Ctrl-C does: the work is asked to stop, and the program waits for its last word, three seconds at the most. */
final class Stopping {
    private static final long LONGEST_S = 3;
    private static final CountDownLatch LAST_WORD = new CountDownLatch(1);

    private Stopping() {}

    /** The thread to run when the program is told to end. */
    private static Thread asks(TerminalProgress work) {
        return new Thread(() -> {
            work.stop();
            try {
                LAST_WORD.await(LONGEST_S, TimeUnit.SECONDS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        });
    }

    /** Does long work with its progress on the terminal, and lets Ctrl-C stop it. */
    static <T> T watched(Function<Progress, T> work) {
        TerminalProgress progress = TerminalProgress.onStandardError();
        Thread onStop = asks(progress);
        Runtime.getRuntime().addShutdownHook(onStop);
        try {
            return work.apply(progress);
        } finally {
            progress.done();
            try {
                Runtime.getRuntime().removeShutdownHook(onStop);
            } catch (IllegalStateException alreadyStopping) {
                // the hook is running and cleans up
            }
        }
    }

    /** Everything is said; nothing needs to be waited for any more. */
    static void lastWordSaid() {
        LAST_WORD.countDown();
    }
}
