package shotwright.checks.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.xml.sax.InputSource;
import shotwright.checks.Repository;
import shotwright.drawing.Drawing;
import shotwright.drawing.Mark;
import shotwright.drawing.SvgFile;
import shotwright.drawing.Typeface;
import shotwright.job.JobCard;
import shotwright.job.JobResult;
import shotwright.job.LayoutCard;
import shotwright.job.Line;
import shotwright.job.Shop;
import shotwright.job.Station;
import shotwright.layout.DowelPlace;
import shotwright.layout.Half;
import shotwright.layout.LayoutResult;
import shotwright.layout.PinPlace;
import shotwright.progress.Progress;
import shotwright.report.half.FaceReader;
import shotwright.report.half.HalfSheet;

/** Drawings of the halves: every label on the sheet and clear of every other, the numbers those of the layout. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class HalfSheetTest {
    private static final HalfSheet.Title TITLE =
            new HalfSheet.Title("a part", "a customer", "a-part.stl", "6061-bar-1.5x3-in", "0123ABCD");

    private final Map<Path, JobResult> made = new HashMap<>();

    private JobResult job(Path part) {
        return made.computeIfAbsent(
                part, p -> new Line(Shop.standard()).run(p, card(), Station.HALVES, null, Progress.SILENT));
    }

    /** On a press with platens that guide the halves, so that dowels are pressed into half B. */
    private static JobCard card() {
        return new JobCard(
                JobCard.KIND,
                null,
                null,
                "mm",
                Set.of(),
                null,
                List.of(),
                List.of("abs"),
                "electric-10t",
                null,
                1,
                List.of(),
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

    private static Path demo() {
        return Repository.root().resolve("examples/parts/tension-knob.stl");
    }

    private static Drawing sheet(JobResult job, Half half, boolean inch) {
        LayoutResult layout = Objects.requireNonNull(job.layout());
        return HalfSheet.drawing(
                FaceReader.of(
                        half,
                        layout,
                        Objects.requireNonNull(job.mold()),
                        Objects.requireNonNull(job.review()).pulled()),
                layout,
                TITLE,
                inch);
    }

    private record Label(String text, Rectangle2D box) {}

    private static List<Label> labels(Drawing d) {
        List<Label> out = new ArrayList<>();
        for (Mark m : d.marks()) {
            if (!(m instanceof Mark.Text t)) continue;
            double wide = Typeface.width(t.text(), t.letter());
            double from =
                    switch (t.letter().align()) {
                        case START -> 0;
                        case MIDDLE -> -wide / 2;
                        case END -> -wide;
                    };
            Rectangle2D flat = new Rectangle2D.Double(
                    from, -t.letter().capital(), wide, t.letter().capital());
            AffineTransform place = AffineTransform.getTranslateInstance(t.x(), t.y());
            place.rotate(-Math.toRadians(t.turnDeg()));
            out.add(new Label(t.text(), place.createTransformedShape(flat).getBounds2D()));
        }
        return out;
    }

    private void readable(JobResult job, boolean inch) {
        for (Half h : Half.values()) {
            Drawing d = sheet(job, h, inch);
            List<Label> all = labels(d);
            Rectangle2D frame = new Rectangle2D.Double(10, 10, d.width() - 20, d.height() - 20);
            for (int i = 0; i < all.size(); i++) {
                Label a = all.get(i);
                assertThat(frame.contains(a.box()))
                        .as(a.text() + " stands within the frame")
                        .isTrue();
                for (Label b : all.subList(0, i))
                    assertThat(a.box().intersects(b.box()))
                            .as(a.text() + " lies on " + b.text())
                            .isFalse();
            }
            assertThat(all.size()).isGreaterThan(40);
        }
    }

    @Test
    void noLabelLiesOnAnother() {
        readable(job(demo()), false);
        readable(job(demo()), true);
    }

    @ParameterizedTest
    @ValueSource(strings = {"drafted_sensor_shell_bottom.stl", "relay_box_bottom_shell.stl", "wallet_case_front.stl"})
    void noLabelLiesOnAnotherOnRealParts(String name) {
        JobResult job = job(Repository.sharedPart(name));
        readable(job, false);
        readable(job, true);
    }

    @Test
    void holesStandInTheTableAtTheirPlaces() {
        JobResult job = job(demo());
        LayoutResult l = Objects.requireNonNull(job.layout());
        for (Half h : Half.values()) {
            List<Label> all = labels(sheet(job, h, false));
            for (DowelPlace d : l.dowels())
                rowHolds(
                        all,
                        d.atMm().x() + l.block().widthMm() / 2,
                        d.atMm().y() + l.block().heightMm() / 2);
            for (PinPlace p : l.release().pins())
                if (p.half() == h)
                    rowHolds(
                            all,
                            p.atMm().x() + l.block().widthMm() / 2,
                            p.atMm().y() + l.block().heightMm() / 2);
        }
    }

    /** Somewhere two figures stand in one row that are the distances from the datum corner. */
    private static void rowHolds(List<Label> all, double xMm, double yMm) {
        Stream<Label> first = all.stream().filter(a -> near(a.text(), xMm));
        assertThat(first.anyMatch(a -> all.stream()
                        .anyMatch(b -> near(b.text(), yMm)
                                && Math.abs(a.box().getMaxY() - b.box().getMaxY()) < 0.01)))
                .as("%.2f, %.2f", xMm, yMm)
                .isTrue();
    }

    private static boolean near(String text, double value) {
        return text.matches("\\d+\\.\\d\\d") && Math.abs(Double.parseDouble(text) - value) <= 0.005001;
    }

    /** ISO 286-2: a 6 mm hole N7 measures 5.984 to 5.996, a pin's 4 mm hole H7 4.000 to 4.012. */
    @Test
    void fitsHaveTheirPublishedLimits() {
        List<String> words = labels(sheet(job(demo()), Half.B, false)).stream()
                .map(Label::text)
                .toList();
        assertThat(words).contains("6.0 N7", "5.984 to 5.996", "4.0 H7", "4.000 to 4.012");
    }

    @Test
    void theSameHalfGivesTheSameDrawingAndItIsWellFormed() throws Exception {
        JobResult job = job(demo());
        String once = SvgFile.sheet(sheet(job, Half.A, false)), again = SvgFile.sheet(sheet(job, Half.A, false));
        assertThat(again).isEqualTo(once);
        var root = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(once)))
                .getDocumentElement();
        assertThat(root.getTagName()).isEqualTo("svg");
        assertThat(Double.parseDouble(root.getAttribute("width").replace("mm", "")))
                .isCloseTo(420, within(1e-9));
    }
}
