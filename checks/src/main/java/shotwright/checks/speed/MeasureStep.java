package shotwright.checks.speed;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import shotwright.brep.ExactFailure;
import shotwright.brep.ExactShapes;
import shotwright.brep.Solid;
import shotwright.kernel.WorkerEngine;
import shotwright.progress.Progress;

/**
 * Reading and meshing of STEP files in a warm engine beside the same kernel as native code, in one run. {@code MeasureStep FOLDER}: every file
 * of the folder that ends in {@code .step} and is not called {@code bad_…}. Both read the file, make its shapes and mesh every solid with the
 * same largest distance and turn of chords; ours also sends the triangles to this process and welds them. Each is done {@value #TIMES} times
 * after one time that does not count; the shortest counts. The native kernel is asked through its test harness (Debian's packages
 * occt-draw and libocct-draw-dev), Debian's gmsh through Python for its import alone.
 */
public final class MeasureStep {
    static final int TIMES = 5;
    private static final double DEFLECTION_SHARE = 2e-4, FINEST_MM = 0.002, COARSEST_MM = 0.02, TURN_RAD = 0.2;

    private record Cost(double readMs, double meshMs, long triangles) {
        static final Cost NONE = new Cost(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, 0);

        double bothMs() {
            return readMs + meshMs;
        }

        Cost orBetter(Cost o) {
            return new Cost(Math.min(readMs, o.readMs), Math.min(meshMs, o.meshMs), o.triangles);
        }
    }

    private final Map<String, Double> deflectionMm = new HashMap<>();

    private MeasureStep() {}

    public static void main(String[] args) throws Exception {
        if (args.length != 1 || !Files.isDirectory(Path.of(args[0]))) {
            System.err.println("usage: MeasureStep FOLDER");
            System.exit(2);
        }
        List<Path> files;
        try (Stream<Path> all = Files.list(Path.of(args[0]))) {
            files = all.filter(p -> p.getFileName().toString().matches("(?!bad_).*\\.step"))
                    .sorted()
                    .toList();
        }
        new MeasureStep().run(files);
    }

    private void run(List<Path> files) throws IOException, InterruptedException, ExactFailure {
        Map<String, Cost> ours = ours(files);
        Map<String, Cost> occt = asked(List.of("occt-draw", "-b", "-f"), occtScript(files), ".tcl");
        Map<String, Cost> gmsh = asked(List.of("/usr/bin/python3"), gmshScript(files), ".py");
        System.out.printf(
                "%-38s %9s %9s %8s %8s %8s %8s %8s %7s %7s%n",
                "file", "triangles", "native", "read ms", "native", "gmsh", "mesh ms", "native", "ratio", "to gmsh");
        double logs = 0, logsGmsh = 0, all = 0, allNative = 0;
        int n = 0, nGmsh = 0;
        for (Path f : files) {
            String name = f.getFileName().toString();
            Cost o = ours.getOrDefault(name, Cost.NONE), r = occt.getOrDefault(name, Cost.NONE);
            Cost g = gmsh.getOrDefault(name, Cost.NONE);
            double ratio = o.bothMs() / r.bothMs(), toGmsh = o.readMs / g.readMs;
            System.out.printf(
                    Locale.ROOT,
                    "%-38s %9d %9d %8.1f %8.1f %8.1f %8.1f %8.1f %7.2f %7.2f%n",
                    name,
                    o.triangles,
                    r.triangles,
                    o.readMs,
                    r.readMs,
                    g.readMs,
                    o.meshMs,
                    r.meshMs,
                    ratio,
                    toGmsh);
            if (ratio > 0) {
                logs += Math.log(ratio);
                n++;
                all += o.bothMs();
                allNative += r.bothMs();
            }
            if (toGmsh > 0) {
                logsGmsh += Math.log(toGmsh);
                nGmsh++;
            }
        }
        if (n > 0)
            System.out.printf(
                    Locale.ROOT,
                    "reading and meshing, ours over native: mean %.2f (geometric), all files together %.0f ms over %.0f ms = %.2f%n",
                    Math.exp(logs / n),
                    all,
                    allNative,
                    all / allNative);
        if (nGmsh > 0)
            System.out.printf(
                    Locale.ROOT, "reading, ours over gmsh: mean %.2f (geometric)%n", Math.exp(logsGmsh / nGmsh));
    }

    private Map<String, Cost> ours(List<Path> files) throws IOException, ExactFailure {
        Map<String, Cost> best = new HashMap<>();
        try (WorkerEngine engine = new WorkerEngine(WorkerEngine.Allowance.USUAL)) {
            for (int time = 0; time <= TIMES; time++) {
                for (Path f : files) {
                    String name = f.getFileName().toString();
                    Cost c = once(engine, name, Files.readAllBytes(f));
                    if (time > 0) best.merge(name, c, Cost::orBetter);
                }
            }
        }
        return best;
    }

    private Cost once(WorkerEngine engine, String name, byte[] bytes) throws ExactFailure {
        try (ExactShapes x = new ExactShapes(engine, Progress.SILENT)) {
            long start = System.nanoTime();
            List<Solid> solids = x.readStep(bytes).solids();
            double readMs = (System.nanoTime() - start) * 1e-6;
            if (!deflectionMm.containsKey(name)) {
                double largest = 0;
                for (Solid s : solids) largest = Math.max(largest, x.box(s).diagonal());
                deflectionMm.put(name, Math.clamp(largest * DEFLECTION_SHARE, FINEST_MM, COARSEST_MM));
            }
            start = System.nanoTime();
            long triangles = 0;
            for (Solid s : solids)
                triangles += x.mesh(s, deflectionMm.get(name), TURN_RAD).mesh().facetCount();
            return new Cost(readMs, (System.nanoTime() - start) * 1e-6, triangles);
        }
    }

    /** Runs a script with a program and reads the lines {@code cost NAME READ_MS MESH_MS TRIANGLES} it prints; none where it is not installed. */
    private static Map<String, Cost> asked(List<String> program, String script, String ending)
            throws IOException, InterruptedException {
        Map<String, Cost> best = new HashMap<>();
        Path file = Files.createTempFile("measure", ending);
        try {
            Files.writeString(file, script);
            List<String> command = new ArrayList<>(program);
            command.add(file.toString());
            Process p = new ProcessBuilder(command).redirectErrorStream(true).start();
            p.getOutputStream().close();
            try (var lines = p.inputReader()) {
                for (String line; (line = lines.readLine()) != null; ) {
                    String[] w = line.strip().split(" ");
                    if (w.length == 5 && w[0].equals("cost"))
                        best.merge(
                                w[1],
                                new Cost(Double.parseDouble(w[2]), Double.parseDouble(w[3]), Long.parseLong(w[4])),
                                Cost::orBetter);
                }
            }
            p.waitFor();
        } catch (IOException notInstalled) {
            System.out.println(program.getFirst() + " is not installed; its columns stay empty.");
        } finally {
            Files.delete(file);
        }
        return best;
    }

    private String occtScript(List<Path> files) {
        StringBuilder s = new StringBuilder("pload MODELING XDE\n");
        for (Path f : files)
            s.append(String.format(
                    Locale.ROOT,
                    """
                    for {set i 0} {$i <= %d} {incr i} {
                      set a [clock microseconds]
                      testreadstep {%s} s
                      set b [clock microseconds]
                      incmesh s %.6f -a %.6f
                      set c [clock microseconds]
                      set n 0
                      regexp {([0-9]+) triangles} [trinfo s] all n
                      if {$i > 0} { puts "cost %s [expr ($b-$a)/1000.0] [expr ($c-$b)/1000.0] $n" }
                      unset s
                    }
                    """,
                    TIMES,
                    f.toAbsolutePath(),
                    deflectionMm.get(f.getFileName().toString()),
                    Math.toDegrees(TURN_RAD),
                    f.getFileName()));
        return s.append("exit\n").toString();
    }

    private static String gmshScript(List<Path> files) {
        StringBuilder s = new StringBuilder("""
                import gmsh, time
                gmsh.initialize()
                gmsh.option.setNumber("General.Terminal", 0)
                def once(path, name, count):
                    gmsh.clear()
                    a = time.perf_counter()
                    gmsh.model.occ.importShapes(path)
                    gmsh.model.occ.synchronize()
                    b = time.perf_counter()
                    if count: print("cost", name, 1000 * (b - a), 0.0, 0)
                """);
        for (Path f : files)
            s.append("for i in range(%d): once(r'%s', '%s', i > 0)\n"
                    .formatted(TIMES + 1, f.toAbsolutePath(), f.getFileName()));
        return s.toString();
    }
}
