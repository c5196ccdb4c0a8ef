package shotwright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ObjTest {
    @TempDir
    @SuppressWarnings("NullAway.Init")
    Path folder;

    private static final String CUBE_CORNERS = """
            v 0 0 0
            v 10 0 0
            v 10 10 0
            v 0 10 0
            v 0 0 10
            v 10 0 10
            v 10 10 10
            v 0 10 10
            """;

    private void assertVolume(String file, double volume, double area) {
        IntakeResult r = Samples.read(folder, file);
        Samples.assertNoStop(r);
        assertThat(Samples.part(r).mass().volumeMm3()).isCloseTo(volume, within(1e-9 * volume));
        assertThat(Samples.part(r).mass().surfaceAreaMm2()).isCloseTo(area, within(1e-9 * area));
    }

    @Test
    void quadsSlotsGroupsAndContinuations() {
        assertVolume(
                """
                mtllib x.mtl
                o thing
                """
                        + CUBE_CORNERS
                                .replace("v 10 0 0\n", "v 10 0 0 1.0\n")
                                .replace("v 0 0 10\n", "v 0 0 10 0.5 0.5 0.5\n")
                        + """
                        vt 0 0
                        vn 0 0 1
                        g side
                        usemtl red
                        s off
                        f 4/1/1 3/1/1 2/1/1 1/1/1
                        f 5//1 6//1 7//1 \\
                          8//1
                        f 1/1 2/1 6/1 5/1   # front
                        f 2 3 7 6
                        f -6 -5 -1 -2
                        f -5 -8 -4 -1
                        l 1 2
                        p 3
                        """,
                1000,
                600);
    }

    @Test
    void aConcavePolygonIsSplitInsideItsBorder() {
        // an L of 20 × 20 with a 12 × 12 corner left out, 5 thick: area 400 − 144 = 256
        int[][] l = {{0, 0}, {20, 0}, {20, 8}, {8, 8}, {8, 20}, {0, 20}};
        StringBuilder s = new StringBuilder();
        for (int z = 0; z <= 5; z += 5)
            for (int[] p : l)
                s.append("v ")
                        .append(p[0])
                        .append(' ')
                        .append(p[1])
                        .append(' ')
                        .append(z)
                        .append('\n');
        s.append("f 4 3 2 1 6 5\nf 10 11 12 7 8 9\n");
        for (int i = 0; i < 6; i++) {
            int j = (i + 1) % 6;
            s.append("f ")
                    .append(i + 1)
                    .append(' ')
                    .append(j + 1)
                    .append(' ')
                    .append(j + 7)
                    .append(' ')
                    .append(i + 7)
                    .append('\n');
        }
        assertVolume(s.toString(), 256 * 5, 2 * 256 + 80 * 5);
    }

    @Test
    void aCombOfManyTeethAndCornersInARowIsSplit() {
        StringBuilder s = new StringBuilder(), low = new StringBuilder("f"), high = new StringBuilder("f");
        int teeth = 40, n = 4 * teeth + 2;
        double[][] p = new double[n][];
        for (int i = 0; i < teeth; i++) {
            p[4 * i] = new double[] {2 * i, 5};
            p[4 * i + 1] = new double[] {2 * i, 1};
            p[4 * i + 2] = new double[] {2 * i + 1, 1};
            p[4 * i + 3] = new double[] {2 * i + 1, 5};
        }
        p[n - 2] = new double[] {2 * teeth - 1, 0};
        p[n - 1] = new double[] {0, 0};
        for (int z = 0; z < 2; z++)
            for (double[] q : p)
                s.append("v ")
                        .append(q[0])
                        .append(' ')
                        .append(q[1])
                        .append(' ')
                        .append(z * 6)
                        .append('\n');
        for (int i = 0; i < n; i++) {
            low.append(' ').append(i + 1);
            high.append(' ').append(n + n - i);
        }
        s.append(low).append('\n').append(high).append('\n');
        for (int i = 0; i < n; i++) {
            int j = (i + 1) % n;
            s.append("f ")
                    .append(j + 1)
                    .append(' ')
                    .append(i + 1)
                    .append(' ')
                    .append(n + i + 1)
                    .append(' ')
                    .append(n + j + 1)
                    .append('\n');
        }
        // shoelace, by hand: spine 79 × 1; a web of 1 × 4 between x = 2i + 1 and 2i + 2 for 39 gaps
        double area = 79 + 39 * 4;
        IntakeResult r = Samples.read(folder, s.toString());
        Samples.assertNoStop(r);
        assertThat(Samples.part(r).mass().volumeMm3()).isCloseTo(6 * area, within(1e-9));
        assertThat(r.facts().facets()).isEqualTo(2 * (n - 2) + 2 * n);
    }

    @Test
    void faultsNameTheLine() {
        assertThatExceptionOfType(IntakeException.class)
                .isThrownBy(() -> Samples.read(folder, CUBE_CORNERS + "f 1 2 9\n"))
                .withMessageContaining("line 9")
                .withMessageContaining("corner point 9")
                .withMessageContaining("8 stand");
        assertThatExceptionOfType(IntakeException.class)
                .isThrownBy(() -> Samples.read(folder, CUBE_CORNERS + "f 1 2 0\n"))
                .withMessageContaining("counted from 1");
        assertThatExceptionOfType(IntakeException.class)
                .isThrownBy(() -> Samples.read(folder, CUBE_CORNERS + "f 1 2 x\n"))
                .withMessageContaining("\"x\"");
        assertThatExceptionOfType(IntakeException.class)
                .isThrownBy(() -> Samples.read(folder, "v 1 2\n"))
                .withMessageContaining("2 coordinates");
        assertThatExceptionOfType(IntakeException.class)
                .isThrownBy(() -> Samples.read(folder, CUBE_CORNERS))
                .withMessageContaining("holds no facet");
        assertThatExceptionOfType(IntakeException.class)
                .isThrownBy(() -> Samples.read(folder, CUBE_CORNERS + "surf 0 1 0 1 1 2 3 4\n"))
                .withMessageContaining("free-form");
    }

    @Test
    void cornersGivenTwiceAreJoined() {
        StringBuilder s = new StringBuilder();
        String[] corners = CUBE_CORNERS.split("\n");
        int[][] quads = {{4, 3, 2, 1}, {5, 6, 7, 8}, {1, 2, 6, 5}, {2, 3, 7, 6}, {3, 4, 8, 7}, {4, 1, 5, 8}};
        for (int[] q : quads) {
            for (int v : q) s.append(corners[v - 1]).append('\n');
            s.append("f -4 -3 -2 -1\n");
        }
        assertVolume(s.toString(), 1000, 600);
        assertThat(Samples.read(folder, s.toString()).facts().notes())
                .anyMatch(n -> n.startsWith("Joined 16 corner points"));
    }
}
