package shotwright.machining.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shotwright.cutter.Cutter;
import shotwright.cutter.CutterRack;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.path.Coolant;
import shotwright.machining.path.Move;
import shotwright.machining.path.Operation;
import shotwright.machining.workpiece.Phase;
import shotwright.machining.workpiece.Task;

/** Order of operations on random tasks against handbook 5.3 and 12.2: rough before fine, one chain, one setting of each cutter. */
class TaskOrderTest {
    private static final double CLEAR = 15;
    private static final List<String> CUTTERS =
            List.of("flat-6.0x18", "flat-3.0x9", "ball-2.0x10", "drill-5.8x38", "reamer-6.0h7", "flat-1.0x3");

    private static List<Task> tasks(Random random, int count, List<Integer> written) {
        List<Task> tasks = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Phase phase = Phase.values()[random.nextInt(Phase.values().length)];
            Cutter cutter = CutterRack.standard().byId(CUTTERS.get(random.nextInt(CUTTERS.size())));
            Vec2 at = new Vec2(80 * random.nextDouble(), -60 * random.nextDouble());
            int number = i;
            double speed = random.nextBoolean() ? 8000 : 12000;
            tasks.add(new Task(
                    phase,
                    phase.words() + " " + i,
                    cutter,
                    cutter.reachMm().value() + 10 * random.nextDouble(),
                    speed,
                    at,
                    (pen, clear) -> {
                        written.add(number);
                        pen.over(at.atZ(clear), clear);
                        pen.lineZ(-1, 300);
                        pen.line(new Vec3(at.x() + 5, at.y(), -1), 600);
                        pen.rapidZ(clear);
                    }));
        }
        return tasks;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void operationsAreInOrder(long seed) {
        Random random = new Random(seed);
        List<Integer> written = new ArrayList<>();
        List<Task> tasks = tasks(random, 40, written);
        ToolTable tools = new ToolTable();
        Vec2 start = new Vec2(0, -60);
        List<Operation> operations = new TaskOrder(tools, Coolant.MIST, CLEAR).operations(tasks, start);
        assertThat(written).hasSize(40).doesNotHaveDuplicates();

        Vec3 tip = start.atZ(CLEAR);
        int next = 0;
        Phase phase = Phase.FACE;
        Set<String> groups = new HashSet<>();
        for (int i = 0; i < operations.size(); i++) {
            Operation o = operations.get(i);
            assertThat(o.number()).isEqualTo(10 * (i + 1));
            assertThat(o.from().distance(tip)).isLessThan(1e-9);
            assertThat(o.to().z()).isEqualTo(CLEAR);
            for (Move m : o.moves()) {
                assertThat(m.from().distance(tip)).isLessThan(1e-9);
                tip = m.to();
            }
            Vec2 here = i == 0 ? start : tasks.get(written.get(next - 1)).atMm().plus(new Vec2(5, 0));
            List<Task> own = new ArrayList<>();
            int first = next;
            while (next < 40
                    && tasks.get(written.get(next)).cutter().id().equals(o.cutterId())
                    && (own.isEmpty()
                            || tasks.get(written.get(next)).phase()
                                    == own.getFirst().phase())
                    && Math.rint(tasks.get(written.get(next)).speedRpm()) == o.speedRpm()
                    && own.size() < cuts(o)) own.add(tasks.get(written.get(next++)));
            assertThat(own).hasSize(cuts(o));
            assertThat(own.getFirst().phase()).isGreaterThanOrEqualTo(phase);
            phase = own.getFirst().phase();
            // all of one phase, cutter and speed go together
            assertThat(groups.add(phase + o.cutterId() + o.speedRpm())).isTrue();
            for (int k = 0; k < own.size(); k++) {
                double way = own.get(k).atMm().distance(here);
                for (int m = k; m < own.size(); m++)
                    assertThat(way).isLessThanOrEqualTo(own.get(m).atMm().distance(here) + 1e-12);
                here = own.get(k).atMm().plus(new Vec2(5, 0));
            }
            assertThat(first).isLessThan(next);
        }
        assertThat(next).isEqualTo(40);

        Map<String, Double> longest = new HashMap<>();
        for (Task t : tasks) longest.merge(t.cutter().id(), t.stickoutMm(), Math::max);
        assertThat(tools.all()).extracting(ToolTable.Tool::number).doesNotHaveDuplicates();
        assertThat(tools.all()).hasSize(longest.size());
        for (Operation o : operations) {
            ToolTable.Tool t = tools.of(CutterRack.standard().byId(o.cutterId()));
            assertThat(o.toolNumber()).isEqualTo(t.number());
            assertThat(o.stickoutMm()).isEqualTo(t.stickoutMm()).isEqualTo(longest.get(o.cutterId()));
        }
    }

    /** Every task goes down once. */
    private static int cuts(Operation o) {
        return (int) o.moves().stream()
                .filter(m -> m.to().z() < 0 && m.from().z() > 0)
                .count();
    }

    /** A cutter already in the spindle goes on with the next phase before another is put in. */
    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void theLoadedCutterGoesFirst(long seed) {
        List<Task> tasks = tasks(new Random(seed), 30, new ArrayList<>());
        List<Operation> operations =
                new TaskOrder(new ToolTable(), Coolant.MIST, CLEAR).operations(tasks, new Vec2(0, 0));
        Map<Phase, Set<String>> used = new HashMap<>();
        for (Task t : tasks)
            used.computeIfAbsent(t.phase(), p -> new HashSet<>()).add(t.cutter().id());
        Phase phase = null;
        String before = "";
        for (Operation o : operations) {
            Phase p = tasks.stream()
                    .filter(t -> o.words().equals(t.words())
                            || o.words().equals(t.phase().words()))
                    .findFirst()
                    .orElseThrow()
                    .phase();
            if (p != phase && used.getOrDefault(p, Set.of()).contains(before))
                assertThat(o.cutterId()).isEqualTo(before);
            phase = p;
            before = o.cutterId();
        }
    }
}
