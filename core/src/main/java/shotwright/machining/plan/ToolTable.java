package shotwright.machining.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import shotwright.cutter.Cutter;
import shotwright.cutter.Holder;
import shotwright.cutter.MountedCutter;
import shotwright.machining.workpiece.Task;

/**
 * The cutters of a mold with the numbers the control calls them by and the stickout each is set to: one setting that serves every task.
 */
public final class ToolTable {
    private final Map<String, Tool> tools = new LinkedHashMap<>();

    /**
     * A cutter to load.
     *
     * @param number number at the control, from 1
     * @param cutter the cutter
     * @param stickoutMm how far it stands out of its holder
     */
    public record Tool(int number, Cutter cutter, double stickoutMm) {
        /** As it stands in the spindle. */
        public MountedCutter mounted() {
            double out = Math.max(stickoutMm, cutter.fluteLengthMm().value());
            return new MountedCutter(
                    cutter, out, Holder.forShank(cutter.shankMm().value()));
        }
    }

    /** Enters a cutter, or lets it stand out further. */
    void use(Task task) {
        String id = task.cutter().id();
        Tool known = tools.get(id);
        int number = known == null ? tools.size() + 1 : known.number;
        double stickoutMm = Math.max(task.stickoutMm(), known == null ? 0 : known.stickoutMm);
        tools.put(id, new Tool(number, task.cutter(), stickoutMm));
    }

    /** The tool with a cutter that was entered. */
    public Tool of(Cutter cutter) {
        return Objects.requireNonNull(tools.get(cutter.id()), cutter.id());
    }

    /** In the order of their numbers. */
    public List<Tool> all() {
        return List.copyOf(tools.values());
    }
}
