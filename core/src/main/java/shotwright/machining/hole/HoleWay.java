package shotwright.machining.hole;

import java.util.List;
import shotwright.machining.workpiece.Hole;
import shotwright.machining.workpiece.Task;

/**
 * How a hole is made.
 *
 * @param hole the hole
 * @param tasks what the mill does, in order
 * @param byHand what is left for the bench; empty when nothing is
 * @param notes what a person should know
 */
public record HoleWay(Hole hole, List<Task> tasks, String byHand, List<String> notes) {
    public HoleWay {
        tasks = List.copyOf(tasks);
        notes = List.copyOf(notes);
    }
}
