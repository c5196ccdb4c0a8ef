package shotwright.machining.path;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import shotwright.geom.Box3;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;

class MovesTest {
    private static final Vec3 O = Vec3.ZERO;

    /** Length of a helix: √((2πr)² + pitch²) a turn, closed form; here three turns to −1, then one flat, radius 1.5. */
    @Test
    void aHelixIsAsLongAsItsClosedForm() {
        double sumMm = 0;
        Vec3 at = O;
        for (int k = 1; k <= 3; k++) {
            Arc turn = new Arc(at, new Vec3(0, 0, -k / 3.0), new Vec2(1.5, 0), true, 600);
            sumMm += turn.lengthMm();
            at = turn.to();
        }
        sumMm += new Arc(at, at, new Vec2(1.5, 0), true, 600).lengthMm();
        double exactMm = 3 * Math.hypot(3 * Math.PI, 1 / 3.0) + 3 * Math.PI;
        assertThat(sumMm).isCloseTo(exactMm, within(1e-12));
        assertThat(exactMm).isCloseTo(37.71679, within(1e-5));
    }

    @Test
    void quartersTurnTheWayTheyAreTold() {
        Arc left = new Arc(new Vec3(1, 0, 0), new Vec3(0, 1, 0), Vec2.ZERO, true, 100);
        Arc right = new Arc(new Vec3(1, 0, 0), new Vec3(0, 1, 0), Vec2.ZERO, false, 100);
        assertThat(left.sweepRad()).isCloseTo(Math.PI / 2, within(1e-12));
        assertThat(right.sweepRad()).isCloseTo(3 * Math.PI / 2, within(1e-12));
        assertThat(left.at(0.5).distance(new Vec3(Math.sqrt(0.5), Math.sqrt(0.5), 0)))
                .isLessThan(1e-12);
        assertThat(right.box().min().x()).isCloseTo(-1, within(1e-12));
        assertThat(right.box().min().y()).isCloseTo(-1, within(1e-12));
        assertThat(left.box().min().distance(O)).isLessThan(1e-12);
    }

    /** The box against points laid densely on seeded arcs. */
    @Test
    void theBoxHoldsEveryPointAndNoMore() {
        Random random = new Random(7);
        for (int n = 0; n < 500; n++) {
            double r = 0.1 + 5 * random.nextDouble(), a = 7 * random.nextDouble(), b = 7 * random.nextDouble();
            Vec2 c = new Vec2(random.nextGaussian(), random.nextGaussian());
            Vec3 from = new Vec3(c.x() + r * Math.cos(a), c.y() + r * Math.sin(a), random.nextDouble());
            Vec3 to = new Vec3(c.x() + r * Math.cos(b), c.y() + r * Math.sin(b), random.nextDouble());
            Arc arc = new Arc(from, to, c, random.nextBoolean(), 100);
            Box3 seen = new Box3(from, from);
            for (int i = 0; i <= 2000; i++) {
                Vec3 p = arc.at(i / 2000.0);
                assertThat(p.xy().distance(c)).isCloseTo(r, within(1e-9));
                seen = seen.join(new Box3(p, p));
            }
            assertThat(arc.box().min().distance(seen.min())).isLessThan(1e-4);
            assertThat(arc.box().max().distance(seen.max())).isLessThan(1e-4);
            assertThat(arc.reversed().at(0.3).distance(arc.at(0.7))).isLessThan(1e-9);
            assertThat(arc.lengthMm()).isCloseTo(arc.reversed().lengthMm(), within(1e-9));
        }
    }

    /** A centre 0.06 mm off on a radius of 10 mm is refused as the RS274/NGC interpreter refuses it, 0.028 mm is not. */
    @Test
    void aCentreThatIsNoCentreIsRefused() {
        new Arc(new Vec3(10, 0, 0), new Vec3(0, -10.0282, 0), Vec2.ZERO, false, 100);
        assertThatThrownBy(() -> new Arc(new Vec3(10, 0, 0), new Vec3(0, -10.06, 0), Vec2.ZERO, false, 100))
                .hasMessageContaining("both distances must be the radius");
        assertThatThrownBy(() -> new Arc(O, O, Vec2.ZERO, false, 100)).hasMessageContaining("no radius");
        assertThatThrownBy(() -> new Line(O, Vec3.X, 0)).hasMessageContaining("not above zero");
    }

    /** G83 from Z5 with R1, Z−6, Q2 as an RS274/NGC interpreter runs it: feeds end at −1, −3, −5, −6, re-entry 0.254 above. */
    @Test
    void pecksAreThoseOfTheLanguage() {
        Drilling d = new Drilling(Drilling.Kind.PECK, new Vec3(0, 0, 5), new Vec2(5, 5), 1, -6, 2, 0, false, 100);
        List<Double> feeds = d.steps().stream()
                .filter(s -> s instanceof Line)
                .map(s -> s.to().z())
                .toList();
        List<Double> rapids = d.steps().stream()
                .filter(s -> s instanceof Rapid)
                .map(s -> s.to().z())
                .toList();
        assertThat(feeds).containsExactly(-1.0, -3.0, -5.0, -6.0);
        assertThat(rapids).containsExactly(5.0, 1.0, 1.0, -0.746, 1.0, -2.746, 1.0, -4.746, 5.0);
        assertThat(d.to()).isEqualTo(new Vec3(5, 5, 5));
    }

    @Test
    void chipsAreBrokenWithoutLeavingTheHole() {
        Drilling d = new Drilling(Drilling.Kind.CHIP_BREAK, new Vec3(5, 5, 0), new Vec2(5, 5), 1, -2, 2, 0, true, 100);
        List<Double> ends = d.steps().stream().map(s -> s.to().z()).toList();
        assertThat(ends).containsExactly(1.0, 1.0, -1.0, -0.746, -2.0, 1.0);
        assertThatThrownBy(() -> new Drilling(Drilling.Kind.DRILL, O, Vec2.ZERO, -7, -6, 0, 0, true, 100))
                .hasMessageContaining("below the bottom");
        assertThatThrownBy(() -> new Drilling(Drilling.Kind.PECK, O, Vec2.ZERO, 1, -6, 0, 0, true, 100))
                .hasMessageContaining("does not suit");
    }

    @Test
    void operationsAreChains() {
        Move down = new Line(new Vec3(0, 0, 5), O, 100), across = new Line(O, new Vec3(3, 4, 0), 100);
        Move away = new Rapid(new Vec3(3, 4, 0), new Vec3(3, 4, 5));
        Operation op = new Operation(1, "slot", 1, "flat-3", 20, 10000, Coolant.MIST, List.of(down, across, away));
        assertThat(op.feedLengthMm()).isCloseTo(10, within(1e-12));
        assertThat(op.rapidLengthMm()).isCloseTo(5, within(1e-12));
        assertThat(op.reversed().from()).isEqualTo(op.to());
        assertThat(op.reversed().reversed()).isEqualTo(op);
        assertThat(op.box()).isEqualTo(new Box3(O, new Vec3(3, 4, 5)));
        assertThatThrownBy(() -> op.withMoves(List.of(down, away))).hasMessageContaining("starts at");
        assertThatThrownBy(() -> op.withMoves(List.of())).hasMessageContaining("has none");
    }
}
