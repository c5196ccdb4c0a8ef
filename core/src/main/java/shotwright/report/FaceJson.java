package shotwright.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import shotwright.review.FaceReview;
import shotwright.review.FaceReview.FormedBy;
import shotwright.review.FaceReview.Need;
import shotwright.review.remedy.DraftRemedy;
import shotwright.review.remedy.LeanedWall;
import shotwright.review.remedy.RefusedWall;

/** The faces of the review as JSON, always metric. */
final class FaceJson {
    private FaceJson() {}

    static void write(ArrayNode to, List<FaceReview> faces) {
        for (FaceReview f : faces) {
            ObjectNode o = to.addObject();
            o.put("number", f.number()).put("name", f.name()).put("kind", word(f.kind()));
            if (f.size().diameterMm() > 0)
                SummaryJson.put(o, "diameterMm", f.size().diameterMm());
            SummaryJson.put(o, "widthMm", f.size().widthMm());
            SummaryJson.put(o, "heightMm", f.size().heightMm());
            SummaryJson.put(o, "areaMm2", f.areaMm2());
            o.set("atMm", SummaryJson.array(f.atMm()));
            o.put("half", half(f.formedBy()));
            SummaryJson.put(o, "draftMinDeg", f.leastDraftDeg());
            SummaryJson.put(o, "draftMaxDeg", f.mostDraftDeg());
            o.set("draftMinAtMm", SummaryJson.array(f.leastAtMm()));
            o.set("draftMaxAtMm", SummaryJson.array(f.mostAtMm()));
            o.put("needsDraft", f.need() == Need.LACKS).put("draft", word(f.need()));
            if (f.askedDeg() > 0) {
                SummaryJson.put(o, "draftAskedDeg", f.askedDeg());
                SummaryJson.put(o, "neutralAtPartingMm", f.partingEndMm());
                SummaryJson.put(o, "neutralAtOpenEdgeMm", f.openEndMm());
            }
            if (f.finding() > 0) o.put("finding", f.finding());
        }
    }

    static void write(ObjectNode n, DraftRemedy d) {
        SummaryJson.put(n, "askedDeg", d.wish().draftDeg());
        n.put("neutral", d.wish().neutral().word());
        if (d.hasPart()) n.put("file", DraftRemedy.FILE);
        SummaryJson.put(n, "volumeBeforeMm3", d.volumeBeforeMm3());
        SummaryJson.put(n, "volumeAfterMm3", d.volumeAfterMm3());
        n.set("boxBeforeMm", SummaryJson.array(d.sizeBefore()));
        n.set("boxAfterMm", SummaryJson.array(d.sizeAfter()));
        ArrayNode leaned = n.putArray("leaned");
        for (LeanedWall w : d.leaned()) {
            ObjectNode o = leaned.addObject()
                    .put("face", w.face().number())
                    .put("name", w.face().name());
            o.put("half", w.bothWays() ? "both" : half(w.face().formedBy()));
            SummaryJson.put(o, "beforeDeg", w.face().leastDraftDeg());
            SummaryJson.put(o, "afterDeg", w.afterDeg());
            SummaryJson.put(o, "neutralMm", w.neutralMm());
            SummaryJson.put(o, "otherEndMovesMm", w.movesMm());
            o.put("neutralShiftMm", w.neutralShiftMm());
        }
        ArrayNode refused = n.putArray("refused");
        for (RefusedWall w : d.refused())
            refused.addObject()
                    .put("face", w.face().number())
                    .put("name", w.face().name())
                    .put("reason", w.reason())
                    .put("remedy", w.remedy());
        SummaryJson.findings(n, d.findings());
    }

    private static String half(FormedBy by) {
        return switch (by) {
            case A -> "A";
            case B -> "B";
            case BOTH -> "both";
            case NEITHER -> "none";
        };
    }

    static String word(Enum<?> e) {
        return e.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
