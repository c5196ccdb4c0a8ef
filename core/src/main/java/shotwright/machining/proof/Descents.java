package shotwright.machining.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import shotwright.cutter.MountedCutter;
import shotwright.geom.Vec3;
import shotwright.machining.path.Line;
import shotwright.machining.path.Move;
import shotwright.machining.path.Operation;
import shotwright.machining.path.Program;
import shotwright.machining.path.Rapid;
import shotwright.mesh.GreyMorphology;
import shotwright.mesh.Grid;
import shotwright.progress.Progress;

/**
 * Shortens the way down: a cutter let straight down at a feed goes at the rapid to just over the highest stock under it, as the operations before have
 * left it. What stands there can only get lower in the operation itself.
 */
public final class Descents {
    /** Air left between tip and stock. */
    private static final double AIR_MM = 0.5;

    private static final double SAME_MM = 1e-9;

    private Descents() {}

    /**
     * A program with its ways down shortened.
     *
     * @param cutters the cutter of each tool number
     * @param start the stock as it comes into the vise; it is not changed
     */
    public static Program shortened(
            Program program, Map<Integer, MountedCutter> cutters, StockHeights start, Progress progress) {
        StockRemoval removal = new StockRemoval(start.copy());
        Grid grid = start.grid();
        List<Operation> out = new ArrayList<>();
        for (Operation o : program.operations()) {
            MountedCutter cutter = Objects.requireNonNull(cutters.get(o.toolNumber()), o.words());
            double reach = cutter.profile().largestRadiusMm() + grid.cell();
            float[] over =
                    GreyMorphology.dilate(removal.stock().top(), grid, GreyMorphology.Element.disc(reach, grid.cell()));
            List<Move> moves = new ArrayList<>();
            for (Move m : o.moves()) shorten(m, over, grid, moves);
            Operation shorter = o.withMoves(moves);
            out.add(shorter);
            removal.run(out.size() - 1, shorter, cutter, 0, null, progress);
        }
        return program.withOperations(out);
    }

    private static void shorten(Move m, float[] over, Grid grid, List<Move> out) {
        boolean down = m instanceof Line l
                && l.from().xy().distance(l.to().xy()) < SAME_MM
                && l.to().z() < l.from().z();
        if (!down) {
            out.add(m);
            return;
        }
        Line l = (Line) m;
        double z = Math.max(l.to().z(), top(over, grid, l.from()) + AIR_MM);
        if (z > l.from().z() - AIR_MM) {
            out.add(m);
            return;
        }
        Vec3 near = new Vec3(l.from().x(), l.from().y(), Math.max(z, l.to().z() + AIR_MM));
        out.add(new Rapid(l.from(), near));
        out.add(new Line(near, l.to(), l.feedMmPerMin()));
    }

    private static double top(float[] over, Grid grid, Vec3 p) {
        int i = (int) Math.floor((p.x() - grid.x0()) / grid.cell()),
                j = (int) Math.floor((p.y() - grid.y0()) / grid.cell());
        if (i >= 0 && j >= 0 && i < grid.nx() && j < grid.ny()) return over[grid.index(i, j)];
        // beside the block: whatever stands highest may still be under the cutter
        double highest = Double.NEGATIVE_INFINITY;
        for (float z : over) highest = Math.max(highest, z);
        return highest;
    }
}
