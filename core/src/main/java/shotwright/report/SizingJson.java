package shotwright.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import shotwright.sizing.CavityRow;
import shotwright.sizing.ClampWay;
import shotwright.sizing.PressVerdict;
import shotwright.sizing.SizingResult;

/** The press answer as JSON. */
final class SizingJson {
    private SizingJson() {}

    static void write(ObjectNode n, SizingResult s) {
        n.put("resin", s.resin().id()).put("press", s.press().id());
        if (s.secondPress() != null) n.put("secondPress", s.secondPress().id());
        n.put("cavities", s.cavities());
        SummaryJson.put(n, "projectedAreaShotMm2", s.projectedAreaShotMm2());
        SummaryJson.put(n, "clampNeededKn", s.clampNeededKn());
        n.put("clampNeededShortTons", SummaryJson.shortTons(s.clampNeededKn()));
        n.set(
                "clampBandKn",
                SummaryJson.array(s.clampBandKn().low(), s.clampBandKn().high()));
        ArrayNode ways = n.putArray("clampWays");
        for (ClampWay w : s.clamp().ways()) {
            ObjectNode o = ways.addObject().put("name", w.name());
            SummaryJson.put(o, "clampKn", w.clampKn().nominal());
            o.set(
                    "clampBandKn",
                    SummaryJson.array(w.clampKn().low(), w.clampKn().high()));
            o.put("how", w.words()).put("source", w.source().toString());
        }
        SummaryJson.put(n, "shotG", s.shotG());
        SummaryJson.put(n, "shotVolumeMm3", s.shotVolumeMm3());
        SummaryJson.put(n, "utilisationShare", s.utilisationShare());
        SummaryJson.put(n, "residenceS", s.residenceS());
        n.put("verdict", s.verdict().words());
        ArrayNode presses = n.putArray("presses");
        for (PressVerdict p : s.presses()) {
            presses.addObject()
                    .put("id", p.press().id())
                    .put("verdict", p.verdict().words())
                    .put("firstReason", p.firstReason());
        }
        ArrayNode rows = n.putArray("cavityTable");
        for (CavityRow c : s.cavityRows()) {
            ObjectNode o = rows.addObject()
                    .put("cavities", c.cavitiesCount())
                    .put("chosen", c.chosen())
                    .put("verdict", c.verdict().words());
            SummaryJson.put(o, "clampNeededKn", c.clampNeededKn());
            SummaryJson.put(o, "shotG", c.shotG());
            SummaryJson.put(o, "moldPrice", c.moldPrice());
            SummaryJson.put(o, "pricePerPart", c.pricePerPart());
            o.put("why", c.words());
        }
    }
}
