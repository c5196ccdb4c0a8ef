package shotwright.checks.mutate;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import shotwright.intake.Intake;
import shotwright.intake.IntakeException;
import shotwright.intake.IntakeOptions;
import shotwright.intake.Limits;
import shotwright.intake.Mend;
import shotwright.measure.LengthUnit;
import shotwright.progress.Progress;

/**
 * Reads damaged part files by the hundred thousand. {@code MutateFiles COUNT [FIRST_SEED]}: every number from the first seed on damages one
 * good file in its own way; a reading that ends in anything but a sound part, a finding of severity stop or an {@link IntakeException} is
 * told with its number, and the file is kept.
 */
public final class MutateFiles {
    private static final double LONGEST_S = 10;
    private static final Limits LIMITS = new Limits(64 << 20, 1_000_000, 1_000_000, 64 << 20, 200, 16, 1000, LONGEST_S);

    private final List<SeedFile> seeds;
    private final Endings endings;

    MutateFiles(Path folder, Path sharedParts) throws IOException {
        endings = new Endings(folder, LONGEST_S + 1, e -> true);
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
            if ((i + 1) % 10_000 == 0)
                System.out.println((i + 1) + " files, " + run.endings.failures().size() + " failures");
        }
        System.out.println(run.endings.report((System.nanoTime() - start) * 1e-9));
        if (run.endings.failures().isEmpty()) Files.deleteIfExists(folder);
        System.exit(run.endings.failures().isEmpty() ? 0 : 1);
    }

    Endings endings() {
        return endings;
    }

    /** Damages one file, reads it, and judges how that ended. */
    void one(long seed) throws IOException {
        Random r = new Random(seed * 0x9E3779B97F4A7C15L);
        SeedFile good = seeds.get(r.nextInt(seeds.size()));
        byte[] damaged = new Damage(r, Damage.MESH_WORDS, 0.5).of(good);
        IntakeOptions options = options(r);
        endings.one(seed, good.name(), damaged, file -> Intake.read(file, options, Progress.SILENT));
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
}
