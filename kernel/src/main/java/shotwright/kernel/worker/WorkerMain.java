package shotwright.kernel.worker;

import com.caoccao.javet.exceptions.JavetException;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;

/** Main program of the engine's process: reads framed messages, has the script answer each, and ends when its input ends. */
public final class WorkerMain {
    /** The kernel recurses deeply. */
    private static final long STACK_BYTES = 256L << 20;

    /** Exit code when the last line of the error output says why. */
    public static final int WITH_LAST_WORD = 3;

    private WorkerMain() {}

    /** Arguments: the folder with the kernel, the V8 library, memory in MiB. */
    public static void main(String[] args) {
        DataOutputStream out = new DataOutputStream(new FileOutputStream(FileDescriptor.out));
        System.setOut(System.err); // nothing but messages goes out
        Thread.setDefaultUncaughtExceptionHandler(
                (thread, e) -> end(e instanceof OutOfMemoryError ? "out of memory" : String.valueOf(e.getMessage())));
        BlockingQueue<byte[]> asked = new LinkedBlockingQueue<>();
        new Thread(null, () -> work(args, asked, out), "kernel", STACK_BYTES).start();
        try (DataInputStream in = new DataInputStream(System.in)) {
            while (true) {
                byte[] message = new byte[in.readInt()];
                in.readFully(message);
                asked.add(message);
            }
        } catch (EOFException end) {
            Runtime.getRuntime().halt(0);
        } catch (IOException e) {
            Runtime.getRuntime().halt(1);
        }
    }

    private static void work(String[] args, BlockingQueue<byte[]> asked, DataOutputStream out) {
        try {
            KernelHost host = KernelHost.start(Path.of(args[0]), Path.of(args[1]), Integer.parseInt(args[2]));
            V8Threads.giveWay();
            while (true) {
                byte[] answer = host.answer(asked.take());
                out.writeInt(answer.length);
                out.write(answer);
                out.flush();
            }
        } catch (IOException | JavetException | InterruptedException | RuntimeException e) {
            end(String.valueOf(e.getMessage()));
        }
    }

    /** Ends this process at once, with a last word to whoever started it. */
    static void end(String lastWord) {
        System.err.println(lastWord);
        System.err.flush();
        Runtime.getRuntime().halt(WITH_LAST_WORD);
    }
}
