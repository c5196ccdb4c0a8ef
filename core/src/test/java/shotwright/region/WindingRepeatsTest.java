package shotwright.region;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** The same edges give the same region to the last digit, ring by ring and point by point, however often it is asked. */
class WindingRepeatsTest {
    private static final int SQUARES = 30;

    private static Region squares() {
        double[] ends = new double[16 * SQUARES];
        int[] times = new int[4 * SQUARES];
        Arrays.fill(times, 1);
        for (int s = 0; s < SQUARES; s++) {
            double x = 1.7 * (s % 6) + 0.013 * s, y = 1.9 * (s / 6), side = s % 3 == 0 ? 2 : 1;
            double[] cx = {x, x + side, x + side, x}, cy = {y, y, y + side, y + side};
            for (int k = 0; k < 4; k++) {
                int at = 16 * s + 4 * k, next = (k + 1) % 4;
                ends[at] = cx[k];
                ends[at + 1] = cy[k];
                ends[at + 2] = cx[next];
                ends[at + 3] = cy[next];
            }
        }
        return Winding.atLeastOnce(ends, times);
    }

    @Test
    void theSameEdgesGiveTheSameRings() {
        String first = squares().geometry().toText();
        for (int i = 0; i < 50; i++) assertThat(squares().geometry().toText()).isEqualTo(first);
    }
}
