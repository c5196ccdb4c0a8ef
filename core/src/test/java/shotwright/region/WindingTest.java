package shotwright.region;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WindingTest {
    @Test
    void overlapCountsOnceAndClockwiseCutsOut() {
        double[] ends = new double[8 * 4 + 4 * 4];
        square(ends, 0, 0, 0, 10);
        square(ends, 4, 5, 5, 10);
        square(ends, 8, 1, 1, 2);
        int[] times = new int[12];
        Arrays.fill(times, 1);
        Arrays.fill(times, 8, 12, -1);
        Region r = Winding.atLeastOnce(ends, times);
        assertThat(r.area()).isEqualTo(175 - 4, within(1e-9));
        assertThat(r.holes()).hasSize(1);
        assertThat(r.pieces()).hasSize(1);
    }

    private static void square(double[] ends, int at, double x, double y, double size) {
        double[] c = {x, y, x + size, y, x + size, y + size, x, y + size};
        for (int k = 0; k < 4; k++) {
            ends[4 * (at + k)] = c[2 * k];
            ends[4 * (at + k) + 1] = c[2 * k + 1];
            ends[4 * (at + k) + 2] = c[(2 * k + 2) % 8];
            ends[4 * (at + k) + 3] = c[(2 * k + 3) % 8];
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 8, 40, 400})
    void agreesWithCountingTurns(int corners) {
        Random random = new Random(corners);
        double[] x = new double[corners], y = new double[corners], ends = new double[4 * corners];
        for (int i = 0; i < corners; i++) {
            x[i] = random.nextInt(100) / 7.0 + (i % 3 == 0 ? 1e-13 : 0);
            y[i] = random.nextInt(100) / 9.0;
        }
        int[] times = new int[corners];
        Arrays.fill(times, 1);
        for (int i = 0; i < corners; i++) {
            int j = (i + 1) % corners;
            System.arraycopy(new double[] {x[i], y[i], x[j], y[j]}, 0, ends, 4 * i, 4);
        }
        Region r = Winding.atLeastOnce(ends, times);
        for (int i = 0; i < 3000; i++) {
            double px = random.nextDouble(-1, 16), py = random.nextDouble(-1, 12), turn = 0;
            for (int k = 0; k < corners; k++) {
                int j = (k + 1) % corners;
                double ax = x[k] - px, ay = y[k] - py, bx = x[j] - px, by = y[j] - py;
                turn += Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
            }
            assertThat(r.contains(px, py)).isEqualTo(turn > 1);
        }
    }

    @Test
    void refusesCurvesThatDoNotClose() {
        assertThatThrownBy(() ->
                        Winding.atLeastOnce(new double[] {0, 0, 1, 0, 1, 0, 1, 1, 1, 1, 0, 0.5}, new int[] {1, 1, 1}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("closed");
    }

    @Test
    void nothingIsEmpty() {
        assertThat(Winding.atLeastOnce(new double[0], new int[0]).isEmpty()).isTrue();
    }
}
