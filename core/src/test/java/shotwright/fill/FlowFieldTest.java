package shotwright.fill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import shotwright.geom.Transform;
import shotwright.geom.Vec3;
import shotwright.mesh.TriMesh;
import shotwright.progress.Progress;

/** The walk through cells against the closed forms of strip and disc (common practice), lying flat and at an angle. */
class FlowFieldTest {
    private static final double FLOW = 5000;

    /** Power-law drop along the way, MPa, melt of one temperature. */
    private static double dropMpa(FlowField field, double consistency, double n) {
        double p = 0;
        for (FlowField.Slice s : field.way()) {
            double v = s.speedPerFlowPerMm2() * FLOW / s.narrowFactor(), h = s.wallMm();
            p += 2 * consistency / h * Math.pow((2 * n + 1) / n * 2 * v / h, n) * s.lengthMm() * 1e-6;
        }
        return p;
    }

    private static FlowField field(TriMesh mesh, Transform turn, Vec3 gate, double radius, double n) {
        return FlowField.of(mesh.transform(turn), turn.apply(gate), radius, n, 20_000, Progress.SILENT);
    }

    @Test
    void discFromItsMiddle() {
        double n = 0.25, m = 2.38e4;
        double closed = new DiscFront(2, 2, m, n).pressureMpa(FLOW, 40);
        for (double tilt : new double[] {0, 0.35}) {
            Transform turn = Transform.turn(new Vec3(1, 0.5, 0).unit(), tilt);
            FlowField f = field(Shapes.disc(40, 2, 128), turn, new Vec3(0, 0, 1), 2, n);
            assertThat(f.medianWallMm()).isCloseTo(2, within(0.01));
            assertThat(f.volumeMm3()).isCloseTo(Math.PI * 3200, Percentage.withPercentage(0.5));
            assertThat(f.wayLengthMm()).isCloseTo(38, Percentage.withPercentage(8));
            assertThat(dropMpa(f, m, n)).isCloseTo(closed, Percentage.withPercentage(10));
            assertThat(f.meanPressureShare()).isCloseTo(DiscFront.meanPressureShare(n), within(0.06));
            assertThat(f.reachedShare()).isCloseTo(1, within(0.005));
        }
    }

    @Test
    void stripFromItsEnd() {
        double n = 0.25, m = 2.38e4;
        for (double tilt : new double[] {0, 0.35}) {
            Transform turn = Transform.turn(new Vec3(1, 0.5, 0.3).unit(), tilt);
            FlowField f = field(Shapes.box(60, 20, 2), turn, new Vec3(0, 10, 1), 1.5, n);
            double closed = new StripFront(20, 2, m, n).pressureMpa(FLOW, 60);
            // a point gate fans out first, a few per cent more than the strip fed over its whole end
            assertThat(dropMpa(f, m, n)).isBetween(0.92 * closed, 1.25 * closed);
            assertThat(f.wayLengthMm()).isCloseTo(60.8, Percentage.withPercentage(12));
            assertThat(f.meanPressureShare()).isCloseTo(0.5, within(0.1));
            assertThat(f.lastFills()).isNotEmpty();
            assertThat(turn.inverse().apply(f.lastFills().getFirst().atMm()).x())
                    .isGreaterThan(50);
        }
    }

    /** Fed over its whole end the strip is the closed form itself. */
    @Test
    void stripFedOverItsWholeEnd() {
        double n = 0.3, m = 1e4;
        FlowField f = field(Shapes.box(80, 12, 2), Transform.IDENTITY, new Vec3(-4, 6, 1), 8, n);
        double wet = f.wayLengthMm();
        assertThat(dropMpa(f, m, n))
                .isCloseTo(new StripFront(12, 2, m, n).pressureMpa(FLOW, wet), Percentage.withPercentage(10));
    }

    /** A plate of which one half is thicker: the thick half fills first, and its corner is not the last. */
    @Test
    void meltPrefersTheThickWall() {
        double[][] step = {{0, 0}, {40, 0}, {40, 1.2}, {0, 1.2}, {-40, 2.4}, {-40, 0}};
        Transform upright = Transform.turn(Vec3.X, Math.PI / 2);
        TriMesh wedge = Shapes.prism(step, -10, 10).transform(upright);
        FlowField f = FlowField.of(wedge, upright.apply(new Vec3(0, 0.6, 0)), 1.5, 0.3, 20_000, Progress.SILENT);
        Vec3 thin = upright.apply(new Vec3(30, 0.6, 0)), deep = upright.apply(new Vec3(-30, 0.9, 0));
        assertThat(f.arrivalShare(f.cellAt(deep))).isLessThan(f.arrivalShare(f.cellAt(thin)));
        assertThat(f.wallMm(f.cellAt(deep))).isGreaterThan(1.5);
        assertThat(f.wallMm(f.cellAt(thin))).isCloseTo(1.2, within(0.05));
    }

    @Test
    void absurdIndexIsRefused() {
        assertThatThrownBy(() -> FlowField.of(Shapes.box(10, 10, 2), Vec3.ZERO, 1, 1.4, 5000, Progress.SILENT))
                .hasMessageContaining("power index");
    }
}
