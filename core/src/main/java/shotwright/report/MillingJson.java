package shotwright.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import shotwright.machining.MachiningResult;
import shotwright.machining.MachiningResult.Clamping;
import shotwright.machining.MachiningResult.CutterChoice;
import shotwright.machining.MachiningResult.HalfWork;
import shotwright.machining.MachiningResult.LoadedCutter;
import shotwright.machining.MachiningResult.OperationWork;
import shotwright.machining.MachiningResult.ProgramFault;
import shotwright.machining.MachiningResult.ProofFigures;

/** The milling in the summary for scripts. */
final class MillingJson {
    private MillingJson() {}

    static void write(ObjectNode n, MachiningResult m) {
        n.put("mill", m.mill()).put("control", m.control()).put("programsIn", m.programsInch() ? "in" : "mm");
        n.put("setups", m.clampings().size());
        SummaryJson.put(n, "timeS", m.timeS().nominal());
        n.set("timeBandS", SummaryJson.array(m.timeS().low(), m.timeS().high()));
        SummaryJson.put(n, "changeS", m.changeS());
        SummaryJson.put(n, "lengthOverFeedS", m.lengthOverFeedS());
        ArrayNode ids = n.putArray("cutters");
        m.cutters().forEach(c -> ids.add(c.id()));
        ArrayNode tools = n.putArray("tools");
        for (LoadedCutter c : m.cutters()) tool(tools.addObject(), c);
        ArrayNode halves = n.putArray("halves");
        for (HalfWork h : m.halves()) half(halves.addObject(), h);
        ArrayNode saw = n.putArray("sawing");
        m.sawing().forEach(saw::add);
    }

    private static void tool(ObjectNode o, LoadedCutter c) {
        o.put("number", c.number()).put("cutter", c.id()).put("holder", c.holder());
        SummaryJson.put(o, "stickoutMm", c.stickoutMm());
        SummaryJson.put(o, "timeS", c.timeS());
    }

    private static void half(ObjectNode o, HalfWork h) {
        o.put("name", h.half()).put("canOpen", h.canOpen());
        o.put("operations", h.operationCount()).put("moves", h.moveCount());
        SummaryJson.put(o, "timeS", h.timeS().nominal());
        o.set("timeBandS", SummaryJson.array(h.timeS().low(), h.timeS().high()));
        ObjectNode cutterS = o.putObject("cutterTimesS");
        MillingText.cutterS(h).forEach((id, timeS) -> SummaryJson.put(cutterS, id, timeS));
        proof(o.putObject("proof"), h.proof());
        ArrayNode sets = o.putArray("cutterSets");
        for (CutterChoice c : h.best()) {
            ObjectNode s = sets.addObject();
            s.put("set", c.what().words());
            SummaryJson.put(s, "timeS", c.timeS());
            SummaryJson.put(s, "missedMm2", c.missedMm2());
            ArrayNode ids = s.putArray("cutters");
            c.cutterIds().forEach(ids::add);
        }
        ArrayNode clampings = o.putArray("clampings");
        for (Clamping c : h.clampings()) clamping(clampings.addObject(), c);
        ArrayNode byHand = o.putArray("byHand");
        h.byHand().forEach(byHand::add);
    }

    private static void proof(ObjectNode o, ProofFigures p) {
        SummaryJson.put(o, "maxGougeMm", p.maxGougeMm());
        SummaryJson.put(o, "maxLeftoverMm", p.maxLeftoverMm());
        SummaryJson.put(o, "leftoverP95Mm", p.leftoverP95Mm());
        SummaryJson.put(o, "leftoverMm2", p.leftoverMm2());
        o.put("rapidInStock", p.rapidInStock()).put("contacts", p.contacts());
        SummaryJson.put(o, "unreachableMm2", p.unreachableMm2());
    }

    private static void clamping(ObjectNode o, Clamping c) {
        o.put("name", c.setup().name()).put("zero", c.setup().offset().name());
        ArrayNode files = o.putArray("programs");
        c.files().forEach(f -> files.add("programs/" + f.name()));
        SummaryJson.put(o, "timeS", c.timeS().nominal());
        SummaryJson.put(o, "lengthOverFeedS", c.lengthOverFeedS());
        o.put("cutterChanges", c.cutterChanges());
        SummaryJson.put(o, "removedMm3", c.removedMm3());
        ArrayNode operations = o.putArray("operations");
        for (OperationWork w : c.operations()) {
            ObjectNode x = operations.addObject();
            x.put("number", w.number())
                    .put("words", w.words())
                    .put("tool", w.toolNumber())
                    .put("cutter", w.cutterId());
            SummaryJson.put(x, "speedRpm", w.speedRpm());
            SummaryJson.put(x, "feedMmPerMin", w.feedMmPerMin());
            SummaryJson.put(x, "lowestZMm", w.lowestZMm());
            x.put("moves", w.moves());
            SummaryJson.put(x, "timeS", w.timeS());
        }
        ArrayNode faults = o.putArray("faults");
        for (ProgramFault f : c.faults())
            faults.addObject()
                    .put("kind", f.kind())
                    .put("operation", f.operation())
                    .put("words", f.words())
                    .put("line", f.line())
                    .put("text", f.text());
    }
}
