package shotwright.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
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

    /** A point of the rim lies on one of two circles: a lobe's, or the hollow's that touches it (law of cosines on the centres). */
    @Test
    void curvesAreTrueToAHundredth() {
        TriMesh m = TensionKnob.mesh();
        double worst = 0;
        for (int i = 0; i < 288; i++) {
            int j = (i + 1) % 288;
            for (double share : new double[] {0, 0.5}) {
                double x = m.x(i) + share * (m.x(j) - m.x(i)), y = m.y(i) + share * (m.y(j) - m.y(i));
                double off = offContour(x, y);
                assertThat(share == 0 ? Math.abs(off) : 0).isLessThan(1e-5);
                worst = Math.max(worst, Math.abs(off));
            }
        }
        assertThat(worst).isBetween(0.001, 0.01);
        assertThat(m.box().size().x()).isCloseTo(35, within(1e-5));
    }

    private static double offContour(double x, double y) {
        double third = Math.PI / 6, lobe = 6, at = 11.5, far = 28.767864557340232, hollow = far - 15.1;
        assertThat(Math.sqrt(at * at + far * far - 2 * at * far * Math.cos(third)))
                .isCloseTo(lobe + hollow, within(1e-9));
        double angle = Math.atan2(y, x), off = Math.abs(angle - 2 * third * Math.rint(angle / 2 / third));
        double u = Math.hypot(x, y) * Math.cos(off), v = Math.hypot(x, y) * Math.sin(off);
        double farX = far * Math.cos(third), farY = far * Math.sin(third), share = lobe / (lobe + hollow);
        double join = Math.atan2(share * farY, at + share * (farX - at));
        return off < join ? Math.hypot(u - at, v) - lobe : hollow - Math.hypot(u - farX, v - farY);
    }

    private static double frustum(double r1, double r2, double h) {
        double k = 96 / 2.0 * Math.sin(2 * Math.PI / 96);
        return h * k * (r1 * r1 + r1 * r2 + r2 * r2) / 3;
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
