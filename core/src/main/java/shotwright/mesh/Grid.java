package shotwright.mesh;

import shotwright.geom.Box3;

/**
 * Square cells over a rectangle of x and y, row after row. A column stands on the middle of each cell; cell (i, j) has index
 * {@code j · nx + i}.
 *
 * @param x0 left border of the first cell
 * @param y0 lower border of the first cell
 * @param cell side of a cell
 * @param nx cells along x
 * @param ny cells along y
 */
public record Grid(double x0, double y0, double cell, int nx, int ny) {
    /** The most cells a grid may have: 64 million. */
    public static final int MOST = 1 << 26;

    public Grid {
        if (!(cell > 0) || !Double.isFinite(cell) || !Double.isFinite(x0) || !Double.isFinite(y0))
            throw new IllegalArgumentException("grid: cell " + cell + " at (" + x0 + ", " + y0 + ")");
        if (nx < 1 || ny < 1 || (long) nx * ny > MOST)
            throw new IllegalArgumentException("grid: " + nx + " × " + ny + " cells; at most " + MOST);
    }

    /** Covers the box with cells of the given side, the spare shared on both sides. */
    public static Grid around(Box3 box, double cell) {
        double sx = box.size().x(), sy = box.size().y();
        if (!(cell > 0) || sx / cell > MOST || sy / cell > MOST)
            throw new IllegalArgumentException("grid: cell " + cell + " on a box of " + sx + " × " + sy);
        int nx = Math.max(1, (int) Math.ceil(sx / cell)), ny = Math.max(1, (int) Math.ceil(sy / cell));
        return new Grid(box.centre().x() - cell * nx / 2, box.centre().y() - cell * ny / 2, cell, nx, ny);
    }

    /** Covers the box with so many cells along its longer side. */
    public static Grid around(Box3 box, int cells) {
        if (cells < 1) throw new IllegalArgumentException("grid: " + cells + " cells");
        double longer = Math.max(box.size().x(), box.size().y());
        return around(box, (longer > 0 ? longer : 1) * (1 + 1e-9) / cells);
    }

    public int count() {
        return nx * ny;
    }

    public int index(int i, int j) {
        return j * nx + i;
    }

    /** The x of the column of cell i. */
    public double x(int i) {
        return x0 + (i + 0.5) * cell;
    }

    /** The y of the column of cell j. */
    public double y(int j) {
        return y0 + (j + 0.5) * cell;
    }
}
