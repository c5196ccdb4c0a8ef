package shotwright.machining.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;
import shotwright.machining.path.Line;
import shotwright.machining.path.Move;
import shotwright.machining.path.Program;
import shotwright.progress.Progress;

/** How far the cutter is held, against the closed form of side milling, φ = acos(1 − 2a_e/D). */
class EngagementTest {
    private static final Box3 STOCK = new Box3(new Vec3(0, 0, -10), new Vec3(40, 20, 0));

    /** A pass along the stock's edge with a cutter of 6 mm, biting a_e deep from the side. */
    private static Line pass(double aeMm) {
        return new Line(new Vec3(5, -3 + aeMm, -2), new Vec3(35, -3 + aeMm, -2), 500);
    }

    private static double middleDeg(Line pass, double cellMm) {
        Program p = RemovedVolumeTest.program(List.of(pass), STOCK);
        EngagementMeter meter = new EngagementMeter(3, cellMm);
        new StockRemoval(StockHeights.block(STOCK, cellMm))
                .run(0, p.operations().getFirst(), Cutters.flat(6), 0.2, meter, Progress.SILENT);
        return meter.heldDeg(meter.count() / 2);
    }

    /** Two rim steps of doubt. The wanted angles for a_e 2.4 and 0.6 are those of the method's table: 78.5° and 36.9°. */
    @ParameterizedTest
    @CsvSource({"2.4,78.46", "0.6,36.87", "3,90", "4.5,120", "6,180"})
    void sideMillingIsItsClosedForm(double aeMm, double wantedDeg) {
        assertThat(Math.toDegrees(Math.acos(1 - 2 * aeMm / 6))).isCloseTo(wantedDeg, within(0.01));
        assertThat(middleDeg(pass(aeMm), 0.025)).isCloseTo(wantedDeg, within(4.0));
    }

    @Test
    void aSlotThatWasPlannedAsASidePassIsTold() {
        List<Move> moves = new ArrayList<>();
        moves.add(pass(2.4));
        Vec3 end = moves.getLast().to();
        moves.add(new Line(end, new Vec3(45, -3, -2), 500));
        moves.add(new Line(new Vec3(45, -3, -2), new Vec3(45, 12, -2), 500));
        moves.add(new Line(new Vec3(45, 12, -2), new Vec3(20, 12, -2), 500));
        Program p = RemovedVolumeTest.program(moves, STOCK);
        ProofTask task = ProofTask.of(p, Map.of(1, Cutters.flat(6)));
        assertThat(Proveout.run(task, StockHeights.block(STOCK, 0.05), Progress.SILENT)
                        .faults())
                .isEmpty();
        Proof proof = Proveout.run(task.engaged(Map.of(1, 78.5)), StockHeights.block(STOCK, 0.05), Progress.SILENT);
        assertThat(proof.faults()).hasSize(1);
        Fault f = proof.faults().getFirst();
        assertThat(f.kind()).isEqualTo(Fault.Kind.ENGAGEMENT);
        assertThat(f.move()).isEqualTo(3);
        assertThat(f.found().value()).isCloseTo(180, within(4.0));
    }
}
