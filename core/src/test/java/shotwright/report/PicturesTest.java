package shotwright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shotwright.demo.TensionKnob;
import shotwright.drawing.Body;
import shotwright.drawing.Callout;
import shotwright.drawing.Drawing;
import shotwright.drawing.Mark;
import shotwright.drawing.Picture;
import shotwright.drawing.Scene;
import shotwright.drawing.SvgFile;
import shotwright.drawing.Typeface;
import shotwright.drawing.View;
import shotwright.job.JobCard;
import shotwright.job.JobResult;
import shotwright.job.Line;
import shotwright.job.Shop;
import shotwright.job.Station;
import shotwright.measure.LengthUnit;
import shotwright.progress.Progress;
import shotwright.review.ReviewResult;

/** Every picture of the demo job, looked at as marks on paper. */
class PicturesTest {
    private static JobResult job;
    private static final Map<String, Drawing> DRAWN = new LinkedHashMap<>();

    @BeforeAll
    static void draw(@TempDir Path folder) throws Exception {
        Path part = folder.resolve("tension-knob.stl");
        java.nio.file.Files.write(part, TensionKnob.stl());
        job = new Line(Shop.standard()).run(part, JobCard.empty(), Station.SHEET, null, Progress.SILENT);
        Pictures.drawings(job).forEach((name, d) -> DRAWN.put(name, d.draw()));
    }

    private static Drawing drawn(String name) {
        return Objects.requireNonNull(DRAWN.get(name), name);
    }

    private static ReviewResult review() {
        return Objects.requireNonNull(job.review());
    }

    private static Stream<Mark> all(Drawing d) {
        return d.marks().stream().flatMap(m -> m instanceof Mark.Link l ? l.marks().stream() : Stream.of(m));
    }

    private static List<Mark.Text> words(Drawing d) {
        return all(d).filter(Mark.Text.class::isInstance)
                .map(Mark.Text.class::cast)
                .toList();
    }

    @Test
    void everyStationHasItsPictures() {
        assertThat(DRAWN.keySet())
                .contains("20-part-from-A", "20-part-from-B", "20-draft", "20-draft-from-B", "20-draft-by-wall")
                .contains("20-wall", "20-wall-from-B", "20-section", "30-clamp", "40-layout-A", "40-layout-B")
                .contains("50-half-A", "50-half-B", "50-mold-cut", "60-pressure", "70-mold-temperature", "90-price");
    }

    @Test
    void asSvgEveryPictureIsWellFormedAndItsWordsStandOnTheSheet() throws Exception {
        DocumentBuilderFactory f = DocumentBuilderFactory.newInstance();
        f.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        for (Map.Entry<String, Drawing> e : DRAWN.entrySet()) {
            Drawing d = e.getValue();
            byte[] svg = SvgFile.text(d).getBytes(StandardCharsets.UTF_8);
            f.newDocumentBuilder().parse(new ByteArrayInputStream(svg));
            assertThat(words(d)).as(e.getKey()).isNotEmpty();
            Rectangle2D sheet = new Rectangle2D.Double(0, 0, d.width(), d.height());
            for (Mark.Text t : words(d))
                assertThat(sheet.contains(box(t)))
                        .as(e.getKey() + ": " + t.text())
                        .isTrue();
        }
    }

    /** Words that lie on each other cannot be read. */
    @Test
    void noWordsLieOnEachOther() {
        DRAWN.forEach((name, d) -> {
            List<Mark.Text> words = words(d);
            for (int i = 0; i < words.size(); i++)
                for (int j = 0; j < i; j++)
                    assertThat(box(words.get(i)).intersects(box(words.get(j))))
                            .as(name + ": " + words.get(i).text() + " on "
                                    + words.get(j).text())
                            .isFalse();
        });
    }

    /** Capitals of a line of words; a quarter turn is the only turn there is. */
    private static Rectangle2D box(Mark.Text t) {
        double wide = Typeface.width(t.text(), t.letter()), high = t.letter().capital();
        double before =
                switch (t.letter().align()) {
                    case START -> 0;
                    case MIDDLE -> wide / 2;
                    case END -> wide;
                };
        if (t.turnDeg() == 90) return new Rectangle2D.Double(t.x() - high, t.y() - wide + before, high, wide);
        assertThat(t.turnDeg()).isZero();
        return new Rectangle2D.Double(t.x() - before, t.y() - high, wide, high);
    }

    /** A number is shown at most once in a view and at least in one of the two, and means the finding of that number. */
    @Test
    void everyFindingWithAPlaceHasItsCircle() {
        ReviewPictures pictures = new ReviewPictures(review(), false);
        Map<String, Integer> wanted = new TreeMap<>();
        for (int i = 0; i < review().findings().size(); i++)
            if (review().findings().get(i).atMm() != null) wanted.put(Integer.toString(i + 1), i);
        assertThat(wanted).isNotEmpty();
        TreeSet<String> shown = new TreeSet<>();
        for (View view : List.of(ReviewPictures.FROM_A, ReviewPictures.FROM_B)) {
            Scene scene = pictures.shaded(view);
            List<String> here = scene.callouts().stream().map(Callout::number).toList();
            assertThat(here).doesNotHaveDuplicates();
            for (Callout c : scene.callouts()) {
                var at = Objects.requireNonNull(review().findings()
                        .get(Integer.parseInt(c.number()) - 1)
                        .atMm());
                assertThat(c.at().distance(review().pulled().toPulled().apply(at)))
                        .isLessThan(1e-9);
            }
            String name = view == ReviewPictures.FROM_A ? "20-part-from-A" : "20-part-from-B";
            List<String> drawn = words(drawn(name)).stream()
                    .map(Mark.Text::text)
                    .filter(t -> t.matches("\\d+"))
                    .toList();
            assertThat(drawn).containsExactlyInAnyOrderElementsOf(here);
            shown.addAll(here);
        }
        assertThat(shown).isEqualTo(wanted.keySet());
        assertThat(ReviewPictures.without(review())).hasSize(review().findings().size() - wanted.size());
    }

    /** Walls of the draft map carry the numbers of the table beside it. */
    @Test
    void theDraftMapCarriesTheNumbersOfItsTable() {
        List<String> table = numbers("20-draft-by-wall");
        List<String> maps = new ArrayList<>(numbers("20-draft"));
        maps.addAll(numbers("20-draft-from-B"));
        assertThat(table).isNotEmpty();
        assertThat(maps).containsAll(table);
    }

    private static List<String> numbers(String name) {
        return all(drawn(name))
                .filter(m -> m instanceof Mark.Text t
                        && t.text().matches("\\d+")
                        && t.letter().size() != 2.8)
                .map(m -> ((Mark.Text) m).text())
                .filter(t -> review().draft().stream()
                        .anyMatch(r -> Integer.toString(r.finding()).equals(t)))
                .distinct()
                .toList();
    }

    /** In each wall map the walls the demo is drawn with can be read: 2.2 mm of shell from A, 1.2 mm of rib from B. */
    @Test
    void wallsAreWrittenOnTheMap() {
        assertThat(walls("20-wall")).anySatisfy(v -> assertThat(v).isCloseTo(2.2, within(0.1)));
        assertThat(walls("20-wall-from-B")).anySatisfy(v -> assertThat(v).isCloseTo(1.2, within(0.1)));
    }

    private static List<Double> walls(String name) {
        Drawing d = drawn(name);
        return words(d).stream()
                .filter(t -> t.text().matches("\\d\\.\\d\\d") && t.y() < d.height() - 22)
                .map(t -> Double.valueOf(t.text()))
                .toList();
    }

    /** The bar against the picture itself: the knob is 35 mm wide (its drawing). From above it reaches from border to border. */
    @Test
    void theScaleBarIsAsLongAsItSays() {
        for (LengthUnit unit : List.of(LengthUnit.MM, LengthUnit.IN)) {
            double dpi = 254;
            Scene scene =
                    Scene.of(Body.part(TensionKnob.mesh())).from(View.fromA()).in(unit);
            Drawing d = Picture.drawing(scene, 100, 90, dpi);
            double pixelsPerMm = width(d) / 35;
            Mark.Text text = words(d).stream()
                    .filter(t -> t.text().endsWith(" " + unit.symbol()))
                    .findFirst()
                    .orElseThrow();
            double says = Double.parseDouble(text.text().split(" ")[0]) * unit.mm();
            double bar = all(d).filter(m -> m instanceof Mark.Line l && l.pen().weight() == 0.5)
                    .mapToDouble(m -> ((Mark.Line) m).shape().getBounds2D().getWidth())
                    .findFirst()
                    .orElseThrow();
            assertThat(bar * dpi / 25.4)
                    .as(text.text())
                    .isCloseTo(says * pixelsPerMm, within(0.01 * says * pixelsPerMm));
        }
    }

    /** Columns with ink that is not ground, without the border of the outline. */
    private static double width(Drawing d) {
        BufferedImage image = all(d).filter(Mark.Pixels.class::isInstance)
                .map(m -> ((Mark.Pixels) m).image())
                .findFirst()
                .orElseThrow();
        int ground = image.getRGB(0, 0), first = image.getWidth(), last = 0, y = image.getHeight() / 2;
        for (int x = 0; x < image.getWidth(); x++) {
            for (int dy = -200; dy <= 200; dy++) {
                if (image.getRGB(x, y + dy) == ground) continue;
                first = Math.min(first, x);
                last = Math.max(last, x);
            }
        }
        double border = 2 * 0.25 * 254 / 25.4;
        return last - first + 1 - border;
    }

    /** Both halves say where the gate is, whichever of them it is cut into. */
    @Test
    void bothHalvesNameGateAndKinds() {
        for (String name : List.of("40-layout-A", "40-layout-B")) {
            List<String> words =
                    words(drawn(name)).stream().map(Mark.Text::text).toList();
            assertThat(words).anyMatch(w -> w.startsWith("gate ")).contains("runner, gate", "dowel");
        }
    }

    @Test
    void thePressureCurveTakesTheHeight() {
        assertThat(ChartPictures.pressureTop(55, 21, 120)).isEqualTo(52.5);
        assertThat(ChartPictures.pressureTop(300, 60, 180)).isEqualTo(180);
        assertThat(ChartPictures.pressureTop(9, 5, 70)).isEqualTo(9);
    }
}
