package shotwright.report;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import shotwright.fill.FillResult;
import shotwright.finding.Finding;
import shotwright.intake.IntakeFacts;
import shotwright.job.JobResult;
import shotwright.job.Station;
import shotwright.layout.Decision;
import shotwright.machining.MachiningResult;
import shotwright.machining.MachiningResult.Clamping;
import shotwright.machining.MachiningResult.HalfWork;
import shotwright.measure.InchSentence;
import shotwright.quote.QuoteResult;
import shotwright.review.DraftRegion;
import shotwright.review.FaceReview;
import shotwright.review.ReviewResult;
import shotwright.review.remedy.DraftRemedy;
import shotwright.review.remedy.LeanedWall;
import shotwright.review.remedy.RefusedWall;
import shotwright.sheet.PressSheet;

/** {@code 00-summary.md}: the whole job read like the traveller that goes round a shop, one section per station. */
public final class SummaryPage {
    private final JobResult job;
    private final Numbers show;
    private final List<String> pictures;
    private final StringBuilder page = new StringBuilder();

    private SummaryPage(JobResult job, List<String> pictures) {
        this.job = job;
        this.pictures = pictures;
        this.show = job.inch() ? Numbers.inch() : Numbers.metric();
    }

    /**
     * The page.
     *
     * @param pictures names of pictures in the job folder, shown in the section whose number their name begins with
     */
    public static String text(JobResult job, List<String> pictures) {
        SummaryPage p = new SummaryPage(job, pictures);
        p.write();
        return p.page.toString();
    }

    private void write() {
        IntakeFacts f = job.intake().facts();
        line("# "
                + InchSentence.name(
                        job.card().job() == null ? f.fileName() : job.card().job()));
        line("");
        if (job.card().customer() != null)
            line(InchSentence.name("For " + job.card().customer() + ". Part file " + f.fileName() + "."));
        line("");
        line("```");
        page.append(FirstAnswerPage.brief(job));
        line("```");
        intake(f);
        if (job.review() != null) review(job.review());
        if (job.sizing() != null) {
            head(Station.SIZING);
            page.append(show.sentence(SizingText.table(job.sizing(), show)));
            findings(job.sizing().findings());
        }
        if (job.layout() != null) {
            head(Station.LAYOUT);
            rows(LayoutText.rows(job.layout(), show));
            decisions(job.layout().decisions());
            findings(job.layout().findings());
        }
        if (job.mold() != null) {
            head(Station.HALVES);
            rows(LayoutText.moldRows(job.mold(), show));
            rows(Map.of(
                    "On paper",
                    "halves/half-A.svg and half-B.svg; outlines for the mill in half-A.dxf and half-B.dxf, in mm; each seen as"
                            + " when looking onto the parting face, places from the datum corner"));
            rows(LayoutText.exactRows(job.exactMold()));
            findings(job.mold().findings());
            if (job.exactMold() != null) findings(job.exactMold().findings());
        }
        if (job.fill() != null) fill(job.fill());
        if (job.cool() != null) {
            head(Station.COOL);
            rows(FlowText.coolRows(job.cool(), show));
            findings(job.cool().findings());
        }
        if (job.machining() != null) milling(job.machining());
        if (job.quote() != null) quote(job.quote());
        if (job.sheet() != null) sheet(job.sheet());
        line("");
        line("---");
        line(
                "Numbers are estimates to plan with, rounded to what they are worth. Local rules, the makers' manuals and licensed practice come first.");
    }

    private void intake(IntakeFacts f) {
        head(Station.INTAKE);
        line("- " + f.format() + ", " + Numbers.fixed(f.facets(), 0) + " facets, "
                + FirstAnswerPage.count(f.bodies(), "body").replace("bodys", "bodies"));
        if (f.boxMm() != null)
            line("- Size " + show.box(f.boxMm().size()) + ". " + FindingText.sentence(f.unitReason()));
        if (job.intake().part() != null)
            line("- Volume " + show.volume(f.volumeMm3()) + ", surface " + show.area(f.surfaceAreaMm2()) + ", closed");
        f.notes().forEach(n -> line("- " + FindingText.sentence(n)));
        findings(job.intake().findings());
    }

    private void review(ReviewResult r) {
        head(Station.REVIEW);
        line("Opens " + r.pull().words() + ". " + FindingText.sentence(r.pull().reason()));
        line("");
        line("| projected area | wall, middle | thinnest | thickest | undercuts |");
        line("|---|---|---|---|---|");
        line("| " + show.area(r.projectedAreaMm2()) + " | "
                + show.length(r.wall().medianMm()) + " | "
                + show.length(r.wall().minMm()) + " | " + show.length(r.wall().maxMm()) + " | "
                + r.undercuts().size() + " |");
        line("");
        if (!r.draft().isEmpty()) {
            line("| walls | count | deep | has | asked | finding |");
            line("|---|---|---|---|---|---|");
            for (DraftRegion d : r.draft()) {
                line("| " + d.name() + " | " + d.faces() + " | " + show.coarse(d.depthMm()) + " | "
                        + Numbers.fixed(d.hasDeg(), 2) + "° | " + Numbers.fixed(d.askedDeg(), 2) + "° | "
                        + (d.finding() > 0 ? String.valueOf(d.finding()) : "") + " |");
            }
            line("");
        }
        List<Integer> without = ReviewPictures.without(r);
        if (!without.isEmpty())
            line("Numbers in circles on the pictures are the numbers below. Without a circle: "
                    + without.stream().map(String::valueOf).collect(Collectors.joining(", ")) + ".");
        findings(r.findings());
        if (!r.questions().isEmpty()) {
            line("");
            line("**To ask the customer**");
            line("");
            r.questions().forEach(q -> line("- " + q));
        }
        if (!r.faces().isEmpty()) faces(r.faces());
        if (job.draft() != null)
            draft(job.draft(), r.pulled().mesh().box().min().z());
    }

    private void draft(DraftRemedy d, double bottomMm) {
        line("");
        line("**Draft added**, for the customer to approve");
        line("");
        rows(FaceText.rows(d, show));
        if (!d.leaned().isEmpty()) {
            line("");
            line("| face | what it is | half | had | has now | size kept, above the bottom | other end moves |");
            line("|---:|---|---|---:|---:|---:|---:|");
            for (LeanedWall w : d.leaned())
                line("| " + w.face().number() + " | " + w.face().name() + " | " + FaceText.half(w) + " | "
                        + Numbers.fixed(w.face().leastDraftDeg(), 2) + "° | " + Numbers.fixed(w.afterDeg(), 2) + "° | "
                        + show.length(w.neutralMm() - bottomMm) + " | " + show.length(w.movesMm()) + " |");
        }
        if (!d.refused().isEmpty()) {
            line("");
            line("| face | what it is | stays as it is, because | instead |");
            line("|---:|---|---|---|");
            for (RefusedWall w : d.refused())
                line("| " + w.face().number() + " | " + w.face().name() + " | " + w.reason() + " | " + w.remedy()
                        + " |");
        }
        findings(d.findings());
    }

    private void faces(List<FaceReview> faces) {
        line("");
        line("**Face by face**, numbers as in the file");
        line("");
        line("| face | what it is | size | area | half | draft | asked | needs draft |");
        line("|---:|---|---|---:|---|---|---|---|");
        for (FaceReview f : faces)
            line("| " + f.number() + " | " + f.name() + " | " + f.size().words() + " | "
                    + show.value(f.areaMm2(), "mm²") + " | " + f.formedBy().words() + " | "
                    + FaceText.draft(f) + " | " + (f.askedDeg() > 0 ? Numbers.fixed(f.askedDeg(), 2) + "°" : "")
                    + " | " + FaceText.need(f) + " |");
    }

    private void fill(FillResult f) {
        head(Station.FILL);
        rows(FlowText.fillRows(f, show));
        line("");
        line("| piece of the way | long | takes | shear rate |");
        line("|---|---|---|---|");
        f.steps()
                .forEach(s -> line("| " + s.name() + " | " + show.coarse(s.lengthMm()) + " | "
                        + show.pressure(s.dropMpa()) + " | " + Numbers.figures(s.shearRatePerS(), 2) + " 1/s |"));
        line("");
        findings(f.findings());
    }

    private void milling(MachiningResult m) {
        head(Station.MILLING);
        rows(MillingText.rows(m, show));
        rows(Map.of("On paper", "[set-up sheets](setup-sheets.md), [kit list and traveller](kit-list.md)"));
        line("");
        line("| clamping | op | what | cutter | moves | time |");
        line("|---|---:|---|---|---:|---:|");
        for (Clamping c : m.clampings())
            c.operations()
                    .forEach(o -> line("| " + c.setup().name() + " | " + o.number() + " | " + o.words() + " | T"
                            + o.toolNumber() + " " + o.cutterId() + " | " + Numbers.fixed(o.moves(), 0) + " | "
                            + Numbers.time(o.timeS()) + " |"));
        line("");
        for (HalfWork h : m.halves()) line("- **Half " + h.half() + " by cutter:** " + MillingText.shares(h));
        line("");
        for (HalfWork h : m.halves()) {
            if (h.best().isEmpty()) continue;
            line("**Cutters for the molding surface of half " + h.half() + "**, times estimated before the paths");
            line("");
            MillingText.sets(h).forEach(s -> line("- " + s));
            line("");
        }
        findings(m.findings());
    }

    private void quote(QuoteResult q) {
        head(Station.QUOTE);
        String money = q.currency();
        line("Mold " + Numbers.figures(q.moldPrice().nominal(), 2) + " " + money + " ("
                + Numbers.figures(q.moldPrice().low(), 2) + " to "
                + Numbers.figures(q.moldPrice().high(), 2) + "), first parts in "
                + Numbers.fixed(q.leadDays().low(), 0) + " to "
                + Numbers.fixed(q.leadDays().high(), 0) + " working days.");
        line("");
        line(RatesText.sentence(q.rates()));
        line("");
        line("| quantity | each | lot |");
        line("|---:|---:|---:|");
        q.perPart()
                .forEach(p -> line("| " + Numbers.fixed(p.quantityCount(), 0) + " | "
                        + Numbers.fixed(p.pricePerPart(), 2) + " | " + Numbers.fixed(p.lotPrice(), 0) + " |"));
        line("");
        line("| hours | h | shown to the customer | why |");
        line("|---|---:|---|---|");
        q.hours()
                .forEach(h -> line("| " + h.name() + " | " + Numbers.figures(h.timeH(), 2) + " | "
                        + (h.shown() ? "yes" : "no") + " | " + h.why() + " |"));
        line("");
        findings(q.findings());
    }

    private void sheet(PressSheet s) {
        head(Station.SHEET);
        line("See [press-sheet.md](press-sheet.md).");
        findings(s.findings());
    }

    private void decisions(List<Decision> decisions) {
        if (decisions.isEmpty()) return;
        line("");
        line("| decided | taken | because | on the job card |");
        line("|---|---|---|---|");
        decisions.forEach(d -> line("| " + d.name() + " | " + d.value() + " | " + d.reason() + " | "
                + (d.key().isEmpty() ? "" : "`" + d.key() + "`") + " |"));
        line("");
    }

    private void rows(Map<String, String> rows) {
        rows.forEach((name, text) -> line("- **" + name + ":** " + text));
    }

    private void findings(List<Finding> findings) {
        if (findings.isEmpty()) return;
        line("");
        int n = 1;
        for (Finding f : findings) page.append(FindingText.item(n++, f, show));
    }

    private void head(Station s) {
        line("");
        line("## " + s.number() + " " + s.title() + ": " + s.question());
        line("");
        for (String p : pictures) {
            if (p.startsWith("pictures/" + s.number() + "-")) {
                line("![" + p.replaceAll("^pictures/\\d+-|\\.png$", "").replace('-', ' ') + "](" + p + ")");
                line("");
            }
        }
    }

    private void line(String text) {
        page.append(show.sentence(text)).append('\n');
    }
}
