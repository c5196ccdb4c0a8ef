package shotwright.machining.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import shotwright.cutter.MountedCutter;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;
import shotwright.machining.path.Line;
import shotwright.machining.path.Move;

/** Property P4 of the handbook on seeded random paths: what a cutter leaves never lies below a surface its tip kept clear of. */
class ProofPropertiesTest {
    private static final double DOME = 20;

    /** Tip of a ball that just touches a dome: √((S + r)² − q²) − r over the dome's middle (handbook 4.2). */
    private static Vec3 onDome(double x, double y, double r) {
        double tip = Math.sqrt((DOME + r) * (DOME + r) - x * x - y * y) - r - DOME;
        return new Vec3(x, y, tip);
    }

    /** Chords between touching places sink below the path by w²/(8(S + r)) at most; float heights add 1e-5. */
    @Test
    void aDomeIsNeverCutInto() {
        Random random = new Random(17);
        Box3 stock = new Box3(new Vec3(-8, -8, -6), new Vec3(8, 8, 0.5));
        for (double dia : new double[] {1, 3, 6}) {
            double r = dia / 2, way = 0.2;
            MountedCutter ball = Cutters.ball(dia);
            List<Move> moves = new ArrayList<>();
            double x = 0, y = 0, heading = 0;
            Vec3 at = onDome(0, 0, r);
            for (int i = 0; i < 4000; i++) {
                heading += random.nextGaussian() * 0.3;
                if (Math.hypot(x, y) > 6.5) heading = Math.atan2(-y, -x);
                x += way * Math.cos(heading);
                y += way * Math.sin(heading);
                Vec3 to = onDome(x, y, r);
                moves.add(new Line(at, to, 500));
                at = to;
            }
            StockHeights left =
                    RemovedVolumeTest.proof(ball, moves, stock, 0.05).stock();
            double slack =
                    1.05 * way * way / (8 * (DOME + r)) * Math.pow((DOME + r) / Math.sqrt(DOME * DOME - 64), 3) + 2e-5;
            int touched = 0;
            double deepest = 0;
            for (int j = 0; j < left.grid().ny(); j++) {
                for (int i = 0; i < left.grid().nx(); i++) {
                    double q2 =
                            Math.pow(left.grid().x(i), 2) + Math.pow(left.grid().y(j), 2);
                    double dome = Math.sqrt(DOME * DOME - q2) - DOME,
                            over = left.topMm(left.grid().index(i, j)) - dome;
                    deepest = Math.max(deepest, -over);
                    if (over < 0.02) touched++;
                }
            }
            assertThat(deepest).as("ball of %s mm", dia).isLessThan(slack).isLessThan(0.0006);
            assertThat(touched).isGreaterThan(2000);
        }
    }

    /** A plane on a slant of b under a ball: the tip stands r(1/cos b − 1) above it (handbook 4.2); a step of 0.1 too deep is found. */
    @Test
    void aPlaneIsTouchedAndNotCut() {
        double slope = Math.tan(Math.toRadians(35)), r = 1.5, up = r * (Math.hypot(1, slope) - 1);
        Box3 stock = new Box3(new Vec3(-6, -6, -8), new Vec3(6, 6, 6));
        for (double low : new double[] {0, 0.1}) {
            List<Move> moves = new ArrayList<>();
            Vec3 at = null;
            for (int k = 0; k <= 100; k++) {
                double y = -5 + 0.1 * k, x = k % 2 == 0 ? -5 : 5;
                for (double end : new double[] {x, -x}) {
                    Vec3 to = new Vec3(end, y, slope * end + up - low);
                    if (at != null) moves.add(new Line(at, to, 500));
                    at = to;
                }
            }
            StockHeights left =
                    RemovedVolumeTest.proof(Cutters.ball(3), moves, stock, 0.05).stock();
            double lowest = 1;
            for (int j = 40; j < left.grid().ny() - 40; j++)
                for (int i = 60; i < left.grid().nx() - 60; i++)
                    lowest = Math.min(
                            lowest,
                            left.topMm(left.grid().index(i, j))
                                    - slope * left.grid().x(i));
            assertThat(lowest).isBetween(-low - 1e-5, -low + 1e-3);
        }
    }

    @Test
    void progressGoesToItsEnd() {
        Box3 stock = new Box3(new Vec3(-5, -5, -5), new Vec3(5, 5, 0));
        List<Double> shares = java.util.Collections.synchronizedList(new ArrayList<>());
        var p = RemovedVolumeTest.program(List.of(new Line(new Vec3(0, 0, -1), new Vec3(2, 0, -1), 100)), stock);
        Proveout.run(
                ProofTask.of(p, Map.of(1, Cutters.flat(2))), StockHeights.block(stock, 0.1), (d, s) -> shares.add(s));
        assertThat(shares).isNotEmpty().allMatch(s -> s >= 0 && s <= 1);
    }
}
