package shotwright.drawing;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import shotwright.geom.Vec2;
import shotwright.measure.LengthUnit;

/**
 * The table "draft by face": a bar for the draft a group of faces has, a heavy tick for what is asked, dashed for what is missing. The
 * colours are those of the draft map.
 */
public final class DraftBars {
    /** What two decimals make 0.00 of. */
    private static final double NOTHING_DEG = 0.005;

    private static final double ROW = 7;
    private static final double HEAD = 9;
    /** Width of the columns between the names and the bars, mm. */
    private static final double BEHIND_NAMES = 32;

    /**
     * One line of the table.
     *
     * @param faces what the faces are
     * @param count how many
     * @param deepMm how deep they stand
     * @param hasDeg least draft they have
     * @param askedDeg draft asked for
     * @param number circle number of the finding
     */
    public record Row(String faces, int count, double deepMm, double hasDeg, double askedDeg, OptionalInt number) {
        boolean isShort() {
            return hasDeg < askedDeg - 1e-9;
        }
    }

    private DraftBars() {}

    /** Height for so many rows, mm. */
    public static double height(int rows) {
        return HEAD + ROW * rows + 2;
    }

    /** The table; depths stand in a unit. */
    public static Drawing drawing(List<Row> rows, double width, LengthUnit unit) {
        Pencil p = Pencil.on(width, height(rows.size()));
        double names = rows.stream()
                .mapToDouble(r -> Typeface.width(r.faces(), Letter.LABEL))
                .max()
                .orElse(0);
        double right = width - 42, left = Math.min(Math.max(36, names + 2) + BEHIND_NAMES, right - 20);
        if (left < 36 + BEHIND_NAMES) throw new IllegalArgumentException("width: " + width + " mm is too narrow");
        double most = rows.stream().mapToDouble(Row::askedDeg).max().orElse(1) * 1.5;
        Axis axis = new Axis("", 0, Math.max(0.5, Math.ceil(most * 2 - 1e-9) / 2), false);
        head(p, axis, left, right, HEAD + ROW * rows.size(), unit);
        for (int i = 0; i < rows.size(); i++) row(p, rows.get(i), axis, left, right, HEAD + ROW * (i + 0.5), unit);
        return p.drawing("Draft by face, degrees");
    }

    private static void head(Pencil p, Axis axis, double left, double right, double bottom, LengthUnit unit) {
        Letter small = Letter.SMALL;
        p.text(0, 4, "walls", small)
                .text(left - 22, 4, "count", small.end())
                .text(left - 8, 4, "deep, " + unit.symbol(), small.end());
        int most = (int) ((right - left) / 16);
        for (double t : axis.ticks(most)) {
            double x = left + (right - left) * axis.share(t);
            p.text(x, 4, axis.figure(t, most) + "°", small.middle());
            p.line(x, 6, x, bottom, t == 0 ? Pen.THIN : new Pen(0.18, Ink.HAIR));
        }
        p.text(right + 16, 4, "has", small.end()).text(right + 30, 4, "asked", small.end());
    }

    private static void row(Pencil p, Row r, Axis axis, double left, double right, double y, LengthUnit unit) {
        Letter plain = Letter.LABEL, figure = plain.end();
        double base = y + plain.capital() / 2;
        p.text(0, base, r.faces(), plain).text(left - 22, base, Integer.toString(r.count()), figure);
        p.text(
                left - 8,
                base,
                String.format(Locale.ROOT, unit == LengthUnit.MM ? "%.1f" : "%.2f", r.deepMm() / unit.mm()),
                figure);
        double zero = left, has = place(axis, left, right, r.hasDeg()), asked = place(axis, left, right, r.askedDeg());
        boolean undercut = r.hasDeg() < -NOTHING_DEG, beyond = r.hasDeg() > axis.to(), none = has - zero < 0.05;
        if (r.isShort()) p.box(has, y - 1.7, asked - has, 3.4, new Pen(0.25, Ink.BLACK).dashed(0.9, 0.7));
        if (!none) {
            p.fillBox(
                    zero,
                    y - 1.7,
                    has - zero,
                    3.4,
                    ColourScale.draft(r.askedDeg()).rgb(r.hasDeg()));
            p.box(zero, y - 1.7, has - zero, 3.4, Pen.THIN);
        } else p.line(zero, y - 1.9, zero, y + 1.9, new Pen(0.6, Ink.BLACK));
        if (r.askedDeg() <= axis.to()) p.line(asked, y - 2.4, asked, y + 2.4, new Pen(0.7, Ink.BLACK));
        if (beyond) broken(p, has - 4, y);
        String words = undercut ? "undercut" : degrees(Math.max(0, r.hasDeg()));
        p.text(right + 16, base, words, r.isShort() ? figure.heavy() : figure);
        p.text(right + 30, base, degrees(r.askedDeg()), figure);
        r.number().ifPresent(n -> Dimensions.number(p, new Vec2(right + 37, y), Integer.toString(n)));
    }

    private static void broken(Pencil p, double x, double y) {
        p.fill(
                Pencil.path(
                        List.of(
                                new Vec2(x, y + 2.2),
                                new Vec2(x + 1.2, y + 2.2),
                                new Vec2(x + 2.2, y - 2.2),
                                new Vec2(x + 1, y - 2.2)),
                        true),
                Ink.PAPER);
        p.line(x, y + 2.4, x + 1, y - 2.4, Pen.THIN).line(x + 1.2, y + 2.4, x + 2.2, y - 2.4, Pen.THIN);
    }

    private static double place(Axis axis, double left, double right, double v) {
        return left + (right - left) * Math.clamp(axis.share(v), 0, 1);
    }

    private static String degrees(double v) {
        return String.format(Locale.ROOT, v >= 9.95 ? "%.0f°" : "%.2f°", v);
    }
}
