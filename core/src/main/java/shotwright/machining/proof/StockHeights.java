package shotwright.machining.proof;

import java.util.Arrays;
import shotwright.geom.Box3;
import shotwright.mesh.Grid;

/** What stands in the vise, as the height of its top over each cell of a grid; float heights are good to 1e-5 mm at 100 mm. */
public final class StockHeights {
    private final Grid grid;
    private final float[] top;
    private final double bottomMm;

    private StockHeights(Grid grid, float[] top, double bottomMm) {
        this.grid = grid;
        this.top = top;
        this.bottomMm = bottomMm;
    }

    /**
     * A block as sawn or squared.
     *
     * @throws IllegalArgumentException when the grid would have more cells than memory is set aside for; the message says which cell would do
     */
    public static StockHeights block(Box3 box, double cellMm) {
        double cells = box.size().x() / cellMm * (box.size().y() / cellMm);
        if (!(cells <= Grid.MOST / 1.02)) {
            double coarser =
                    Math.ceil(Math.sqrt(1.05 * box.size().x() * box.size().y() / Grid.MOST) * 1000) / 1000;
            throw new IllegalArgumentException("cell: " + cellMm + " mm makes " + Math.round(cells / 1e6)
                    + " million cells of this stock; take " + coarser + " mm or prove a smaller piece");
        }
        Grid grid = Grid.around(box, cellMm);
        float[] top = new float[grid.count()];
        Arrays.fill(top, (float) box.max().z());
        return new StockHeights(grid, top, box.min().z());
    }

    /** The same with nothing left outside a rectangle: what an earlier clamping took off the sides. */
    public StockHeights within(Box3 kept) {
        float[] inside = top.clone();
        for (int j = 0; j < grid.ny(); j++)
            for (int i = 0; i < grid.nx(); i++) {
                double x = grid.x(i), y = grid.y(j);
                boolean in = x >= kept.min().x()
                        && x <= kept.max().x()
                        && y >= kept.min().y()
                        && y <= kept.max().y();
                if (!in) inside[grid.index(i, j)] = (float) bottomMm;
            }
        return new StockHeights(grid, inside, bottomMm);
    }

    public Grid grid() {
        return grid;
    }

    public double bottomMm() {
        return bottomMm;
    }

    /** Top over a cell. */
    public float topMm(int cell) {
        return top[cell];
    }

    /** The heights themselves, row after row. */
    float[] top() {
        return top;
    }

    public StockHeights copy() {
        return new StockHeights(grid, top.clone(), bottomMm);
    }

    /** What the grid holds, mm³; cut through counts as nothing. */
    public double volumeMm3() {
        double sum = 0;
        for (float z : top) sum += Math.max(0, z - bottomMm);
        return sum * grid.cell() * grid.cell();
    }
}
