package shotwright.machining.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import shotwright.cutter.MountedCutter;
import shotwright.geom.Box3;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.contact.DropCutter;
import shotwright.machining.contact.ExactPath;
import shotwright.machining.contact.TriangleTree;
import shotwright.machining.path.Line;
import shotwright.machining.path.Move;
import shotwright.mesh.TriMesh;
import shotwright.progress.Progress;

/**
 * A ball of 3 mm run over a pocket with walls of 88° on exact places every 0.1 mm cuts into the walls' feet between them, by about 0.016 mm
 * along the normal as the method's measurements found; with the middles looked at too it does not. The proof tells the one from the other.
 */
class FixedStepsTest {
    private static final TriMesh HALF = SmallHalf.mesh();
    private static final MountedCutter BALL = Cutters.ball(3);
    private static final DropCutter DROP = new DropCutter(TriangleTree.of(HALF), BALL.profile());

    private static Proof prove(List<Vec3> path) {
        List<Move> moves = new ArrayList<>();
        for (int i = 1; i < path.size(); i++) moves.add(new Line(path.get(i - 1), path.get(i), 500));
        Box3 stock = new Box3(SmallHalf.STOCK.min(), new Vec3(20, 15, 0));
        ProofTask task = ProofTask.of(RemovedVolumeTest.program(moves, stock), Map.of(1, BALL))
                .against(new Half(HALF));
        return Proveout.run(task, StockHeights.block(stock, 0.1), Progress.SILENT);
    }

    @Test
    void fixedStepsAreCaughtAndExactOnesAreNot() {
        List<Vec3> fixed = new ArrayList<>();
        List<Vec2> line = new ArrayList<>();
        for (int k = 0; k <= 300; k++) {
            double x = -13.013 + 0.1 * k;
            fixed.add(new Vec3(x, 1, DROP.tipMm(x, 1)));
            if (k == 0 || k == 300) line.add(new Vec2(x, 1));
        }
        Proof caught = prove(fixed);
        assertThat(caught.faults()).isNotEmpty().allMatch(f -> f.kind() == Fault.Kind.GOUGE);
        assertThat(caught.faults().stream()
                        .mapToDouble(f -> f.found().value())
                        .max()
                        .orElse(0))
                .isBetween(0.009, 0.05);
        assertThat(prove(new ExactPath(DROP).along(line)).faults().stream().map(Fault::text))
                .isEmpty();
    }
}
