package shotwright.machining.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shotwright.cutter.Holder;
import shotwright.cutter.MountedCutter;
import shotwright.machining.path.Operation;
import shotwright.machining.path.Program;

/** The cutters of both halves under one set of numbers, so that a cutter is set up once for the whole mold. */
final class MoldTools {
    /** Stickouts are rounded up to this: what a rule can set. */
    private static final double SETTING_MM = 0.5;

    private final Map<String, ToolTable.Tool> byId = new LinkedHashMap<>();

    MoldTools(List<HalfPlan> plans) {
        for (HalfPlan plan : plans) for (ToolTable.Tool t : plan.tools()) enter(t);
    }

    private void enter(ToolTable.Tool t) {
        ToolTable.Tool known = byId.get(t.cutter().id());
        double least = Math.max(t.stickoutMm(), t.cutter().fluteLengthMm().value());
        double out = Math.ceil(least / SETTING_MM - 1e-6) * SETTING_MM;
        byId.put(
                t.cutter().id(),
                known == null
                        ? new ToolTable.Tool(byId.size() + 1, t.cutter(), out)
                        : new ToolTable.Tool(known.number(), t.cutter(), Math.max(known.stickoutMm(), out)));
    }

    List<ToolTable.Tool> all() {
        return List.copyOf(byId.values());
    }

    /** As they stand in the spindle, by number. */
    Map<Integer, MountedCutter> mounted() {
        Map<Integer, MountedCutter> out = new LinkedHashMap<>();
        for (ToolTable.Tool t : byId.values())
            out.put(
                    t.number(),
                    new MountedCutter(
                            t.cutter(),
                            t.stickoutMm(),
                            Holder.forShank(t.cutter().shankMm().value())));
        return out;
    }

    /** A half's program with the mold's numbers and stickouts. */
    Program numbered(Program p, String setupName) {
        List<Operation> operations = p.operations().stream().map(this::numbered).toList();
        return new Program(setupName, p.workOffset(), p.stock(), p.clearanceZMm(), operations);
    }

    private Operation numbered(Operation o) {
        ToolTable.Tool t = byId.get(o.cutterId());
        if (t == null) throw new IllegalArgumentException("cutter " + o.cutterId() + " is not in the table");
        return new Operation(
                o.number(), o.words(), t.number(), o.cutterId(), t.stickoutMm(), o.speedRpm(), o.coolant(), o.moves());
    }
}
