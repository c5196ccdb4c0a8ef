package shotwright.drawing;

import java.util.ArrayList;
import java.util.List;

/** A table on paper: small grey heads over a thin rule, rows parted by hair lines; figures stand at the right of their columns, words at the left. */
public final class RuledTable {
    private static final double ROW = 4.9;
    private static final double GAP = 3.2;
    private static final double HEAD = 4.6;

    private final List<String> heads;
    private final List<Integer> figures;
    private final List<List<String>> rows = new ArrayList<>();

    /**
     * An empty table.
     *
     * @param heads what stands over the columns
     * @param figures numbers of the columns that hold figures, counted from 0
     */
    public RuledTable(List<String> heads, List<Integer> figures) {
        this.heads = List.copyOf(heads);
        this.figures = List.copyOf(figures);
    }

    public RuledTable row(String... cells) {
        if (cells.length != heads.size())
            throw new IllegalArgumentException("row: " + cells.length + " cells for " + heads.size() + " columns");
        rows.add(List.of(cells));
        return this;
    }

    public boolean isEmpty() {
        return rows.isEmpty();
    }

    /** Height, mm. */
    public double height() {
        return HEAD + ROW * rows.size() + 1;
    }

    /** Width its words need, mm. */
    public double width() {
        double sum = -GAP;
        for (int c = 0; c < heads.size(); c++) sum += column(c) + GAP;
        return sum;
    }

    private double column(int c) {
        double wide = Typeface.width(heads.get(c), Letter.SMALL);
        for (List<String> r : rows) wide = Math.max(wide, Typeface.width(r.get(c), Letter.LABEL));
        return wide;
    }

    /** Draws it from its upper left corner on; room that is left over goes between the columns. */
    public void draw(Pencil paper, double x, double y, double width) {
        double spare = heads.size() > 1 ? Math.max(0, width - width()) / (heads.size() - 1) : 0;
        double at = x;
        for (int c = 0; c < heads.size(); c++) {
            boolean figure = figures.contains(c);
            double place = figure ? at + column(c) : at;
            paper.text(place, y + HEAD - 1.4, heads.get(c), figure ? Letter.SMALL.end() : Letter.SMALL);
            for (int r = 0; r < rows.size(); r++) {
                double base = y + HEAD + ROW * (r + 1) - 1.5;
                paper.text(place, base, rows.get(r).get(c), figure ? Letter.LABEL.end() : Letter.LABEL);
            }
            at += column(c) + GAP + spare;
        }
        paper.line(x, y + HEAD, x + width, y + HEAD, Pen.THIN);
        for (int r = 1; r <= rows.size(); r++)
            paper.line(x, y + HEAD + ROW * r, x + width, y + HEAD + ROW * r, new Pen(0.13, Ink.RULE));
    }
}
