package shotwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import shotwright.geom.Vec2;

class DrawingTest {
    private static Drawing sample() {
        Pencil p = Pencil.on(100, 50);
        p.text(10, 20, "a < b & \"c\" \u0001>", Letter.LABEL);
        p.line(0, 0, 100, 50, Pen.HIDDEN).fillBox(10, 30, 20, 10, Ink.OXIDE);
        p.link("#finding-3", in -> Dimensions.number(in, new Vec2(50, 25), "3"));
        p.pixels(new BufferedImage(2, 2, BufferedImage.TYPE_INT_RGB), 80, 10, 10, 10);
        return p.drawing("A sample <drawing>");
    }

    private static Document parsed(Drawing d) throws Exception {
        DocumentBuilderFactory f = DocumentBuilderFactory.newInstance();
        f.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        byte[] bytes = SvgFile.text(d).getBytes(StandardCharsets.UTF_8);
        return f.newDocumentBuilder().parse(new ByteArrayInputStream(bytes));
    }

    @Test
    void svgIsWellFormedAndKeepsTheWords() throws Exception {
        Document d = parsed(sample());
        Element root = d.getDocumentElement();
        assertThat(root.getAttribute("width")).isEqualTo("100mm");
        assertThat(root.getAttribute("viewBox")).isEqualTo("0 0 100 50");
        assertThat(d.getElementsByTagName("title").item(0).getTextContent()).isEqualTo("A sample <drawing>");
        assertThat(d.getElementsByTagName("text").item(0).getTextContent()).isEqualTo("a < b & \"c\" >");
    }

    @Test
    void svgFetchesNothing() throws Exception {
        Document d = parsed(sample());
        Element image = (Element) d.getElementsByTagName("image").item(0),
                link = (Element) d.getElementsByTagName("a").item(0);
        assertThat(image.getAttribute("xlink:href")).startsWith("data:image/png;base64,iVBOR");
        assertThat(link.getAttribute("xlink:href")).isEqualTo("#finding-3");
        assertThat(SvgFile.text(sample())).doesNotContain("url(", "<script", "<style");
    }

    @Test
    void pngHasTheSizeOfTheSheetAndItsColours() throws IOException {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(PngFile.bytes(sample(), 254)));
        assertThat(image.getWidth()).isEqualTo(1000);
        assertThat(image.getHeight()).isEqualTo(500);
        assertThat(image.getRGB(200, 350) & 0xffffff).isEqualTo(Ink.OXIDE);
        assertThat(image.getRGB(990, 10) & 0xffffff).isEqualTo(Ink.WHITE);
    }

    /** Area of hatching: the lines across a 40 × 20 box at 45° and pitch 2.5 have together the length 800 / 2.5. */
    @Test
    void hatchingCoversItsAreaEvenly() {
        Path2D lines = Hatch.lines(new Rectangle2D.Double(3, 4, 40, 20), 45, 0.25);
        double[] c = new double[6], from = new double[2];
        double length = 0;
        for (PathIterator i = lines.getPathIterator(null); !i.isDone(); i.next()) {
            if (i.currentSegment(c) == PathIterator.SEG_LINETO) length += Math.hypot(c[0] - from[0], c[1] - from[1]);
            from = c.clone();
            assertThat(c[0]).isBetween(3 - 1e-9, 43 + 1e-9);
        }
        assertThat(length).isCloseTo(800 / 0.25, within(8.0));
    }

    /** Widths of Liberation Sans, which are those of the metric-compatible face: digits 1139, capital I 569 of 2048 units. */
    @Test
    void lettersHaveTheWidthsOfTheTypeface() {
        assertThat(Typeface.width("0123456789", Letter.LABEL.sized(2048))).isCloseTo(11390, within(1e-6));
        assertThat(Typeface.width("I", Letter.LABEL.sized(2048))).isCloseTo(569, within(1e-6));
    }

    /** A capital I is one upright box 1409 high; a small o has a hole. */
    @Test
    void lettersHaveOutlines() {
        Rectangle2D box = Typeface.outline("I", Letter.LABEL.sized(2048)).getBounds2D();
        assertThat(box.getHeight()).isCloseTo(1409, within(1e-6));
        Path2D o = Typeface.outline("o", Letter.LABEL.sized(2048));
        Rectangle2D r = o.getBounds2D();
        assertThat(o.contains(r.getCenterX(), r.getCenterY())).isFalse();
        assertThat(o.contains(r.getMinX() + 60, r.getCenterY())).isTrue();
    }

    @Test
    void everySignADrawingNeedsIsThere() {
        double missing = Typeface.width("\ufffe", Letter.LABEL);
        Path2D box = Typeface.outline("\ufffe", Letter.LABEL);
        for (int c : "Ø°±×²³µ–—…≤≥→·€£½äöüßéñåΔΩ′″≈−".codePoints().toArray()) {
            String s = Character.toString(c);
            boolean asMissing = Typeface.width(s, Letter.LABEL) == missing
                    && Typeface.outline(s, Letter.LABEL).getBounds2D().equals(box.getBounds2D());
            assertThat(asMissing).as(s).isFalse();
        }
    }

    @Test
    void mapsRiseSteadilyInLightness() {
        for (ColourMap m : List.of(ColourMap.THICKNESS, ColourMap.FILL)) {
            double last = Ink.lightness(m.at(0));
            for (int i = 1; i <= 50; i++) {
                double now = Ink.lightness(m.at(i / 50.0));
                assertThat(now).isGreaterThan(last);
                assertThat(now - last).isLessThan(4);
                last = now;
            }
        }
    }

    @Test
    void draftAskedForIsTheLightestPlaceOfItsMap() {
        ColourScale s = ColourScale.draft(1.5);
        double at = Ink.lightness(s.rgb(1.5));
        assertThat(at).isGreaterThan(Ink.lightness(s.rgb(1.2)) + 2).isGreaterThan(Ink.lightness(s.rgb(2)) + 2);
        assertThat(s.rgb(0)).isEqualTo(s.rgb(-5));
        assertThat(s.rgb(Double.NaN)).isEqualTo(Ink.NO_VALUE);
    }

    /** L* of 18 % grey is 49.5 and of white 100 (CIE 15; from memory). */
    @Test
    void lightnessFollowsCielab() {
        assertThat(Ink.lightness(0xffffff)).isCloseTo(100, within(1e-6));
        assertThat(Ink.lightness(0)).isZero();
        assertThat(Ink.lightness(0x777777)).isCloseTo(50.0, within(0.1));
    }

    @Test
    void labelsAreKeptApartAndInOrder() {
        double[] at = Spread.along(List.of(5.0, 5.1, 5.2, 40.0), 4, 0, 42);
        for (int i = 1; i < at.length; i++) assertThat(at[i] - at[i - 1]).isGreaterThanOrEqualTo(4 - 1e-9);
        assertThat(at[3]).isEqualTo(40);
    }

    @Test
    void axesEndOnRoundValues() {
        assertThat(Axis.fromZero("", 0, 1.6).to()).isCloseTo(1.6, within(1e-9));
        assertThat(Axis.fromZero("", 0, 93).to()).isEqualTo(100);
        assertThat(Axis.factors("", 50, 5000).ticks(9)).containsExactly(50., 100., 200., 500., 1000., 2000., 5000.);
        assertThat(new Axis("", 0, 50000, false).figure(20000)).isEqualTo("20\u00a0000");
        assertThatThrownBy(() -> new Axis("", 0, 5, true)).hasMessageContaining("logarithmic");
    }
}
