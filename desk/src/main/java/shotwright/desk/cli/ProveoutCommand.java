package shotwright.desk.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import shotwright.cutter.MountedCutter;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;
import shotwright.intake.Intake;
import shotwright.intake.IntakeOptions;
import shotwright.job.JobException;
import shotwright.job.Shop;
import shotwright.machining.gcode.Dialect;
import shotwright.machining.gcode.GcodeReader;
import shotwright.machining.gcode.Listing;
import shotwright.machining.path.Operation;
import shotwright.machining.proof.CutterTable;
import shotwright.machining.proof.Half;
import shotwright.machining.proof.Proof;
import shotwright.machining.proof.ProofTask;
import shotwright.machining.proof.Proveout;
import shotwright.machining.proof.StockHeights;
import shotwright.measure.LengthUnit;
import shotwright.mesh.TriMesh;
import shotwright.part.Part;
import shotwright.progress.Progress;
import shotwright.report.ProofPage;

/** Runs a program against stock and a half. */
@Command(
        name = "proveout",
        mixinStandardHelpOptions = true,
        description =
                "run a milling program against its stock, and against the half it should leave; every fault with its line")
@SuppressWarnings("NullAway.Init") // picocli fills the fields
final class ProveoutCommand implements Callable<Integer> {
    private static final String NUMBER = " *(-?\\d{1,4}(?:\\.\\d{1,9})?) *";
    private static final Pattern THREE = Pattern.compile(NUMBER + "," + NUMBER + "," + NUMBER);
    private static final int LARGEST_BYTES = 200_000_000;

    /** How far above the stock the spindle's top is taken to be when the program goes there, mm. */
    private static final double TOP_MM = 60;

    @Parameters(paramLabel = "PROGRAM.nc", description = "program: lines, arcs and drilling cycles in G-code")
    Path program;

    @Option(
            names = "--stock",
            required = true,
            paramLabel = "L,W,T",
            description = "size of the stock in x, y and z, mm")
    String stock;

    @Option(
            names = "--zero",
            paramLabel = "X,Y,Z",
            description =
                    "where the program's zero lies, from the stock's lower left corner on its top, mm (default: there)")
    String zero = "0,0,0";

    @Option(
            names = "--cutters",
            paramLabel = "FILE",
            description = "which cutter each T number is, as JSON: " + CutterTable.EXAMPLE)
    @Nullable Path cutters;

    @Option(
            names = "--half",
            paramLabel = "FILE",
            description = "the half it should leave: STL, OBJ or 3MF, its axes and zero those of the program")
    @Nullable Path half;

    @Option(names = "--mill", paramLabel = "ID", description = "the mill, for its travel, speeds and feeds")
    @Nullable String mill;

    @Option(
            names = "--cell",
            paramLabel = "MM",
            description = "cell of the stock's grid, mm (default: ${DEFAULT-VALUE})")
    double cellMm = 0.05;

    @Option(
            names = "--dwell-in-ms",
            description = "the control counts the P of G4 in milliseconds (default: in seconds)")
    boolean dwellInMs;

    @Option(names = "--lengths", paramLabel = "mm|in", description = "lengths on the page in mm or in inches")
    @Nullable String lengths;

    @Option(names = "--shop", paramLabel = "DIR", description = "the shop's folder, with its own cutters and mills")
    @Nullable Path shop;

    @Option(names = "--json", description = "print the results as JSON, always in metric units")
    boolean json;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        Shop rack = LineRun.shop(shop);
        Box3 box = box();
        if (!(cellMm >= 0.005 && cellMm <= 1))
            throw new JobException("--cell " + cellMm + ": take a cell between 0.005 and 1 mm.", null);
        if (lengths != null && !lengths.equals("mm") && !lengths.equals("in"))
            throw new JobException("--lengths " + lengths + " is not known; write mm or in.", null);
        String name = String.valueOf(program.getFileName());
        Listing listing = new GcodeReader(dwellInMs ? Dialect.DwellUnit.MILLISECONDS : Dialect.DwellUnit.SECONDS)
                .read(name, text(), box, box.max().z() + TOP_MM);
        ProofTask task = ProofTask.of(listing.program(), table(listing, rack));
        if (mill != null) task = task.on(rack.mills().byId(mill));
        ProofTask asked = task;
        Proof proof = Stopping.watched(progress -> prove(asked, box, progress));
        PrintWriter out = spec.commandLine().getOut();
        out.print(
                json
                        ? ProofPage.json(name, listing, proof)
                        : ProofPage.text(name, listing, proof, "in".equals(lengths)));
        out.flush();
        return proof.isClean() ? Main.DONE : Main.STOP;
    }

    private Proof prove(ProofTask task, Box3 box, Progress progress) {
        ProofTask asked = half == null ? task : task.against(new Half(mesh(half, progress.part(0, 0.1))));
        return Proveout.run(asked, blank(box), progress.part(0.1, 1));
    }

    private StockHeights blank(Box3 box) {
        try {
            return StockHeights.block(box, cellMm);
        } catch (IllegalArgumentException tooMany) {
            throw new JobException("--" + tooMany.getMessage() + ".", tooMany);
        }
    }

    private static TriMesh mesh(Path file, Progress progress) {
        var read = Intake.read(file, IntakeOptions.usual().withUnit(LengthUnit.MM), progress);
        Part part = read.part();
        if (part == null)
            throw new JobException(
                    "--half " + file + " is no sound solid; “shotwright review " + file
                            + "” says what is wrong with it.",
                    null);
        return part.mesh();
    }

    private Box3 box() {
        Vec3 size = lengths("--stock", stock, "80,60,20"), at = lengths("--zero", zero, "40,30,-0.5");
        if (!(Math.min(size.x(), Math.min(size.y(), size.z())) > 0))
            throw new JobException("--stock " + stock + ": every length must be above zero.", null);
        Vec3 low = new Vec3(0, 0, -size.z()).minus(at);
        return new Box3(low, low.plus(size));
    }

    private static Vec3 lengths(String option, String text, String example) {
        Matcher m = THREE.matcher(text);
        if (!m.matches())
            throw new JobException(
                    option + " " + text + ": write three lengths in mm, as in " + option + " " + example + ".", null);
        return new Vec3(Double.parseDouble(m.group(1)), Double.parseDouble(m.group(2)), Double.parseDouble(m.group(3)));
    }

    private String text() {
        try {
            if (Files.size(program) > LARGEST_BYTES)
                throw new JobException(program + " is larger than 200 MB; share it among files.", null);
            return new String(Files.readAllBytes(program), StandardCharsets.ISO_8859_1);
        } catch (IOException e) {
            throw new JobException(program + " cannot be read; check its name.", e);
        }
    }

    private Map<Integer, MountedCutter> table(Listing listing, Shop rack) {
        TreeSet<Integer> called = new TreeSet<>();
        for (Operation o : listing.program().operations()) called.add(o.toolNumber());
        if (cutters == null)
            throw new JobException(
                    "The program calls T" + called.stream().map(String::valueOf).collect(Collectors.joining(", T"))
                            + ". Say which cutters these are with --cutters FILE; such a file reads "
                            + CutterTable.EXAMPLE + ".",
                    null);
        Map<Integer, MountedCutter> table = CutterTable.read(cutters, rack.cutters());
        called.removeAll(table.keySet());
        if (!called.isEmpty())
            throw new JobException(
                    "The program calls T" + called.first() + ", which " + cutters + " does not name; add it: "
                            + CutterTable.EXAMPLE.replace("\"1\"", "\"" + called.first() + "\"") + ".",
                    null);
        return table;
    }
}
