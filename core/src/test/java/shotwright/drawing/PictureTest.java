package shotwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import shotwright.demo.PlainCap;
import shotwright.demo.TensionKnob;
import shotwright.geom.Plane;
import shotwright.geom.Transform;
import shotwright.geom.Vec3;
import shotwright.mesh.Shadow;
import shotwright.mesh.Solids;
import shotwright.mesh.TriMesh;
import shotwright.progress.Progress;

class PictureTest {
    private static final Scene CAP = Scene.of(Body.part(PlainCap.mesh()));

    private static long count(BufferedImage image, int rgb) {
        long n = 0;
        for (int y = 0; y < image.getHeight(); y++)
            for (int x = 0; x < image.getWidth(); x++) if ((image.getRGB(x, y) & 0xffffff) == rgb) n++;
        return n;
    }

    /** From above the cap is a circle that fills the fitted square, and its top looks at the eye: n·l = 0.77 / |l|. */
    @Test
    void aCircleFromAboveCoversACirclesShare() {
        Scene s = CAP.from(View.fromA());
        BufferedImage image = Picture.pixels(s, 400, 400);
        double fit = 400 - 2 * 16;
        double covered = 400 * 400 - count(image, Ink.BENCH);
        double r = fit / 2 + 1;
        assertThat(covered).isCloseTo(Math.PI * r * r, within(0.01 * covered));
        double cosine = 0.77 / Math.sqrt(2 * 0.45 * 0.45 + 0.77 * 0.77);
        int red = (int) Math.round(0xe4 * (0.78 + 0.27 * cosine));
        assertThat(image.getRGB(200, 200) >> 16 & 255).isEqualTo(red);
    }

    @Test
    void lightFollowsItsFormula() {
        assertThat(Light.plain(1)).isEqualTo(1);
        assertThat(Light.plain(0)).isEqualTo(0.78);
        assertThat(Light.mapped(-1)).isCloseTo(0.75, within(1e-12));
        assertThat(Light.shaded(0xffffff, 0.5)).isEqualTo(0x808080);
    }

    @Test
    void axesOfAViewAreSquareAndUpright() {
        for (View v : List.of(View.first(), View.underneath(), View.fromA(), View.fromB(), View.level(90))) {
            assertThat(v.right().cross(v.pageUp()).distance(v.toEye())).isLessThan(1e-12);
            assertThat(v.right().dot(Vec3.Z)).isCloseTo(0, within(1e-12));
            assertThat(v.pageUp().z()).isGreaterThanOrEqualTo(-1e-12);
        }
        assertThat(View.first().along(Vec3.X).toEye().x()).isCloseTo(Math.sin(Math.toRadians(42)), within(1e-12));
    }

    @Test
    void whatLiesBehindIsNotSeen() {
        Picture p = Picture.render(CAP, 300, 300, 10, 10, 280, 280, 1);
        assertThat(p.sees(new Vec3(0, 0, 10))).isTrue();
        assertThat(p.sees(new Vec3(0, 0, 8.4))).isFalse();
    }

    @Test
    void aCutShowsDarkPlasticAndTakesTheFrontAway() {
        Scene s = CAP.cutBy(new Plane(new Vec3(0, -1, 0), 0)).from(View.level(0));
        assertThat(count(Picture.pixels(CAP.from(View.level(0)), 300, 200), Ink.PLASTIC_CUT))
                .isZero();
        assertThat(count(Picture.pixels(s, 300, 200), Ink.PLASTIC_CUT)).isGreaterThan(1000);
        assertThatThrownBy(() -> Picture.pixels(CAP.cutBy(new Plane(Vec3.Z, -5)), 100, 100))
                .hasMessageContaining("nothing is left");
    }

    /** A cut through the halves may pass beside a part. */
    @Test
    void aBodyTheCutDoesNotMeetIsSeenBehindIt() {
        TriMesh cap = PlainCap.mesh(), behind = cap.transform(Transform.translate(new Vec3(0, 40, 0)));
        Plane plane = new Plane(new Vec3(0, -1, 0), 0);
        List<Body> bodies = List.of(Body.part(cap), Body.part(behind));
        TechnicalView v = TechnicalView.section(bodies, plane);
        assertThat(v.high().x() - v.low().x()).isCloseTo(24, within(0.05));
        Scene s = Scene.of(bodies.toArray(Body[]::new)).cutBy(plane).from(View.level(0));
        assertThat(count(Picture.pixels(s, 300, 200), Ink.PLASTIC_CUT)).isGreaterThan(500);
    }

    /** Two rings on the outside, two within: from above only the outer rim and top of the cap are sharp and seen. */
    @Test
    void visibleEdgesLeaveHiddenOnesOut() {
        double length = Picture.visibleEdges(CAP.from(View.fromA()), 1000).stream()
                .mapToDouble(l -> Math.hypot(l[2] - l[0], l[3] - l[1]))
                .sum();
        double t = Math.tan(Math.toRadians(2)), k = 2 * 96 * Math.sin(Math.PI / 96);
        assertThat(length).isCloseTo(k * (12 + 12 - 10 * t), within(0.5));
    }

    /** A cone standing behind a small block that is cut: its two sides are seen as straight lines, each √(10² + (10 tan 2°)²)
     * long, beside the two uprights of 2 mm of the block. */
    @Test
    void roundOutlinesBehindACutAreDrawn() {
        TriMesh block = Solids.box(new Vec3(-3, -3, 0), new Vec3(3, 3, 2));
        TriMesh cap = PlainCap.mesh().transform(Transform.translate(new Vec3(0, 40, 0)));
        Plane plane = new Plane(new Vec3(0, -1, 0), 0);
        TechnicalView v = TechnicalView.section(List.of(Body.part(block), Body.part(cap)), plane);
        Drawing d = v.drawing("", 100, 100);
        double scale = 94 / 24.0, t = Math.tan(Math.toRadians(2)); // 3 mm of paper stay free on either side
        double length = 0;
        for (Mark m : d.marks()) {
            if (!(m instanceof Mark.Line l) || l.pen().weight() != 0.25) continue;
            for (double[] s : straights(l.shape()))
                if (Math.abs(s[2] - s[0]) / Math.abs(s[3] - s[1]) < 2 * t)
                    length += Math.hypot(s[2] - s[0], s[3] - s[1]);
        }
        assertThat(length / scale).isCloseTo(2 * Math.hypot(10, 10 * t) + 2 * 2, within(0.05));
    }

    private static List<double[]> straights(Shape shape) {
        List<double[]> all = new ArrayList<>();
        double[] p = new double[6];
        double x = 0, y = 0;
        for (PathIterator i = shape.getPathIterator(null); !i.isDone(); i.next()) {
            if (i.currentSegment(p) == PathIterator.SEG_LINETO) all.add(new double[] {x, y, p[0], p[1]});
            x = p[0];
            y = p[1];
        }
        return all;
    }

    /** From above nothing is foreshortened: a place twice as far beside the part has a chain line twice as long. */
    @Test
    void aPlaceBesideThePartHasAChainLineToIt() {
        Scene s = CAP.from(View.fromA())
                .with(List.of(
                        new Callout(1, new Vec3(16, 0, 10), new Vec3(12, 0, 10)),
                        new Callout(2, new Vec3(-20, 0, 10), new Vec3(-12, 0, 10)),
                        new Callout(3, new Vec3(0, 5, 10))));
        List<Double> chains = Picture.drawing(s, 120, 90, 60).marks().stream()
                .filter(m -> m instanceof Mark.Line l && l.pen().dashes().size() == 4)
                .map(m -> ((Mark.Line) m).shape().getBounds2D().getWidth())
                .sorted()
                .toList();
        assertThat(chains).hasSize(2);
        assertThat(chains.get(1)).isCloseTo(2 * chains.get(0), within(1e-9));
    }

    /** ISO 128-2 (from memory): chain lines begin and end with a dash, and centre lines cross in one. */
    @Test
    void aChainLineBeginsEndsAndCrossesInADash() {
        for (double length = 8; length < 120; length += 0.37) {
            List<Double> d = Pen.CENTRE.fitted(length).dashes();
            double period = d.stream().mapToDouble(Double::doubleValue).sum();
            double periods = (length - d.getFirst()) / period;
            assertThat(periods)
                    .isCloseTo(2 * Math.rint(periods / 2), within(1e-9))
                    .isGreaterThan(1);
            assertThat(d.getFirst()).isBetween(0.6 * 3, 1.6 * 3);
        }
        assertThat(Pen.CENTRE.fitted(5).dashes()).isEmpty();
        assertThat(Pen.HIDDEN.fitted(50)).isEqualTo(Pen.HIDDEN);
    }

    @Test
    void outlineIsTheShadow() {
        TriMesh knob = TensionKnob.mesh();
        TechnicalView v = TechnicalView.outline(
                Body.part(knob), Shadow.of(knob, Progress.SILENT).region(), View.fromA());
        assertThat(v.high().x() - v.low().x()).isCloseTo(35, within(1e-3));
        Drawing d = v.overall().drawing("from above", 90, 80);
        assertThat(SvgFile.text(d)).contains(">35.0<", ">31.9<", ">from above<");
    }

    @Test
    void circleNumbersStayOnTheSheetAndApart() {
        Scene s = CAP;
        for (int i = 1; i <= 9; i++) s = s.with(i, new Vec3(5, -5, 5 + 0.01 * i));
        Drawing d = Picture.drawing(s, 100, 70, 60);
        List<Mark.Text> numbers = d.marks().stream()
                .filter(m -> m instanceof Mark.Text t && t.text().matches("\\d"))
                .map(Mark.Text.class::cast)
                .toList();
        assertThat(numbers).hasSize(9);
        for (Mark.Text a : numbers) {
            assertThat(a.y()).isBetween(2.0, 64.0);
            for (Mark.Text b : numbers)
                if (a != b) assertThat(Math.hypot(a.x() - b.x(), a.y() - b.y())).isGreaterThan(2 * Dimensions.BALLOON);
        }
    }
}
