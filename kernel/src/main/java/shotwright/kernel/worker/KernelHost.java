package shotwright.kernel.worker;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.caoccao.javet.enums.JSRuntimeType;
import com.caoccao.javet.exceptions.JavetException;
import com.caoccao.javet.interop.V8Host;
import com.caoccao.javet.interop.V8Runtime;
import com.caoccao.javet.interop.callback.IJavetDirectCallable;
import com.caoccao.javet.interop.callback.JavetCallbackContext;
import com.caoccao.javet.interop.callback.JavetCallbackType;
import com.caoccao.javet.interop.loader.IJavetLibLoadingListener;
import com.caoccao.javet.interop.loader.JavetLibLoader;
import com.caoccao.javet.interop.options.V8RuntimeOptions;
import com.caoccao.javet.values.reference.V8ValueArrayBuffer;
import com.caoccao.javet.values.reference.V8ValueFunction;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;

/** A V8 runtime with the kernel and our script in it. */
final class KernelHost {
    private static final int PAGES_PER_MIB = 16;
    private static final String BEFORE = """
            globalThis.performance = { now: () => Date.now() };
            globalThis.setTimeout = f => { Promise.resolve().then(f); return 0; };
            globalThis.clearTimeout = () => {};
            globalThis.crypto = { getRandomValues: a => { for (let i = 0; i < a.length; i++) a[i] = Math.random() * 256; return a; } };
            """;
    private static final String BOOT = """
            import module from 'kernel';
            import { start, answer } from 'exact';
            globalThis.answer = answer;
            start(module, new Uint8Array(program), pages, full).then(
              () => { globalThis.state = 'ready'; }, e => { globalThis.state = String(e); });
            """;

    private final V8Runtime runtime;
    private final V8ValueFunction answer;

    private KernelHost(V8Runtime runtime, V8ValueFunction answer) {
        this.runtime = runtime;
        this.answer = answer;
    }

    static KernelHost start(Path folder, Path library, int memoryMib) throws IOException, JavetException {
        V8RuntimeOptions.V8_FLAGS.setCustomFlags("--stack-size=60000");
        JavetLibLoader.setLibLoadingListener(new IJavetLibLoadingListener() {
            @Override
            public File getLibPath(JSRuntimeType type) {
                return Objects.requireNonNull(library.getParent()).toFile();
            }

            @Override
            public boolean isDeploy(JSRuntimeType type) {
                return false;
            }
        });
        V8Runtime runtime = V8Host.getV8Instance().createV8Runtime();
        Map<String, String> modules =
                Map.of("kernel", Files.readString(folder.resolve("replicad_single.js")), "exact", script());
        runtime.setV8ModuleResolver((r, name, from) -> {
            String text = modules.get(name);
            if (text == null) return null;
            return r.getExecutor(text)
                    .setResourceName("file:///" + name + ".mjs")
                    .setModule(true)
                    .compileV8Module();
        });
        byte[] program = Files.readAllBytes(folder.resolve("replicad_single.wasm"));
        ByteBuffer direct =
                ByteBuffer.allocateDirect(program.length).put(program).flip();
        try (V8ValueArrayBuffer buffer = runtime.createV8ValueArrayBuffer(direct)) {
            runtime.getGlobalObject().set("program", buffer);
        }
        runtime.getGlobalObject().set("pages", memoryMib * PAGES_PER_MIB);
        try (V8ValueFunction full = runtime.createV8ValueFunction(new JavetCallbackContext(
                "full", JavetCallbackType.DirectCallNoThisAndNoResult, (IJavetDirectCallable.NoThisAndNoResult<
                                RuntimeException>)
                        values -> WorkerMain.end("out of memory")))) {
            runtime.getGlobalObject().set("full", full);
        }
        runtime.getExecutor(BEFORE).executeVoid();
        runtime.getExecutor(BOOT)
                .setResourceName("file:///boot.mjs")
                .setModule(true)
                .executeVoid();
        runtime.await();
        String state = runtime.getGlobalObject().getString("state");
        if (!"ready".equals(state)) throw new IOException("the kernel did not start: " + state);
        runtime.getGlobalObject().delete("program");
        return new KernelHost(runtime, runtime.getGlobalObject().get("answer"));
    }

    private static String script() throws IOException {
        try (InputStream in = KernelHost.class.getResourceAsStream("/shotwright/kernel/exact.mjs")) {
            return new String(Objects.requireNonNull(in, "exact.mjs").readAllBytes(), UTF_8);
        }
    }

    byte[] answer(byte[] message) throws JavetException {
        try (V8ValueArrayBuffer in = runtime.createV8ValueArrayBuffer(message.length)) {
            in.fromBytes(message);
            try (V8ValueArrayBuffer out = answer.call(null, in)) {
                return out.toBytes();
            }
        }
    }
}
