package shotwright.kernel;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import shotwright.kernel.worker.WorkerMain;

/** One running engine process. It ends when its input ends, so nothing is left behind however this process goes. */
final class WorkerProcess {
    private static final int LAST_WORDS = 20;
    private static final long LISTEN_MS = 500;

    private final Process process;
    private final DataOutputStream to;
    private final DataInputStream from;
    private final ArrayDeque<String> lastWords = new ArrayDeque<>();

    private final Thread listener;

    private WorkerProcess(Process process) {
        this.process = process;
        this.to = new DataOutputStream(process.getOutputStream());
        this.from = new DataInputStream(process.getInputStream());
        this.listener = Thread.ofPlatform().daemon().name("engine's last words").start(this::listen);
    }

    static WorkerProcess start(EngineFiles files, int mostMemoryMib) throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of(
                "-Xmx512m",
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-Xshare:auto",
                "-XX:-UsePerfData", // else a killed process leaves a file behind
                "--enable-native-access=ALL-UNNAMED",
                "-cp",
                System.getProperty("java.class.path"),
                WorkerMain.class.getName(),
                files.folder().toAbsolutePath().toString(),
                files.nativeLibrary().orElseThrow().toAbsolutePath().toString(),
                Integer.toString(mostMemoryMib)));
        return new WorkerProcess(new ProcessBuilder(command).start());
    }

    private void listen() {
        try (var lines = process.errorReader()) {
            for (String line; (line = lines.readLine()) != null; ) {
                synchronized (lastWords) {
                    lastWords.add(line);
                    if (lastWords.size() > LAST_WORDS) lastWords.remove();
                }
            }
        } catch (IOException ended) {
            // nothing more to hear
        }
    }

    /** Sends a message; the answer comes, or an IOException when the process ends first. */
    CompletableFuture<byte[]> ask(byte[] message) {
        CompletableFuture<byte[]> answer = new CompletableFuture<>();
        Thread.ofPlatform().daemon().name("engine's answer").start(() -> {
            try {
                to.writeInt(message.length);
                to.write(message);
                to.flush();
                byte[] back = new byte[from.readInt()];
                from.readFully(back);
                answer.complete(back);
            } catch (IOException e) {
                answer.completeExceptionally(e);
            }
        });
        return answer;
    }

    boolean isAlive() {
        return process.isAlive();
    }

    long pid() {
        return process.pid();
    }

    /** What it ended of, in its own last words where it had time for any. */
    String lastWord() {
        try {
            if (process.waitFor(LISTEN_MS, TimeUnit.MILLISECONDS)
                    && process.exitValue() == WorkerMain.WITH_LAST_WORD
                    && listener.join(Duration.ofMillis(LISTEN_MS))) {
                synchronized (lastWords) {
                    if (!lastWords.isEmpty()) return lastWords.getLast();
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return "its process went away";
    }

    void end() {
        process.destroyForcibly();
        close(process.getOutputStream());
        try (InputStream in = process.getInputStream()) {
            process.waitFor();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (IOException e) {
            // it is gone
        }
    }

    private static void close(OutputStream out) {
        try {
            out.close();
        } catch (IOException e) {
            // it is gone
        }
    }
}
