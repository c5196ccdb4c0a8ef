package shotwright.mold;

import java.util.ArrayList;
import java.util.List;
import shotwright.layout.LayoutResult;
import shotwright.mesh.TriMesh;

/** Turns what the layout has placed into convex cut-outs, in the order they are cut: feed, vents, holes. */
public final class Tools {
    private Tools() {}

    /**
     * All cut-outs of a layout.
     *
     * @param layout the layout
     * @param stepMm how far the parting surface leaves its plane anywhere
     * @param parts the parts with their shrink, in the mold frame
     */
    public static List<ConvexTool> of(LayoutResult layout, double stepMm, List<TriMesh> parts) {
        List<ConvexTool> all = new ArrayList<>(FeedTools.of(layout.feed(), layout.block()));
        all.addAll(VentTools.of(layout.vents()));
        all.addAll(HoleTools.of(layout, stepMm, parts));
        return all;
    }

    /** What is open towards the parting face over its whole length: lying pieces of the feed, vents, pry pockets. */
    public static List<ConvexTool> channels(LayoutResult layout) {
        List<ConvexTool> all = new ArrayList<>(FeedTools.of(layout.feed(), layout.block()));
        all.removeIf(t -> !t.circles().isEmpty());
        all.addAll(VentTools.of(layout.vents()));
        all.addAll(HoleTools.pockets(layout));
        return all;
    }
}
