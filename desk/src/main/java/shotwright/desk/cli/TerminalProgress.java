package shotwright.desk.cli;

import java.io.PrintStream;
import java.util.concurrent.atomic.AtomicBoolean;
import shotwright.progress.Progress;

/** One line on a terminal that says what is being done; silent when standard error goes to a file or a pipe. */
final class TerminalProgress implements Progress {
    private static final long EVERY_NANOS = 120_000_000L;
    private final PrintStream err;
    private final boolean terminal;
    private final AtomicBoolean stop = new AtomicBoolean();
    private final long started = System.nanoTime();
    private long last;
    private int shown;

    TerminalProgress(PrintStream err, boolean terminal) {
        this.err = err;
        this.terminal = terminal;
    }

    static TerminalProgress onStandardError() {
        java.io.Console console = System.console();
        return new TerminalProgress(
                System.err, console != null && console.isTerminal() && System.getenv("NO_PROGRESS") == null);
    }

    /** Asks the work to stop at its next word. */
    void stop() {
        stop.set(true);
    }

    @Override
    public void at(String doing, double share) {
        if (stop.get()) throw new Cancelled();
        if (!terminal) return;
        synchronized (this) {
            long now = System.nanoTime();
            if (now - last < EVERY_NANOS || now - started < 300_000_000L) return;
            last = now;
            String line = String.format("%3.0f %%  %s", 100 * Math.clamp(share, 0, 1), doing);
            err.print("\r" + line + " ".repeat(Math.max(0, shown - line.length())));
            err.flush();
            shown = line.length();
        }
    }

    /** Clears the line. */
    synchronized void done() {
        if (shown > 0) {
            err.print("\r" + " ".repeat(shown) + "\r");
            err.flush();
            shown = 0;
        }
    }
}
