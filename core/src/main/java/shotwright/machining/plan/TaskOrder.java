package shotwright.machining.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.machining.path.Coolant;
import shotwright.machining.path.Operation;
import shotwright.machining.path.PathBuilder;
import shotwright.machining.workpiece.Task;

/**
 * Gathers tasks into operations: phase after phase; in each phase the cutter that is in the spindle first, then from large to small; with each
 * cutter the nearest place next.
 */
final class TaskOrder {
    private static final double SAME_SPEED = 0.01;

    private final ToolTable tools;
    private final Coolant coolant;
    private final double clearZMm;

    TaskOrder(ToolTable tools, Coolant coolant, double clearZMm) {
        this.tools = tools;
        this.coolant = coolant;
        this.clearZMm = clearZMm;
    }

    /**
     * The operations of one clamping.
     *
     * @param start where the tip stands first, over everything
     */
    List<Operation> operations(List<Task> tasks, Vec2 start) {
        tasks.forEach(tools::use);
        List<Task> left = new ArrayList<>(tasks);
        List<Operation> out = new ArrayList<>();
        Vec3 tip = start.atZ(clearZMm);
        @Nullable String loaded = null;
        while (!left.isEmpty()) {
            Task first = first(left, loaded);
            List<Task> together = left.stream().filter(t -> goWith(t, first)).toList();
            left.removeAll(together);
            Operation o = operation(10 * (out.size() + 1), together, tip);
            if (o == null) continue;
            out.add(o);
            tip = o.to();
            loaded = first.cutter().id();
        }
        return out;
    }

    private static Task first(List<Task> tasks, @Nullable String loaded) {
        return tasks.stream()
                .min(Comparator.comparing(Task::phase)
                        .thenComparing(t -> t.cutter().id().equals(loaded) ? 0 : 1)
                        .thenComparing(t -> -t.cutter().largestDiaMm())
                        .thenComparing(t -> t.cutter().id()))
                .orElseThrow();
    }

    private static boolean goWith(Task t, Task first) {
        return t.phase() == first.phase()
                && t.cutter().id().equals(first.cutter().id())
                && Math.abs(t.speedRpm() / first.speedRpm() - 1) <= SAME_SPEED;
    }

    private @Nullable Operation operation(int number, List<Task> tasks, Vec3 from) {
        PathBuilder pen = new PathBuilder(from);
        List<Task> left = new ArrayList<>(tasks);
        while (!left.isEmpty()) {
            Vec2 here = pen.tip().xy();
            Task next = left.stream()
                    .min(Comparator.comparingDouble(t -> t.atMm().distance(here)))
                    .orElseThrow();
            next.path().write(pen, clearZMm);
            pen.rapidZ(clearZMm);
            left.remove(next);
        }
        if (pen.isEmpty()) return null;
        Task first = tasks.getFirst();
        ToolTable.Tool tool = tools.of(first.cutter());
        String words = tasks.size() == 1 ? first.words() : first.phase().words();
        return new Operation(
                number,
                words,
                tool.number(),
                first.cutter().id(),
                tool.stickoutMm(),
                Math.rint(first.speedRpm()),
                coolant,
                pen.moves());
    }
}
