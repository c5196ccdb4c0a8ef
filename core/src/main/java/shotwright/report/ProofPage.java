package shotwright.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import shotwright.geom.Vec3;
import shotwright.machining.gcode.Listing;
import shotwright.machining.path.Operation;
import shotwright.machining.proof.Fault;
import shotwright.machining.proof.Leftover;
import shotwright.machining.proof.Proof;
import shotwright.measure.Digits;
import shotwright.measure.InchSentence;

/** What running a program against its stock showed, as text and as JSON. */
public final class ProofPage {
    /** Places told in the text; the JSON has all. */
    private static final int PLACES = 5;

    private static final JsonMapper JSON = new JsonMapper();
    private static final String CAUTION =
            "Prove every program on the machine itself: in air first, then slowly with a finger on stop. The maker's manual and local "
                    + "rules come first.";

    private ProofPage() {}

    /**
     * The page.
     *
     * @param file name of the program
     * @param listing the program as read
     * @param proof what it showed
     * @param inch whether lengths are shown in inches
     */
    public static String text(String file, Listing listing, Proof proof, boolean inch) {
        StringBuilder s = new StringBuilder();
        int moves = listing.program().operations().stream()
                .mapToInt(o -> o.moves().size())
                .sum();
        double feedMm = listing.program().operations().stream()
                .mapToDouble(Operation::feedLengthMm)
                .sum();
        line(
                s,
                inch,
                file + ": " + listing.program().operations().size() + " operations, " + moves + " moves, "
                        + Digits.fixed(feedMm, 0) + " mm at feed. It takes " + Digits.fixed(proof.removedMm3(), 0)
                        + " mm³ from the stock.");
        if (proof.isClean()) line(s, inch, "No fault was found.");
        else
            line(
                    s,
                    inch,
                    proof.faults().size() == 1 ? "One fault:" : proof.faults().size() + " faults:");
        for (Fault f : proof.faults()) {
            Operation o = listing.program().operations().get(f.operation());
            line(
                    s,
                    inch,
                    "  line " + listing.line(f.operation(), f.move()) + ", operation " + o.number() + " (" + o.words()
                            + "): " + f.text());
        }
        Leftover left = proof.leftover();
        if (left != null) leftover(s, inch, left);
        line(s, inch, CAUTION);
        return s.toString();
    }

    private static void leftover(StringBuilder s, boolean inch, Leftover left) {
        line(
                s,
                inch,
                "Against the half: 95 % of its top has no more than " + Digits.fixed(left.share95Mm(), 3)
                        + " mm left on it, the most is " + Digits.fixed(left.worstMm(), 3)
                        + " mm, the deepest cut into it "
                        + Digits.fixed(left.deepestMm(), 3) + " mm.");
        left.places().stream()
                .limit(PLACES)
                .forEach(p -> line(
                        s,
                        inch,
                        "  " + Digits.fixed(p.leftMm(), 3)
                                + " mm left at x " + Digits.fixed(p.at().x(), 2) + ", y " + Digits.fixed(p.at().y(), 2)
                                + ", z "
                                + Digits.fixed(p.at().z(), 2) + " mm"));
    }

    private static void line(StringBuilder s, boolean inch, String metric) {
        String pad = metric.startsWith("  ") ? "  " : "", said = metric.strip();
        s.append(FirstAnswerPage.wrap(pad, inch ? InchSentence.of(said) : said)).append('\n');
    }

    /** The same for scripts, lengths in millimetres. */
    public static String json(String file, Listing listing, Proof proof) {
        ObjectNode n = JSON.createObjectNode();
        n.put("file", file);
        n.put("operations", listing.program().operations().size());
        n.put(
                "moves",
                listing.program().operations().stream()
                        .mapToInt(o -> o.moves().size())
                        .sum());
        n.put("removedMm3", proof.removedMm3());
        ArrayNode faults = n.putArray("faults");
        for (Fault f : proof.faults()) {
            ObjectNode o = faults.addObject();
            o.put("line", listing.line(f.operation(), f.move()));
            o.put("operation", listing.program().operations().get(f.operation()).number());
            o.put("kind", f.kind().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'));
            o.put("what", f.what());
            o.put("text", f.text());
            place(o, f.at());
            o.put("value", f.found().value());
            o.put("limit", f.limit().value());
            o.put("unit", f.kind().unit());
        }
        Leftover left = proof.leftover();
        if (left != null) {
            ObjectNode o = n.putObject("leftover");
            o.put("maxMm", left.worstMm());
            o.put("p95Mm", left.share95Mm());
            o.put("maxGougeMm", left.deepestMm());
            ArrayNode bins = o.putArray("bins");
            for (Leftover.Bin b : left.bins()) {
                ObjectNode bin = bins.addObject();
                if (Double.isFinite(b.fromUm())) bin.put("fromUm", b.fromUm());
                if (Double.isFinite(b.toUm())) bin.put("toUm", b.toUm());
                bin.put("areaMm2", b.areaMm2());
            }
            ArrayNode places = o.putArray("places");
            for (Leftover.Place p : left.places()) {
                ObjectNode place = places.addObject();
                place(place, p.at());
                place.put("leftMm", p.leftMm());
            }
        }
        try {
            return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(n) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void place(ObjectNode o, Vec3 at) {
        o.putArray("atMm").add(at.x()).add(at.y()).add(at.z());
    }
}
