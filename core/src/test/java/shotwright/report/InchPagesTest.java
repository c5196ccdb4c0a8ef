package shotwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shotwright.demo.TensionKnob;
import shotwright.finding.Finding;
import shotwright.job.JobCard;
import shotwright.job.JobResult;
import shotwright.job.LayoutCard;
import shotwright.job.Line;
import shotwright.job.Shop;
import shotwright.job.Station;
import shotwright.progress.Progress;
import shotwright.quote.QuoteResult;
import shotwright.sizing.CavityRow;

/** The whole line on the demo part, read in millimetres and in inches: the same job, every measured value in the shop's own unit. */
class InchPagesTest {
    /** A number, a plain space, a metric unit; a no-break space marks a name as sold or the metric value behind an inch one. */
    private static final Pattern METRIC =
            Pattern.compile("[^\\n]{0,60}\\d (mm|cm|dm|µm|kg|kPa|MPa|kN|N|°C|K)(?![\\p{L}·/])[^\\n]{0,20}");

    private static JobResult metric;
    private static JobResult inch;

    @BeforeAll
    static void runTheLine(@TempDir Path folder) throws IOException {
        Path part = Files.write(folder.resolve("knob 20 mm.stl"), TensionKnob.stl());
        metric = new Line(Shop.standard()).run(part, card(), Station.SHEET, null, Progress.SILENT);
        inch = new JobResult(
                inInches(metric.card()),
                metric.intake(),
                metric.review(),
                metric.draft(),
                metric.firstPrice(),
                metric.sizing(),
                metric.layout(),
                metric.mold(),
                metric.exactMold(),
                metric.fill(),
                metric.cool(),
                metric.resins(),
                metric.trialOrder(),
                metric.machining(),
                metric.quote(),
                metric.sheet(),
                metric.takenUp(),
                metric.refusals());
    }

    private static JobCard inInches(JobCard c) {
        return new JobCard(
                c.card(),
                c.job(),
                c.customer(),
                c.unit(),
                c.mend(),
                c.body(),
                c.pull(),
                c.resins(),
                c.press(),
                c.secondPress(),
                c.cavities(),
                c.quantities(),
                c.material(),
                c.cutters(),
                c.mill(),
                c.control(),
                c.layout(),
                c.addDraftDeg(),
                c.draftNeutral(),
                "in",
                c.currency());
    }

    private static JobCard card() {
        return new JobCard(
                JobCard.KIND,
                null,
                null,
                "mm",
                Set.of(),
                null,
                List.of(),
                List.of("abs", "pp-copo"),
                "electric-10t",
                null,
                1,
                List.of(100),
                null,
                List.of(),
                null,
                null,
                LayoutCard.EMPTY,
                null,
                null,
                "mm",
                null);
    }

    private static List<String> pages(JobResult job) {
        return List.of(
                FirstAnswerPage.text(job),
                SummaryPage.text(job, List.of()),
                PressSheetPage.text(Objects.requireNonNull(job.sheet()), job.inch()));
    }

    private static List<String> metricValues(String page) {
        return METRIC.matcher(page).results().map(r -> r.group()).toList();
    }

    @Test
    void noPageForAnInchShopLeavesAMetricValueAlone() {
        for (String page : pages(inch)) assertThat(metricValues(page)).isEmpty();
        assertThat(metricValues(pages(metric).get(1))).hasSizeGreaterThan(50);
    }

    @Test
    void cavityTableAndQuoteAskTheSameForTheMold() {
        QuoteResult quote = Objects.requireNonNull(metric.quote());
        CavityRow taken = Objects.requireNonNull(metric.sizing()).cavityRows().stream()
                .filter(CavityRow::chosen)
                .findFirst()
                .orElseThrow();
        assertThat(taken.moldPrice()).isEqualTo(quote.moldPrice().nominal());
        assertThat(taken.pricePerPart())
                .isEqualTo(quote.at(100).pricePerPart() + quote.moldPrice().nominal() / 100);
        assertThat(pages(metric).get(1)).contains("At a typical small shop's rates, not yours: labour 45");
    }

    @Test
    void namesKeepWhatTheyAreSoldAs() {
        assertThat(pages(inch).get(0)).contains("knob 20\u00a0mm.stl");
        assertThat(pages(inch).get(1)).contains("tip 2\u00a0mm").contains("2 of 6\u00a0mm");
    }

    @Test
    void aMetricShopReadsEverySentenceAsItWasWritten() {
        String page = pages(metric).get(1);
        for (Finding f : Objects.requireNonNull(metric.review()).findings())
            assertThat(page).contains(f.text());
        assertThat(page).contains("Is 35.00 × 31.92 × 14.27 mm the size you expect?");
        assertThat(pages(inch).get(1)).contains("Is 1.378 × 1.2567 × 0.5618 in the size you expect?");
    }

    @Test
    void jsonIsMetricForEveryShop() {
        assertThat(SummaryJson.text(inch))
                .isEqualTo(SummaryJson.text(metric).replace("\"lengthsIn\" : \"mm\"", "\"lengthsIn\" : \"in\""));
    }
}
