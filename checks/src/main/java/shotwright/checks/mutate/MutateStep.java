package shotwright.checks.mutate;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import shotwright.intake.Intake;
import shotwright.intake.IntakeException;
import shotwright.intake.IntakeOptions;
import shotwright.kernel.WorkerEngine;
import shotwright.progress.Progress;

/**
 * Reads damaged STEP files by the thousand, with one engine kept warm between them. {@code MutateStep COUNT [FIRST_SEED]}: every number
 * from the first seed on damages one of three small parts in its own way. A reading must end with a sound part, a finding of severity stop,
 * or a complaint that names a line or an entity, within a minute and within 2 GiB for both processes.
 */
public final class MutateStep implements AutoCloseable {
    private static final double LONGEST_S = 60;
    private static final long MOST_KIB = 2L << 20;
    private static final List<String> PARTS =
            List.of("curved_link_AP242.step", "sensor_lever_arm.step", "gimbal_fork_AP242.step");

    private final List<SeedFile> seeds;
    private final Endings endings;
    private final WorkerEngine engine = new WorkerEngine(WorkerEngine.Allowance.USUAL);
    private Optional<Long> pid = Optional.empty();
    private int starts;
    private long mostKib;

    MutateStep(Path folder, Path sharedParts) throws IOException {
        seeds = SeedFile.named(sharedParts, PARTS);
        endings = new Endings(folder, LONGEST_S, MutateStep::saysWhere);
    }

    public static void main(String[] args) throws IOException {
        if (args.length < 1 || !args[0].matches("\\d{1,9}") || args.length > 1 && !args[1].matches("\\d{1,15}")) {
            System.err.println("usage: MutateStep COUNT [FIRST_SEED]");
            System.exit(2);
        }
        int count = Integer.parseInt(args[0]);
        long first = args.length > 1 ? Long.parseLong(args[1]) : 1;
        Path folder = Files.createTempDirectory("mutate");
        int failed;
        try (MutateStep run =
                new MutateStep(folder, Path.of(System.getProperty("shotwright.parts", "../shared/parts")))) {
            if (run.seeds.isEmpty()) {
                System.err.println("The parts are not there; name their folder with -Dshotwright.parts=FOLDER.");
                System.exit(2);
            }
            long start = System.nanoTime();
            for (int i = 0; i < count; i++) {
                run.one(first + i);
                if ((i + 1) % 200 == 0)
                    System.out.println(
                            (i + 1) + " files, " + run.endings.failures().size() + " failures");
            }
            System.out.println(run.report((System.nanoTime() - start) * 1e-9));
            failed = run.endings.failures().size();
        }
        if (failed == 0) Files.deleteIfExists(folder);
        System.exit(failed == 0 ? 0 : 1);
    }

    private static boolean saysWhere(IntakeException e) {
        return e.place().matches("(line|byte) .*") || e.wrong().matches("(?s).*(entity #|#\\d).*");
    }

    boolean hasParts() {
        return !seeds.isEmpty();
    }

    Optional<String> whatIsMissing() {
        return engine.whatIsMissing();
    }

    Endings endings() {
        return endings;
    }

    /** Damages one file, reads it, and judges how that ended. */
    void one(long seed) throws IOException {
        Random r = new Random(seed * 0x9E3779B97F4A7C15L);
        SeedFile good = seeds.get(r.nextInt(seeds.size()));
        byte[] damaged = new Damage(r, Damage.STEP_WORDS, 0.25).of(good);
        endings.one(
                seed, good.name(), damaged, file -> Intake.read(file, IntakeOptions.usual(), engine, Progress.SILENT));
        look(seed);
    }

    /** The engine's process: the same as before or another, and the most memory it ever held. */
    private void look(long seed) throws IOException {
        Optional<Long> now = engine.pid();
        if (now.isPresent() && !now.equals(pid)) starts++;
        pid = now;
        long kib = (now.isPresent() ? mostKib(now.get().toString()) : 0) + mostKib("self");
        if (kib > MOST_KIB && mostKib <= MOST_KIB) endings.fail("seed " + seed + ": " + kib + " KiB were held");
        mostKib = Math.max(mostKib, kib);
    }

    /** The most memory a process ever held, as Linux tells it; 0 elsewhere. */
    private static long mostKib(String process) throws IOException {
        Path status = Path.of("/proc", process, "status");
        if (!Files.isReadable(status)) return 0;
        return Files.readAllLines(status).stream()
                .filter(l -> l.startsWith("VmHWM:"))
                .mapToLong(l -> Long.parseLong(l.replaceAll("\\D", "")))
                .findFirst()
                .orElse(0);
    }

    String report(double seconds) {
        return endings.report(seconds) + "\nengine started " + starts
                + " times; this process and the engine's held at most " + (mostKib >> 10) + " MiB";
    }

    @Override
    public void close() {
        engine.close();
    }
}
