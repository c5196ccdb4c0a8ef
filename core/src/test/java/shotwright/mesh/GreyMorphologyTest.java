package shotwright.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.BitSet;
import java.util.Random;
import org.junit.jupiter.api.Test;
import shotwright.mesh.GreyMorphology.Element;

class GreyMorphologyTest {
    private static final Grid GRID = new Grid(0, 0, 0.1, 83, 57);

    private static float[] rough(long seed) {
        Random random = new Random(seed);
        float[] z = new float[GRID.count()];
        for (int i = 0; i < z.length; i++)
            z[i] = random.nextInt(9) == 0 ? Float.NEGATIVE_INFINITY : (float) random.nextGaussian();
        return z;
    }

    private static float[] slowly(float[] z, Element e) {
        float[] out = new float[z.length];
        int r = e.radiusCells();
        for (int y = 0; y < GRID.ny(); y++)
            for (int x = 0; x < GRID.nx(); x++) {
                float best = Float.NEGATIVE_INFINITY;
                for (int dy = -r; dy <= r; dy++)
                    for (int dx = -(e.rows()[dy + r].length / 2); dx <= e.rows()[dy + r].length / 2; dx++) {
                        int sx = x + dx, sy = y + dy;
                        if (sx < 0 || sy < 0 || sx >= GRID.nx() || sy >= GRID.ny()) continue;
                        float h = e.rows()[dy + r][dx + e.rows()[dy + r].length / 2];
                        best = Math.max(best, z[GRID.index(sx, sy)] - h);
                    }
                out[GRID.index(x, y)] = best;
            }
        return out;
    }

    @Test
    void agreesWithTryingEveryCell() {
        float[] z = rough(1);
        Element[] tools = {
            Element.disc(0, 0.1),
            Element.disc(0.1, 0.1),
            Element.disc(0.75, 0.1),
            Element.disc(3, 0.1),
            Element.square(1),
            Element.square(4),
            Element.square(40),
            Element.ball(0.5, 0.1),
            Element.ball(1.23, 0.1),
            Element.round(0.6, 0.1, d -> d / 2)
        };
        for (Element tool : tools)
            assertThat(GreyMorphology.dilate(z, GRID, tool)).isEqualTo(slowly(z, tool));
    }

    @Test
    void closesAtAskedCellsAsEverywhere() {
        Random random = new Random(4);
        float[] z = rough(3);
        for (Element tool : new Element[] {Element.disc(0.3, 0.1), Element.ball(0.9, 0.1), Element.ball(12, 0.1)})
            for (int oneIn : new int[] {2, 50, 5000}) {
                BitSet asked = new BitSet();
                for (int c = 0; c < z.length; c++) if (random.nextInt(oneIn) == 0) asked.set(c);
                float[] there = GreyMorphology.closeAt(asked, z, GRID, tool);
                float[] everywhere = GreyMorphology.close(z, GRID, tool);
                asked.stream().forEach(c -> assertThat(there[c]).isEqualTo(everywhere[c]));
            }
    }

    @Test
    void closingFillsOpeningCutsAndBothRest() {
        float[] z = new float[GRID.count()];
        Random random = new Random(2);
        for (int i = 0; i < z.length; i++) z[i] = random.nextFloat();
        for (Element tool : new Element[] {Element.disc(0.45, 0.1), Element.ball(0.7, 0.1)}) {
            float[] closed = GreyMorphology.close(z, GRID, tool), opened = GreyMorphology.open(z, GRID, tool);
            for (int i = 0; i < z.length; i++) {
                assertThat(closed[i]).isGreaterThanOrEqualTo(z[i] - 1e-6f);
                assertThat(opened[i]).isLessThanOrEqualTo(z[i] + 1e-6f);
            }
            float[] again = GreyMorphology.close(closed, GRID, tool);
            for (int i = 0; i < z.length; i++) assertThat(again[i]).isEqualTo(closed[i], within(1e-6f));
        }
    }

    /** In a square slot w wide a ball of radius r > w/2 stops r − √(r² − w²/4) above the rim's level less its own sagitta. */
    @Test
    void ballInASlotStopsWhereItsChordSpansIt() {
        Grid fine = new Grid(0, 0, 0.01, 400, 3);
        float[] z = new float[fine.count()];
        for (int j = 0; j < 3; j++) for (int i = 180; i < 220; i++) z[fine.index(i, j)] = -5;
        float[] closed = GreyMorphology.close(z, fine, Element.ball(1, 0.01));
        double half = 0.2, sagitta = 1 - Math.sqrt(1 - half * half);
        assertThat((double) closed[fine.index(200, 1)]).isEqualTo(-sagitta, within(2e-3));
        float[] flat = GreyMorphology.close(z, fine, Element.disc(0.15, 0.01));
        assertThat(flat[fine.index(200, 1)]).isEqualTo(-5);
        assertThat(GreyMorphology.close(z, fine, Element.disc(0.25, 0.01))[fine.index(200, 1)])
                .isZero();
    }

    @Test
    void refusesWrongSizes() {
        assertThatThrownBy(() -> GreyMorphology.dilate(new float[3], GRID, Element.square(1)))
                .hasMessageContaining("3 for a grid");
        assertThatThrownBy(() -> Element.disc(-1, 0.1)).hasMessageContaining("radius -1");
    }
}
