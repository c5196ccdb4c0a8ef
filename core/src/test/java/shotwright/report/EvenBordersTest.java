package shotwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import shotwright.geom.Vec3;
import shotwright.mesh.Edges;
import shotwright.mesh.TriMesh;

/** A half pipe of long thin facets, 40 strips of two. */
class EvenBordersTest {
    private static final int STRIPS = 40;

    private static Edges pipe(double stripTurnRad) {
        double[] xyz = new double[6 * (STRIPS + 1)];
        for (int i = 0; i <= STRIPS; i++) {
            for (int end = 0; end < 2; end++) {
                Vec3 p = new Vec3(30 * end, Math.cos(i * stripTurnRad), Math.sin(i * stripTurnRad));
                xyz[3 * (2 * i + end)] = p.x();
                xyz[3 * (2 * i + end) + 1] = p.y();
                xyz[3 * (2 * i + end) + 2] = p.z();
            }
        }
        int[] tri = new int[6 * STRIPS];
        for (int i = 0; i < STRIPS; i++) {
            int a = 2 * i;
            System.arraycopy(new int[] {a, a + 1, a + 2, a + 1, a + 3, a + 2}, 0, tri, 6 * i, 6);
        }
        return Edges.of(new TriMesh(xyz, tri));
    }

    private static int borders(int[] area) {
        int n = 0;
        for (int f = 1; f < area.length; f++) if (area[f] != area[f - 1]) n++;
        return n;
    }

    /** Wall on one side, floor on the other, and between them a comb of facets that fell to either. */
    @Test
    void aCombBecomesOneBorder() {
        int[] area = new int[2 * STRIPS];
        for (int f = 0; f < area.length; f++) area[f] = f < 30 || f < 50 && f % 2 == 0 ? 1 : -1;
        int[] even = EvenBorders.of(pipe(0.05), area, new boolean[area.length]);
        assertThat(borders(area)).isGreaterThan(15);
        assertThat(borders(even)).isEqualTo(1);
        assertThat(even[0]).isEqualTo(1);
        assertThat(even[area.length - 1]).isEqualTo(-1);
    }

    /** Strip by strip another area, edges of 34° between them: those are faces of their own. */
    @Test
    void facesThatMeetInAnEdgeStay() {
        int[] area = new int[2 * STRIPS];
        for (int f = 0; f < area.length; f++) area[f] = f / 2 % 2;
        assertThat(EvenBorders.of(pipe(0.6), area, new boolean[area.length])).isEqualTo(area);
    }

    @Test
    void fixedFacetsStay() {
        int[] area = new int[2 * STRIPS];
        for (int f = 0; f < area.length; f++) area[f] = f % 2;
        boolean[] all = new boolean[area.length];
        Arrays.fill(all, true);
        assertThat(EvenBorders.of(pipe(0.05), area, all)).isEqualTo(area);
    }

    @Test
    void aStraightBorderStays() {
        int[] area = new int[2 * STRIPS];
        for (int f = 0; f < area.length; f++) area[f] = f < 40 ? 1 : -1;
        assertThat(EvenBorders.of(pipe(0.05), area, new boolean[area.length])).isEqualTo(area);
    }
}
