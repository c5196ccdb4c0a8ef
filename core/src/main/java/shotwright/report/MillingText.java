package shotwright.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import shotwright.machining.MachiningResult;
import shotwright.machining.MachiningResult.Clamping;
import shotwright.machining.MachiningResult.CutterChoice;
import shotwright.machining.MachiningResult.HalfWork;
import shotwright.machining.MachiningResult.ProofFigures;
import shotwright.measure.Band;
import shotwright.measure.InchSentence;

/** Says the milling in rows of words and numbers. */
final class MillingText {
    private MillingText() {}

    static Map<String, String> rows(MachiningResult m, Numbers show) {
        Map<String, String> rows = new LinkedHashMap<>();
        rows.put(
                "Milling",
                hours(m.timeS()) + " at the " + InchSentence.name(m.mill()) + ", "
                        + m.clampings().size() + " clampings, "
                        + FirstAnswerPage.count(m.cutters().size(), "cutter") + "; "
                        + hours(m.lengthOverFeedS()) + " by length over feed alone");
        for (HalfWork h : m.halves()) rows.put("Half " + h.half(), half(h, show));
        long faulty = m.clampings().stream().filter(c -> !c.clean()).count();
        rows.put(
                "Programs",
                faulty == 0
                        ? m.clampings().size() + " in programs/, in " + (m.programsInch() ? "inches" : "millimetres")
                                + ", proved by running them against their stock"
                        : (m.clampings().size() - faulty) + " of "
                                + m.clampings().size() + " given out; the others have faults, see below");
        return rows;
    }

    private static String half(HalfWork h, Numbers show) {
        ProofFigures p = h.proof();
        String moves =
                h.operationCount() + " operations, " + Numbers.fixed(h.moveCount(), 0) + " moves, " + hours(h.timeS());
        String proof = "deepest cut into it " + show.fine(p.maxGougeMm()) + ", 95 % of it has less than "
                + show.fine(Math.max(0.001, p.leftoverP95Mm())) + " left, at most " + show.fine(p.maxLeftoverMm());
        String trouble = p.rapidInStock() + p.contacts() == 0
                ? "no rapid in stock, nothing touches"
                : FirstAnswerPage.count(p.rapidInStock(), "rapid") + " in stock, "
                        + FirstAnswerPage.count(p.contacts(), "contact");
        return moves + "; " + proof + "; " + trouble;
    }

    /** The cutter sets of a half's molding surface, one line each. */
    static List<String> sets(HalfWork h) {
        return h.best().stream().map(MillingText::set).toList();
    }

    private static String set(CutterChoice c) {
        return c.what().words() + ": " + c.cutterIds().stream().collect(Collectors.joining(", ")) + ", "
                + Numbers.time(c.timeS()) + " with changes";
    }

    /** How long each cutter moves in a half, longest first. */
    static String shares(HalfWork h) {
        return cutterS(h).entrySet().stream()
                .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
                .map(e -> e.getKey() + " " + Numbers.time(e.getValue()))
                .collect(Collectors.joining(", "));
    }

    /** Seconds each cutter moves in a half, in the order they are first used. */
    static Map<String, Double> cutterS(HalfWork h) {
        Map<String, Double> out = new LinkedHashMap<>();
        for (Clamping c : h.clampings()) c.operations().forEach(o -> out.merge(o.cutterId(), o.timeS(), Double::sum));
        return out;
    }

    /** What a clamping's program is called, or why there is none. */
    static String program(Clamping c) {
        return c.files().isEmpty()
                ? "none given out: its proof has "
                        + FirstAnswerPage.count(c.faults().size(), "fault")
                : "`programs/" + c.files().getFirst().name() + "`";
    }

    /** Hours with their band. */
    static String hours(Band s) {
        return hours(s.nominal()) + " (" + hours(s.low()) + " to " + hours(s.high()) + ")";
    }

    /** Minutes below two hours, else hours. */
    static String hours(double s) {
        return s < 7200 ? Numbers.fixed(s / 60, 0) + " min" : Numbers.fixed(s / 3600, 1) + " h";
    }
}
