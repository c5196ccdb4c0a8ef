package shotwright.checks.exact;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * What gmsh, an open-source mesh generator with its own import of STEP (Debian package {@code python3-gmsh}), finds in a file.
 *
 * @param solids solids it read
 * @param volumeMm3 their volume, by its fixed integration
 */
record Gmsh(int solids, double volumeMm3) {
    private static final Path PYTHON = Path.of("/usr/bin/python3");
    private static final String SCRIPT = """
            import sys
            try:
                import gmsh
            except ImportError:
                sys.exit(3)
            gmsh.initialize()
            gmsh.option.setNumber("General.Terminal", 0)
            gmsh.model.occ.importShapes(sys.argv[1])
            gmsh.model.occ.synchronize()
            solids = gmsh.model.occ.getEntities(3)
            print(len(solids), repr(sum(gmsh.model.occ.getMass(3, tag) for _, tag in solids)))
            """;

    /** Empty where gmsh is not installed. */
    static Optional<Gmsh> of(Path step) throws IOException, InterruptedException {
        if (!Files.isExecutable(PYTHON)) return Optional.empty();
        Process run = new ProcessBuilder(PYTHON.toString(), "-c", SCRIPT, step.toString())
                .redirectErrorStream(true)
                .start();
        String said = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        int end = run.waitFor();
        if (end == 3) return Optional.empty();
        if (end != 0) throw new IOException("gmsh: " + said);
        String[] words = said.strip().split(" ");
        return Optional.of(new Gmsh(Integer.parseInt(words[0]), Double.parseDouble(words[1])));
    }
}
