package shotwright.report;

import java.util.List;
import shotwright.finding.Finding;
import shotwright.finding.Severity;
import shotwright.geom.Vec3;
import shotwright.intake.IntakeFacts;
import shotwright.intake.UnitReading;
import shotwright.job.JobResult;
import shotwright.measure.Band;
import shotwright.measure.InchSentence;
import shotwright.quote.PriceBand;
import shotwright.quote.QuoteResult;
import shotwright.review.DraftRegion;
import shotwright.review.ReviewResult;
import shotwright.review.Undercut;
import shotwright.sizing.SizingResult;

/**
 * One page for a person in a hurry: what the file is, whether it can be molded, whether the press holds it, one or two up, which walls lack
 * draft, what it may cost, what to ask the customer. Plain text that also reads as Markdown.
 */
public final class FirstAnswerPage {
    private static final int MOST_FINDINGS = 8;
    private static final int MOST_WALLS = 6;

    private final JobResult job;
    private final Numbers show;
    private final StringBuilder page = new StringBuilder();

    private FirstAnswerPage(JobResult job) {
        this.job = job;
        this.show = job.inch() ? Numbers.inch() : Numbers.metric();
    }

    public static String text(JobResult job) {
        FirstAnswerPage p = new FirstAnswerPage(job);
        p.head();
        p.file();
        if (job.review() != null) p.review(job.review());
        if (job.sizing() != null) p.press(job.sizing());
        p.later();
        p.price();
        p.findings();
        if (job.review() != null) p.questions(job.review().questions());
        return p.page.toString();
    }

    /** The head and rows alone, for the front of the summary. */
    static String brief(JobResult job) {
        FirstAnswerPage p = new FirstAnswerPage(job);
        p.line(p.verdict());
        p.line("");
        p.file();
        if (job.review() != null) p.review(job.review());
        if (job.sizing() != null) p.press(job.sizing());
        p.price();
        return p.page.toString();
    }

    private void head() {
        IntakeFacts f = job.intake().facts();
        String name = InchSentence.name(
                job.card().job() == null ? f.fileName() : job.card().job() + " (" + f.fileName() + ")");
        line(name);
        line("=".repeat(Math.min(78, name.length())));
        line(verdict());
        line("");
    }

    private String verdict() {
        List<Finding> all = job.findings();
        long stops = FindingText.count(all, Severity.STOP), asks = FindingText.count(all, Severity.ASK);
        if (job.intake().part() == null)
            return "Not taken in: the solid cannot be used as it is. What could be measured stands below.";
        if (stops > 0)
            return "Not as it is: " + count(stops, "stop")
                    + (asks > 0 ? ", " + count(asks, "question") + " besides" : "") + ".";
        if (asks > 0) return "Yes, in two plates without slides; first settle " + count(asks, "question") + ".";
        return "Yes, in two plates without slides.";
    }

    private void file() {
        IntakeFacts f = job.intake().facts();
        if (f.boxMm() == null) return;
        row(
                "Part",
                show.box(f.boxMm().size()) + ", "
                        + (f.openEdges() == 0 && Double.isFinite(f.volumeMm3())
                                ? show.volume(f.volumeMm3()) + ", closed"
                                : "not closed")
                        + ", " + Numbers.fixed(f.facets(), 0) + " facets");
        row("Unit", f.unitReason());
        if (f.unitReadings().size() > 1
                && job.intake().findings().stream().anyMatch(x -> x.code().contains("unit"))) {
            for (UnitReading r : f.unitReadings())
                row("", "read in " + r.unit().plural() + " it would be " + show.box(sizeOf(r)));
        }
        f.notes().forEach(n -> row("", n));
    }

    private static Vec3 sizeOf(UnitReading r) {
        return r.sizeMm();
    }

    private static String undercuts(List<Undercut> all) {
        if (all.isEmpty()) return "none, opens along the pull";
        double plastic = all.stream().mapToDouble(Undercut::inTheWayMm3).sum();
        double metal = all.stream().mapToDouble(Undercut::trappedMm3).sum();
        return count(all.size(), "place") + ", " + Numbers.figures(plastic, 2) + " mm³ of plastic in the way of "
                + Numbers.figures(metal, 2) + " mm³ of metal, see below";
    }

    private void review(ReviewResult r) {
        row("Opens", r.pull().words() + ". " + FindingText.sentence(r.pull().reason()));
        row("Projected", show.area(r.projectedAreaMm2()) + ", holes taken off");
        row(
                "Wall",
                "middle " + show.length(r.wall().medianMm()) + ", from "
                        + show.length(r.wall().minMm()) + " to "
                        + show.length(r.wall().maxMm()) + " away from edges and corners");
        row("Undercuts", undercuts(r.undercuts()));
        List<DraftRegion> lacking =
                r.draft().stream().filter(d -> d.shortAreaMm2() > 0).toList();
        if (lacking.isEmpty()) row("Draft", "every wall has what it should");
        else {
            row("Draft short on", "");
            lacking.stream()
                    .limit(MOST_WALLS)
                    .forEach(d -> row(
                            "",
                            d.name() + ": has " + Numbers.fixed(d.hasDeg(), 2) + "°, should have "
                                    + Numbers.fixed(d.askedDeg(), 2) + "°, " + show.coarse(d.depthMm()) + " deep"));
            int more = lacking.size() - MOST_WALLS;
            if (more > 0) row("", "and " + count(more, "more kind") + " of wall");
        }
        if (job.draft() != null) FaceText.rows(job.draft(), show).forEach(this::row);
    }

    private void press(SizingResult s) {
        SizingText.rows(s, show).forEach((name, text) -> row(name, text));
    }

    private void later() {
        if (job.layout() != null) LayoutText.rows(job.layout(), show).forEach(this::row);
        if (job.mold() != null) LayoutText.moldRows(job.mold(), show).forEach(this::row);
        LayoutText.exactRows(job.exactMold()).forEach(this::row);
        if (job.fill() != null) FlowText.fillRows(job.fill(), show).forEach(this::row);
        if (job.cool() != null) FlowText.coolRows(job.cool(), show).forEach(this::row);
        if (job.machining() != null) MillingText.rows(job.machining(), show).forEach(this::row);
    }

    private void price() {
        if (job.quote() != null) {
            QuoteResult q = job.quote();
            row("Price", "mold " + band(q.moldPrice()) + " " + q.currency() + ", first parts in " + days(q.leadDays()));
        } else if (job.firstPrice() != null) {
            PriceBand p = job.firstPrice();
            double[] money = p.moldAndFirstLotMoney();
            row(
                    "Price band",
                    Numbers.figures(money[0], 2) + " to " + Numbers.figures(money[1], 2) + " " + p.currency()
                            + " for the mold and a first lot of " + p.quantityCount() + "; first parts in "
                            + days(p.leadDays()) + ". At " + p.rates().whose());
        }
    }

    private static String band(Band b) {
        return Numbers.figures(b.nominal(), 2) + " (" + Numbers.figures(b.low(), 2) + " to "
                + Numbers.figures(b.high(), 2) + ")";
    }

    private static String days(Band b) {
        return Numbers.fixed(b.low(), 0) + " to " + Numbers.fixed(b.high(), 0) + " working days";
    }

    private void findings() {
        List<Finding> all = FindingText.ordered(job.findings());
        if (all.isEmpty()) return;
        line("");
        line("What has to be said");
        line("-------------------");
        int n = 1;
        for (Finding f : all.subList(0, Math.min(MOST_FINDINGS, all.size()))) plain(n++, f);
        if (all.size() > MOST_FINDINGS) line("and " + (all.size() - MOST_FINDINGS) + " lighter ones, in the summary.");
    }

    /** A finding in plain lines, wrapped. */
    private void plain(int number, Finding f) {
        String pad = number + ". ", before = f.severity().word() + ": ";
        for (String text : FindingText.lines(f, show, "")) {
            page.append(wrap(pad, before + text)).append('\n');
            pad = " ".repeat(pad.length());
            before = "";
        }
    }

    private void questions(List<String> questions) {
        if (questions.isEmpty()) return;
        line("");
        line("To ask the customer");
        line("-------------------");
        questions.forEach(q -> page.append(wrap("- ", show.sentence(q))).append('\n'));
    }

    private void row(String name, String text) {
        String pad = name + " ".repeat(Math.max(1, 16 - name.length()));
        page.append(wrap(pad, show.sentence(text))).append('\n');
    }

    /** Wraps a row at 110 characters, continuation lines under the text. */
    static String wrap(String pad, String text) {
        StringBuilder s = new StringBuilder(pad);
        int column = pad.length();
        for (String word : text.split(" ")) {
            if (column + word.length() > 110 && column > pad.length()) {
                s.append('\n').append(" ".repeat(pad.length()));
                column = pad.length();
            }
            s.append(word).append(' ');
            column += word.length() + 1;
        }
        return s.toString().stripTrailing();
    }

    static String count(long n, String what) {
        return n == 1 ? "one " + what : n + " " + what + "s";
    }

    private void line(String text) {
        page.append(show.sentence(text)).append('\n');
    }
}
