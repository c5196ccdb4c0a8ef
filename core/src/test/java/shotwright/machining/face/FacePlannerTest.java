package shotwright.machining.face;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import shotwright.cutter.CutterProfile;
import shotwright.cutter.CutterRack;
import shotwright.geom.Box3;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.Trial;
import shotwright.machining.path.Arc;
import shotwright.machining.path.Feed;
import shotwright.machining.path.Line;
import shotwright.machining.path.Step;
import shotwright.machining.proof.Proof;
import shotwright.machining.workpiece.Task;

/** Facing, outside and outside edges against plane geometry and the removal of stock; climb as handbook 5.5 has it: outside clockwise. */
class FacePlannerTest {
    private static FacePlanner planner() {
        return new FacePlanner(Trial.shop(CutterRack.standard().all(), Trial.MILL));
    }

    private static Box3 box(double x0, double y0, double z0, double x1, double y1, double z1) {
        return new Box3(new Vec3(x0, y0, z0), new Vec3(x1, y1, z1));
    }

    private static Proof proof(Task task, Box3 stock, double cellMm) {
        return Trial.proof(List.of(task), stock, cellMm, List.of(), List.of(), null);
    }

    static Stream<Box3> faces() {
        Random random = new Random(12);
        List<Box3> all = new ArrayList<>();
        for (int i = 0; i < 12; i++)
            all.add(box(
                    -1,
                    -20 - 30 * random.nextDouble(),
                    -10,
                    20 + 60 * random.nextDouble(),
                    0.2,
                    0.2 + 1.5 * random.nextDouble()));
        return all.stream();
    }

    /** Every point of the face lies under the flat of the cutter on some pass at the last height: no ridge, no fillet at the edge. */
    @ParameterizedTest
    @MethodSource("faces")
    void facesAreLevelFromEdgeToEdge(Box3 raw) {
        Task task = Objects.requireNonNull(
                planner().face(raw, 0, raw.size().x() >= raw.size().y()));
        Proof p = proof(task, raw, 0.1);
        assertThat(p.faults()).isEmpty();
        var grid = p.stock().grid();
        for (int c = 0; c < grid.count(); c++) {
            double x = grid.x(c % grid.nx()), y = grid.y(c / grid.nx());
            if (x < raw.min().x()
                    || x > raw.max().x()
                    || y < raw.min().y()
                    || y > raw.max().y()) continue;
            assertThat(p.stock().topMm(c)).isEqualTo(0f, within(1e-6f));
        }
        for (Step s : Trial.steps(task)) assertThat(s.box().min().z()).isGreaterThan(-1e-9);
    }

    /** Climb: what a pass still finds standing lies on its right. 12.7: steps of 0.6 to 0.75 of the cutter, over-run R + 2. */
    @ParameterizedTest
    @MethodSource("faces")
    void facingClimbs(Box3 raw) {
        Task task = Objects.requireNonNull(
                planner().face(raw, 0, raw.size().x() >= raw.size().y()));
        double r = task.cutter().largestDiaMm() / 2, z = Double.NaN, edge = 0;
        for (Step s : Trial.steps(task)) {
            if (!(s instanceof Line l)) continue;
            Vec2 way = l.to().xy().minus(l.from().xy());
            Vec2 right = new Vec2(way.y(), -way.x()).times(1 / way.length());
            double reach = right.dot(l.from().xy()) + r; // how far to the right it cuts
            if (!(Math.abs(l.from().z() - z) < 1e-9)) {
                z = l.from().z();
                edge = Math.min(
                        Math.min(right.dot(raw.min().xy()), right.dot(raw.max().xy())),
                        Math.min(
                                right.dot(new Vec2(raw.min().x(), raw.max().y())),
                                right.dot(new Vec2(raw.max().x(), raw.min().y()))));
            }
            assertThat(reach - edge).isBetween(1e-6, 0.75 * 2 * r);
            edge = reach;
            assertThat(raw.size().x() > raw.size().y() ? Math.abs(way.x()) : Math.abs(way.y()))
                    .isGreaterThanOrEqualTo(Math.max(raw.size().x(), raw.size().y()) + 2 * (r + 2) - 1e-9);
        }
    }

    /** Where the axis of the last round comes closest, it is the cutter's radius off the rectangle, arcs round the corners. */
    @ParameterizedTest
    @CsvSource({"1,1,1,1", "0.5,2,1,0.3", "2,2,0,0", "0,3,0,0"})
    void theOutsideIsToSize(double left, double right, double front, double back) {
        Box3 size = box(0, -30, -8, 45, 0, 0);
        Box3 raw = box(-left, -30 - front, -8, 45 + right, back, 0);
        Task task = Objects.requireNonNull(planner().outside(raw, size));
        double r = task.cutter().radiusMm(), nearest = Double.POSITIVE_INFINITY;
        boolean endsOnly = front == 0 && back == 0;
        for (Step s : Trial.steps(task)) {
            if (!(s instanceof Feed)) continue;
            for (int k = 0; k <= 16; k++) {
                Vec3 q = s.at(k / 16.0);
                double off = distance(q.xy(), size);
                assertThat(off).isGreaterThan(r - 1e-9);
                nearest = Math.min(nearest, off);
            }
            if (s instanceof Arc a) assertThat(a.counterClockwise()).isFalse();
        }
        assertThat(nearest).isEqualTo(r, within(1e-9));
        Proof p = proof(task, raw, 0.05);
        assertThat(p.faults()).isEmpty();
        var grid = p.stock().grid();
        for (int c = 0; c < grid.count(); c++) {
            double x = grid.x(c % grid.nx()), y = grid.y(c / grid.nx());
            if (!(x > raw.min().x()
                    && x < raw.max().x()
                    && y > raw.min().y()
                    && y < raw.max().y())) continue;
            boolean inside = x > 0 && x < 45 && (endsOnly || y > -30 && y < 0);
            assertThat(p.stock().topMm(c)).isEqualTo(inside ? 0f : -8f, within(1e-5f));
        }
    }

    private static double distance(Vec2 p, Box3 b) {
        double dx = Math.max(0, Math.max(b.min().x() - p.x(), p.x() - b.max().x()));
        double dy = Math.max(0, Math.max(b.min().y() - p.y(), p.y() - b.max().y()));
        return Math.hypot(dx, dy);
    }

    /** Climb outside: the middle of the block lies on the right of every cutting line. */
    @Test
    void theOutsideClimbs() {
        for (double sides : new double[] {0, 1}) {
            Box3 size = box(0, -30, -8, 45, 0, 0), raw = box(-2, -30 - sides, -8, 47, sides, 0);
            Task task = Objects.requireNonNull(planner().outside(raw, size));
            double r = task.cutter().radiusMm();
            for (Step s : Trial.steps(task)) {
                if (!(s instanceof Line l)
                        || l.lengthMm() < 10
                        || Math.abs(l.from().z() - l.to().z()) > 1e-9) continue;
                Vec2 way = l.to().xy().minus(l.from().xy()),
                        in = new Vec2(22.5, -15).minus(l.from().xy());
                assertThat(way.cross(in)).isNegative();
                assertThat(distance(l.at(0.5).xy(), size)).isLessThan(r + 3);
            }
        }
    }

    @Test
    void aBlockOfItsSizeIsLeftAlone() {
        Box3 size = box(0, -30, -8, 45, 0, 0);
        assertThat(planner().outside(size, size)).isNull();
    }

    /** A 45° bevel w wide takes w²/2 off each edge, and at the corners the pyramid both share is taken once: w²(x + y) − 4 w³/3. */
    @ParameterizedTest
    @CsvSource({"0.3", "0.5"})
    void edgesAreBrokenToTheirWidth(double widthMm) {
        Box3 size = box(0, -20, -8, 30, 0, 0);
        Task task = Objects.requireNonNull(planner().chamfer(size, widthMm));
        assertThat(CutterProfile.of(task.cutter()).halfAngleRad()).isEqualTo(Math.PI / 4, within(1e-9));
        Proof p = proof(task, size, 0.02);
        assertThat(p.faults()).isEmpty();
        var grid = p.stock().grid();
        for (int c = 0; c < grid.count(); c++) {
            double x = grid.x(c % grid.nx()), y = grid.y(c / grid.nx());
            if (!(x > 0 && x < 30 && y > -20 && y < 0)) continue;
            double in = Math.min(Math.min(x, 30 - x), Math.min(-y, y + 20));
            assertThat(p.stock().topMm(c)).isEqualTo((float) Math.min(0, in - widthMm), within(1e-4f));
        }
    }
}
