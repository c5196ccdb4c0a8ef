package shotwright.machining.plan;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.layout.Half;
import shotwright.machining.choice.CutterSearch.Result;
import shotwright.machining.path.Program;
import shotwright.machining.setup.TwoSetups;
import shotwright.machining.workpiece.Workpiece;

/**
 * How one half is milled.
 *
 * @param half which half
 * @param setups its clampings
 * @param work the half under the spindle
 * @param back program of the back face; null when nothing is milled there
 * @param parting program of the parting face
 * @param tools cutters to load
 * @param choice the cutters of the molding surface, with the sets beside them; null when there is none to mill
 * @param byHand what is left to the bench
 * @param benchHoles names of the holes made on the bench alone
 * @param notes what a person should know
 */
public record HalfPlan(
        Half half,
        TwoSetups setups,
        Workpiece work,
        @Nullable Program back,
        Program parting,
        List<ToolTable.Tool> tools,
        @Nullable Result choice,
        List<String> byHand,
        List<String> benchHoles,
        List<String> notes) {
    public HalfPlan {
        tools = List.copyOf(tools);
        byHand = List.copyOf(byHand);
        benchHoles = List.copyOf(benchHoles);
        notes = List.copyOf(notes);
    }
}
