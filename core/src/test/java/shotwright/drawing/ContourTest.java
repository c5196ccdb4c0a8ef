package shotwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Line2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import shotwright.geom.Vec2;

/** Against plane geometry: circle, stadium, regular polygons, circular segments. */
class ContourTest {
    private static List<Vec2> arc(Vec2 centre, double radius, double fromDeg, double toDeg, int chords) {
        List<Vec2> out = new ArrayList<>();
        for (int i = 0; i <= chords; i++) {
            double a = Math.toRadians(fromDeg + (toDeg - fromDeg) * i / chords);
            out.add(centre.plus(new Vec2(Math.cos(a), Math.sin(a)).times(radius)));
        }
        return out;
    }

    private static List<Vec2> polygon(int corners) {
        return arc(Vec2.ZERO, 5, 0, 360.0 * (corners - 1) / corners, corners - 1);
    }

    @Test
    void manySidesOnACircleAreTheCircle() {
        for (int n : new int[] {18, 48, 97}) {
            Contour c = Contour.fitted(polygon(n), 0.002);
            assertThat(c.circle()).hasValueSatisfying(k -> {
                assertThat(k.radius()).isCloseTo(5, within(1e-9));
                assertThat(k.centre().length()).isLessThan(1e-9);
            });
            assertThat(c.area()).isCloseTo(Math.PI * 25, within(1e-9));
        }
    }

    @Test
    void hexagonAndOctagonStayWhatTheyAre() {
        for (int n : new int[] {6, 8, 12}) {
            Contour c = Contour.fitted(polygon(n), 0.002);
            assertThat(c.corners()).hasSize(n).allMatch(k -> k.bulge() == 0);
            assertThat(c.area()).isCloseTo(n / 2.0 * 25 * Math.sin(2 * Math.PI / n), within(1e-9));
        }
    }

    /** Area of a stadium: 2 r l + π r². Wherever the ring begins, it has two straight sides and two half circles. */
    @Test
    void stadiumHasTwoArcsWhereverItBegins() {
        List<Vec2> ring = arc(new Vec2(10, 0), 3, -90, 90, 24);
        ring.addAll(arc(new Vec2(-10, 0), 3, 90, 270, 24));
        for (int k = 0; k < ring.size(); k += 7) {
            List<Vec2> turned = new ArrayList<>(ring.subList(k, ring.size()));
            turned.addAll(ring.subList(0, k));
            Contour c = Contour.fitted(turned, 0.002);
            assertThat(c.corners()).hasSize(4);
            assertThat(c.corners().stream().filter(b -> b.bulge() != 0))
                    .allSatisfy(b -> assertThat(b.bulge()).isCloseTo(1, within(1e-9)));
            assertThat(c.area()).isCloseTo(2 * 3 * 20 + Math.PI * 9, within(1e-9));
        }
    }

    /** A hollow arc turns clockwise: a square of side 10 less a half disc of radius 3. */
    @Test
    void hollowArcsTurnTheOtherWay() {
        List<Vec2> ring = new ArrayList<>(List.of(new Vec2(-5, 0), new Vec2(5, 0), new Vec2(5, 10)));
        ring.addAll(arc(new Vec2(0, 10), 3, 0, -180, 24));
        ring.add(new Vec2(-5, 10));
        Contour c = Contour.fitted(ring, 0.002);
        assertThat(c.corners()).hasSize(6);
        assertThat(c.area()).isCloseTo(100 - Math.PI * 9 / 2, within(1e-9));
    }

    /** An ellipse is thinned out, never further off than asked. */
    @Test
    void freeCurvesAreThinnedWithinTheTolerance() {
        List<Vec2> ring = new ArrayList<>();
        for (int i = 0; i < 2000; i++) {
            double a = Math.PI * i / 1000;
            ring.add(new Vec2(20 * Math.cos(a), 5 * Math.sin(a)));
        }
        Contour c = Contour.fitted(ring, 0.002);
        assertThat(c.corners().size()).isBetween(20, 400);
        assertThat(c.area()).isCloseTo(Math.PI * 100, within(0.002 * 80));
        List<double[]> chords = new ArrayList<>();
        double[] now = new double[2], to = new double[6];
        for (PathIterator i = c.shape().getPathIterator(null, 1e-5); !i.isDone(); i.next()) {
            if (i.currentSegment(to) == PathIterator.SEG_LINETO)
                chords.add(new double[] {now[0], now[1], to[0], to[1]});
            System.arraycopy(to, 0, now, 0, 2);
        }
        for (Vec2 p : ring) {
            double near = chords.stream()
                    .mapToDouble(d -> Line2D.ptSegDist(d[0], d[1], d[2], d[3], p.x(), p.y()))
                    .min()
                    .orElseThrow();
            assertThat(near).isLessThan(0.0021);
        }
    }

    @Test
    void theShapeDrawnIsTheSame() {
        List<Vec2> ring = arc(new Vec2(10, 0), 3, -90, 90, 24);
        ring.addAll(arc(new Vec2(-10, 0), 3, 90, 270, 24));
        Rectangle2D box = Contour.fitted(ring, 0.002).shape().getBounds2D();
        assertThat(box.getMinX()).isCloseTo(-13, within(1e-6));
        assertThat(box.getMaxX()).isCloseTo(13, within(1e-6));
        assertThat(box.getHeight()).isCloseTo(6, within(1e-6));
    }
}
