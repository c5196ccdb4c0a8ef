package shotwright.machining.gcode;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shotwright.geom.Box3;
import shotwright.machining.path.Operation;
import shotwright.machining.path.Program;

/**
 * Writes programs in the words nearly every control knows: lines, arcs by their incremental centre, one change of cutter at a time, up before
 * across before down, and the safe start and end of each file.
 */
public final class GcodeWriter {
    /** How a setup is shared among files. */
    public enum FilePer {
        SETUP,
        CUTTER
    }

    private final Dialect dialect;
    private final double spinUpS;

    /**
     * @param dialect how the control wants it
     * @param spinUpS wait after the spindle starts, as the mill needs it
     */
    public GcodeWriter(Dialect dialect, double spinUpS) {
        this.dialect = dialect;
        this.spinUpS = spinUpS;
    }

    /** The files of a setup, in the order they are run. */
    public List<GcodeFile> write(Program program, FilePer filePer) {
        List<List<Operation>> shares = filePer == FilePer.SETUP ? List.of(program.operations()) : byCutter(program);
        List<GcodeFile> files = new ArrayList<>();
        for (List<Operation> share : shares) {
            String part = shares.size() == 1
                    ? ""
                    : "-" + (files.size() + 1) + "-t" + share.getFirst().toolNumber();
            String text = text(program, share, files.size() + 1, shares.size());
            files.add(new GcodeFile(Comments.fileName(program.setup()) + part + ".nc", text));
        }
        return files;
    }

    /** The whole setup as one text. */
    public String write(Program program) {
        return text(program, program.operations(), 1, 1);
    }

    private static List<List<Operation>> byCutter(Program program) {
        List<List<Operation>> shares = new ArrayList<>();
        for (Operation o : program.operations()) {
            if (shares.isEmpty() || shares.getLast().getFirst().toolNumber() != o.toolNumber())
                shares.add(new ArrayList<>());
            shares.getLast().add(o);
        }
        return shares;
    }

    private String text(Program program, List<Operation> operations, int file, int files) {
        int step = dialect.lineNumberStep();
        while (true) {
            BlockText out = new BlockText(dialect, step);
            head(out, program, operations, file, files);
            new MoveText(dialect, out, program.clearanceZMm(), spinUpS).write(operations);
            tail(out);
            if (out.fits()) return out.text();
            step = step > 1 ? 1 : 0;
        }
    }

    private void head(BlockText out, Program program, List<Operation> operations, int file, int files) {
        if (dialect.percentSigns()) out.bare("%");
        out.comment(program.setup() + (files > 1 ? ", FILE " + file + " OF " + files : ""));
        out.comment("LENGTHS IN " + (dialect.unit() == Dialect.Unit.MM ? "MILLIMETRES" : "INCHES") + ", ZERO IN "
                + program.workOffset());
        Box3 s = program.stock();
        out.comment("STOCK EXPECTED: X " + out.length(s.min().x()) + " TO "
                + out.length(s.max().x()) + ", Y "
                + out.length(s.min().y()) + " TO " + out.length(s.max().y()) + ", Z "
                + out.length(s.min().z()) + " TO " + out.length(s.max().z()));
        if (file > 1) out.comment("AS THE FILES BEFORE LEFT IT: RUN THEM FIRST");
        Map<Integer, Operation> tools = new LinkedHashMap<>();
        Map<Integer, Double> stickoutMm = new LinkedHashMap<>();
        for (Operation o : operations) {
            tools.putIfAbsent(o.toolNumber(), o);
            stickoutMm.merge(o.toolNumber(), o.stickoutMm(), Math::max);
        }
        tools.forEach((number, o) -> out.comment(cutter(o, stickoutMm.getOrDefault(number, 0.0), out)));
        out.comment("CHECK CUTTERS, STICKOUT, ZERO AND CLAMPS. FIRST RUN IN AIR");
        out.block(dialect.unit().word() + " G17 G40" + (dialect.lengthCompensation() ? " G49" : "") + " G80 G90 G94");
        out.block(program.workOffset().name());
        switch (dialect.following()) {
            case UNSAID -> {}
            case EXACT -> out.block("G61");
            case BLEND -> out.block("G64 P" + out.length(dialect.blendMm().value()));
        }
    }

    private static String cutter(Operation o, double stickoutMm, BlockText out) {
        String stickout = stickoutMm > 0 ? ", STICKOUT " + out.length(stickoutMm) + " AT LEAST" : "";
        return "T" + o.toolNumber() + " " + o.cutterId() + stickout;
    }

    private void tail(BlockText out) {
        out.block("M5");
        out.block("M9");
        if (dialect.machineRetract()) out.block("G53 G0 Z0.");
        out.block(dialect.end().name());
        if (dialect.percentSigns()) out.bare("%");
    }
}
