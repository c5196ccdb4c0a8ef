package shotwright.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import shotwright.mesh.MassProperties;
import shotwright.mesh.TriMesh;

class DemoPartTest {
    @Test
    void everyEdgeOfBothPartsIsUsedOnceEachWay() {
        assertThat(edgesWithoutPartner(TensionKnob.mesh())).isZero();
        assertThat(edgesWithoutPartner(PlainCap.mesh())).isZero();
    }

    @Test
    void theCommittedFileIsDrawnAgainByteForByte() throws IOException {
        Path file = repositoryRoot().resolve("examples/parts/tension-knob.stl");
        assertThat(TensionKnob.stl()).isEqualTo(Files.readAllBytes(file));
    }

    /** Two frusta over a regular polygon: h (A₁ + √(A₁A₂) + A₂) / 3. */
    @Test
    void capHasTheVolumeOfItsTwoFrusta() {
        double t = Math.tan(Math.toRadians(2));
        double expected = frustum(12, 12 - 10 * t, 10) - frustum(10.4, 10.4 - 8.4 * t, 8.4);
        assertThat(MassProperties.of(PlainCap.mesh()).volumeMm3()).isCloseTo(expected, within(expected * 1e-6));
    }

    /** Steiner's formula for a curve moved inward by d: A(d) = A − L d + π d²; the pieces are summed with Simpson's rule. */
    @Test
    void knobHasTheVolumeOfItsPieces() {
        double l = simpson(0, 2 * Math.PI, f -> Math.hypot(radius(f), 7.2 * Math.sin(6 * f)));
        double a = Math.PI * (16.3 * 16.3 + 1.2 * 1.2 / 2);
        double outer = simpson(0, 14, z -> moved(a, l, z * tan(1)));
        double atTop = 14 * tan(1), topArea = moved(a, l, atTop);
        double secondMoment = simpson(0, 2 * Math.PI, f -> Math.pow(radius(f) - atTop, 4) / 4);
        double dome = (secondMoment - 3.2 * 3.2 * topArea) / 720;
        double round = (1 - Math.PI / 4) * 1.2 * 1.2 * (l - 2 * Math.PI * 1.5);
        double hollow = simpson(0, 11.6, z -> moved(a, l, 2.2 + z * tan(0.5)));
        double boss = simpson(0, 11.6, z -> Math.PI * Math.pow(8.1 + z * tan(0.5), 2));
        double mouth = simpson(0, 5, z -> Math.PI * Math.pow(5.95 - z * tan(0.5), 2));
        double nut = 10.1 * 10.1 * Math.sqrt(3) / 2 * 5.5;
        double hole = simpson(0, 3.5, z -> Math.PI * Math.pow(3.2 + z * tan(1), 2));
        double ribs =
                6 * simpson(4.6, 11.6, z -> (15.1 - 2.2 - 8.1 - 2 * z * tan(0.5)) * (1.3 - 2 * (11.6 - z) * tan(0.25)));
        double arrow = 0.35 * (1.0 * 9.6 * Math.toRadians(113) + 1.5 * 9.6 * Math.toRadians(16));
        double expected = outer - dome - round - hollow + boss - mouth - nut - hole + ribs + arrow;
        assertThat(MassProperties.of(TensionKnob.mesh()).volumeMm3()).isCloseTo(expected, within(expected * 0.002));
    }

    @Test
    void onlyTheNutPocketStandsStraight() {
        TriMesh m = TensionKnob.mesh();
        int straight = 0;
        for (int f = 0; f < m.facetCount(); f++) {
            if (Math.abs(m.doubleAreaNormal(f).unit().z()) > 1e-6) continue;
            straight++;
            assertThat(m.centroid(f).z()).isBetween(TensionKnob.STEP, TensionKnob.SEAT);
            assertThat(m.centroid(f).xy().length()).isBetween(5.0, 5.84);
        }
        assertThat(straight).isEqualTo(12);
    }

    @Test
    void curvesAreTrueToAHundredth() {
        TriMesh m = TensionKnob.mesh();
        double worst = 0;
        for (int i = 0; i < 288; i++) {
            double f = Math.PI * (2 * i + 1) / 288;
            double x0 = m.x(i), y0 = m.y(i), x1 = m.x((i + 1) % 288), y1 = m.y((i + 1) % 288);
            double x = (x0 + x1) / 2, y = (y0 + y1) / 2;
            worst = Math.max(worst, Math.abs(Math.hypot(x, y) - radius(f)));
        }
        assertThat(worst).isBetween(0.001, 0.01);
        assertThat(m.box().size().x()).isCloseTo(35, within(1e-5));
    }

    private static double radius(double f) {
        return 16.3 + 1.2 * Math.cos(6 * f);
    }

    private static double moved(double area, double length, double d) {
        return area - length * d + Math.PI * d * d;
    }

    private static double tan(double deg) {
        return Math.tan(Math.toRadians(deg));
    }

    private static double frustum(double r1, double r2, double h) {
        double k = 96 / 2.0 * Math.sin(2 * Math.PI / 96);
        return h * k * (r1 * r1 + r1 * r2 + r2 * r2) / 3;
    }

    private static double simpson(double from, double to, DoubleUnaryOperator f) {
        int n = 2000;
        double h = (to - from) / n, sum = f.applyAsDouble(from) + f.applyAsDouble(to);
        for (int i = 1; i < n; i++) sum += (i % 2 == 1 ? 4 : 2) * f.applyAsDouble(from + i * h);
        return sum * h / 3;
    }

    private static int edgesWithoutPartner(TriMesh m) {
        Map<Long, Integer> uses = new HashMap<>();
        for (int f = 0; f < m.facetCount(); f++)
            for (int k = 0; k < 3; k++) uses.merge(edge(m.corner(f, k), m.corner(f, (k + 1) % 3)), 1, Integer::sum);
        int bad = 0;
        for (var e : uses.entrySet()) {
            long back = e.getKey() >> 32 | e.getKey() << 32;
            if (e.getValue() != 1 || uses.getOrDefault(back, 0) != 1) bad++;
        }
        return bad;
    }

    private static long edge(long from, long to) {
        return from << 32 | to;
    }

    private static Path repositoryRoot() {
        Path p = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(p.resolve("examples/parts"))) {
            Path up = p.getParent();
            if (up == null)
                throw new IllegalStateException(
                        "examples/parts is not above " + Path.of("").toAbsolutePath());
            p = up;
        }
        return p;
    }
}
