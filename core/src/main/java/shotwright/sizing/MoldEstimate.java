package shotwright.sizing;

import shotwright.press.MoldSize;

/**
 * Least block for a number of cavities, before the layout: cavities in rows, 15 mm to the edges, 12 mm between cavities, at least 10 mm or a
 * quarter of the narrower cavity under them (common practice). The layout decides.
 *
 * @param columnsCount cavities along x
 * @param rowsCount cavities along y
 * @param widthMm across the press
 * @param heightMm along y
 * @param thicknessMm both halves
 */
public record MoldEstimate(int columnsCount, int rowsCount, double widthMm, double heightMm, double thicknessMm) {
    static final double EDGE_MM = 15;
    static final double BETWEEN_MM = 12;
    static final double LEAST_FLOOR_MM = 10;

    /** What an edge may give when a press is a little too small: 15 mm down to 10 mm. */
    static final double GIVE_MM = 5;

    /** The arrangement of a number of cavities with the smallest face that a press takes, or the smallest of all when none goes in. */
    static MoldEstimate of(
            int cavities, double partXMm, double partYMm, double depthMm, MoldSize least, MoldSize most) {
        MoldEstimate best = null;
        for (int columns = 1; columns <= cavities; columns++) {
            if (cavities % columns != 0) continue;
            for (int turn = 0; turn < 2; turn++) {
                double x = turn == 0 ? partXMm : partYMm, y = turn == 0 ? partYMm : partXMm;
                MoldEstimate e = arranged(columns, cavities / columns, x, y, depthMm, least);
                double over = Math.max(0, e.overMm(most)), bestOver = best == null ? 0 : Math.max(0, best.overMm(most));
                if (best == null || over < bestOver || (over == bestOver && e.faceMm2() < best.faceMm2())) best = e;
            }
        }
        if (best == null) throw new IllegalArgumentException("cavities: " + cavities + " is below one");
        return best;
    }

    private static MoldEstimate arranged(int columns, int rows, double x, double y, double depth, MoldSize least) {
        double floor = Math.max(LEAST_FLOOR_MM, Math.min(x, y) / 4);
        return new MoldEstimate(
                columns,
                rows,
                Math.max(least.widthMm().value(), columns * x + (columns - 1) * BETWEEN_MM + 2 * EDGE_MM),
                Math.max(least.heightMm().value(), rows * y + (rows - 1) * BETWEEN_MM + 2 * EDGE_MM),
                Math.max(least.thicknessMm().value(), depth + 2 * floor));
    }

    /** By how much it is too large for a press, mm; zero or less when it goes in. */
    double overMm(MoldSize most) {
        return Math.max(
                Math.max(
                        widthMm - most.widthMm().value(),
                        heightMm - most.heightMm().value()),
                thicknessMm - most.thicknessMm().value());
    }

    /** Area of the parting face, mm². */
    public double faceMm2() {
        return widthMm * heightMm;
    }

    /** Volume of both halves, mm³. */
    public double volumeMm3() {
        return faceMm2() * thicknessMm;
    }

    /** Size in words. */
    public String words() {
        return Figures.number(widthMm) + " × " + Figures.number(heightMm) + " × " + Figures.number(thicknessMm) + " mm";
    }
}
