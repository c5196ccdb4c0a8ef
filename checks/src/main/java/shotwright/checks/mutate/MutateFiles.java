package shotwright.checks.mutate;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import shotwright.finding.Severity;
import shotwright.intake.Intake;
import shotwright.intake.IntakeException;
import shotwright.intake.IntakeOptions;
import shotwright.intake.IntakeResult;
import shotwright.intake.Limits;
import shotwright.intake.Mend;
import shotwright.measure.LengthUnit;
import shotwright.mesh.Edges;
import shotwright.part.Part;
import shotwright.progress.Progress;

/**
 * Reads damaged part files by the hundred thousand. {@code MutateFiles COUNT [FIRST_SEED]}: every number from the first seed on damages one
 * good file in its own way; a reading that ends in anything but a sound part, a finding of severity stop or an {@link IntakeException} is
 * told with its number, and the file is kept.
 */
public final class MutateFiles {
    private static final double LONGEST_S = 10;
    private static final Limits LIMITS = new Limits(64 << 20, 1_000_000, 1_000_000, 64 << 20, 200, 16, 1000, LONGEST_S);

    private final Path folder;
    private final List<SeedFile> seeds;
    private final TreeMap<String, int[]> tally = new TreeMap<>();
    private final List<String> failures = new ArrayList<>();
    private double slowestS;
    private long slowestSeed;

    MutateFiles(Path folder, Path sharedParts) throws IOException {
        this.folder = folder;
        seeds = new ArrayList<>();
        List<SeedFile> shared = SeedFile.shared(sharedParts);
        List<SeedFile> own = SeedFile.own(folder);
        for (int i = 0; i < 4; i++) seeds.addAll(own); // small files are quick: let most of the damage go there
        seeds.addAll(shared);
    }

    public static void main(String[] args) throws IOException {
        if (args.length < 1 || !args[0].matches("\\d{1,9}") || args.length > 1 && !args[1].matches("\\d{1,15}")) {
            System.err.println("usage: MutateFiles COUNT [FIRST_SEED]");
            System.exit(2);
        }
        int count = Integer.parseInt(args[0]);
        long first = args.length > 1 ? Long.parseLong(args[1]) : 1;
        String parts = System.getProperty("shotwright.parts", "../shared/parts");
        Path folder = Files.createTempDirectory("mutate");
        MutateFiles run = new MutateFiles(folder, Path.of(parts));
        long start = System.nanoTime();
        for (int i = 0; i < count; i++) {
            run.one(first + i);
            if ((i + 1) % 10_000 == 0) System.out.println((i + 1) + " files, " + run.failures.size() + " failures");
        }
        System.out.println(run.report((System.nanoTime() - start) * 1e-9));
        if (run.failures.isEmpty()) Files.deleteIfExists(folder);
        System.exit(run.failures.isEmpty() ? 0 : 1);
    }

    List<String> failures() {
        return List.copyOf(failures);
    }

    /** How the readings ended, counted. */
    int count(String ending) {
        return tally.getOrDefault(ending, new int[1])[0];
    }

    /** Damages one file, reads it, and judges how that ended. */
    void one(long seed) throws IOException {
        Random r = new Random(seed * 0x9E3779B97F4A7C15L);
        SeedFile good = seeds.get(r.nextInt(seeds.size()));
        byte[] damaged = new Damage(r).of(good);
        IntakeOptions options = options(r);
        Path file = folder.resolve("damaged-" + seed);
        Files.write(file, damaged);
        long start = System.nanoTime();
        String fault = "";
        try {
            fault = judged(Intake.read(file, options, Progress.SILENT));
        } catch (IntakeException e) {
            told("complaint");
            if (String.valueOf(e.getMessage()).matches("(?s).*(\n|java\\.|Exception).*")
                    || e.remedy().isBlank()) fault = "message: " + e.getMessage();
        } catch (Throwable t) { // whatever else it is, that is what is looked for
            fault = t + " at " + (t.getStackTrace().length == 0 ? "?" : t.getStackTrace()[0]);
        }
        double s = (System.nanoTime() - start) * 1e-9;
        if (s > slowestS) {
            slowestS = s;
            slowestSeed = seed;
        }
        if (s > LONGEST_S + 1) fault += String.format(Locale.ROOT, " took %.1f s", s);
        if (fault.isEmpty()) Files.delete(file);
        else failures.add("seed " + seed + " (" + good.name() + ", kept as " + file + "): " + fault);
    }

    private String judged(IntakeResult result) {
        Part part = result.part();
        boolean stop = result.findings().stream().anyMatch(f -> f.severity() == Severity.STOP);
        if (part == null) {
            told("refused");
            return stop ? "" : "refused without a finding that says stop";
        }
        told("part");
        if (stop) return "a part in spite of a finding that says stop";
        if (Edges.of(part.mesh()).unmatchedCount() != 0) return "an open part";
        double v = part.mass().volumeMm3(), a = part.mass().surfaceAreaMm2();
        return v > 0 && a > 0 && Double.isFinite(v) && Double.isFinite(a) ? "" : "volume " + v + ", area " + a;
    }

    private void told(String ending) {
        tally.computeIfAbsent(ending, k -> new int[1])[0]++;
    }

    private static IntakeOptions options(Random r) {
        IntakeOptions o = IntakeOptions.usual().withLimits(LIMITS);
        if (r.nextBoolean()) return o;
        Set<Mend> mends = EnumSet.noneOf(Mend.class);
        for (Mend m : Mend.values()) if (r.nextBoolean()) mends.add(m);
        LengthUnit unit = r.nextInt(3) == 0 ? LengthUnit.values()[r.nextInt(LengthUnit.values().length)] : null;
        Integer body = r.nextInt(4) == 0 ? 1 + r.nextInt(3) : null;
        return new IntakeOptions(unit, mends, body, LIMITS);
    }

    String report(double seconds) {
        StringBuilder s = new StringBuilder();
        tally.forEach((ending, n) -> s.append(ending).append(' ').append(n[0]).append(", "));
        s.append(failures.size()).append(" failures; ");
        s.append(String.format(Locale.ROOT, "%.0f s, slowest %.2f s (seed %d)", seconds, slowestS, slowestSeed));
        for (String f : failures) s.append('\n').append(f);
        return s.toString();
    }
}
