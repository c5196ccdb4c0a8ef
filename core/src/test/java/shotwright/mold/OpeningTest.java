package shotwright.mold;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import shotwright.geom.Vec3;
import shotwright.layout.Half;
import shotwright.review.Side;
import shotwright.review.Undercut;
import shotwright.review.Undercut.Hold;

/** The review decides what an undercut does; the columns through the halves must bear it out. */
class OpeningTest {
    private static final double SHADOW = 1000;

    private static Undercut undercut(Hold hold, Side blocks, double shadow) {
        return new Undercut(1, Vec3.ZERO, blocks, shadow, shadow, shadow, 1, 0.4, 1.6, hold, new int[0]);
    }

    private static Opening of(Half half, double lockShare, Undercut... undercuts) {
        return Opening.of(half, lockShare, List.of(undercuts), SHADOW);
    }

    @Test
    void nothingInTheWay() {
        assertThat(of(Half.A, 0)).isEqualTo(Opening.FREE);
        assertThat(of(Half.A, 2e-4)).isEqualTo(Opening.FREE);
    }

    @Test
    void aLedgeTheReviewLetsPassLetsTheHalfOpen() {
        Undercut ledge = undercut(Hold.STRAINS_PART, Side.B, 4);
        assertThat(of(Half.B, 0.0039, ledge)).isEqualTo(Opening.PAST_LEDGES);
        assertThat(of(Half.A, 0, ledge)).isEqualTo(Opening.FREE);
    }

    @Test
    void whatTheReviewStopsStaysShut() {
        Undercut lock = undercut(Hold.LOCKS, Side.B, 40);
        assertThat(of(Half.B, 0.04, lock)).isEqualTo(Opening.LOCKED);
        assertThat(of(Half.B, 0, lock)).isEqualTo(Opening.LOCKED);
        assertThat(of(Half.A, 0, lock)).isEqualTo(Opening.FREE);
        assertThat(of(Half.A, 0.04, lock)).isEqualTo(Opening.LOCKED);
    }

    @Test
    void metalCaughtThatNoUndercutAccountsForLocks() {
        assertThat(of(Half.A, 0.003)).isEqualTo(Opening.LOCKED);
        assertThat(of(Half.B, 0.012, undercut(Hold.SPRINGS_OFF, Side.B, 4))).isEqualTo(Opening.LOCKED);
    }
}
