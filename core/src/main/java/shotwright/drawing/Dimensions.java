package shotwright.drawing;

import shotwright.geom.Vec2;

/**
 * Dimensions with extension lines and slim arrows, and circle numbers with leaders (ISO 129-1 habits, from memory). All places are paper
 * millimetres, y down.
 */
public final class Dimensions {
    private static final double ARROW = 2.5;
    private static final double GAP = 0.8;
    private static final double BEYOND = 1.2;
    private static final double LINE = 0.18;

    /** Radius of a circle number. */
    public static final double BALLOON = 2.9;

    private Dimensions() {}

    /** Between two points, measured across, on a line at height y. */
    public static void across(Pencil paper, Vec2 a, Vec2 b, double y, String text) {
        if (a.x() > b.x()) {
            across(paper, b, a, y, text);
            return;
        }
        Pen pen = new Pen(LINE, Ink.BLACK);
        extend(paper, a, new Vec2(a.x(), y), pen);
        extend(paper, b, new Vec2(b.x(), y), pen);
        double wide = Typeface.width(text, Letter.LABEL), room = b.x() - a.x();
        boolean inside = room > wide + 2 * ARROW + 1, arrowsInside = room > 3 * ARROW;
        double sign = arrowsInside ? 1 : -1, out = arrowsInside ? 0 : 2 * ARROW;
        double tail = inside || arrowsInside && room > wide ? 0 : wide + 1.5;
        paper.line(a.x() - out, y, b.x() + Math.max(out, tail > 0 ? out + tail : 0), y, pen);
        paper.arrowHead(a.x(), y, -sign, 0, ARROW, Ink.BLACK).arrowHead(b.x(), y, sign, 0, ARROW, Ink.BLACK);
        double x = tail == 0 ? (a.x() + b.x()) / 2 : b.x() + out + 0.8 + wide / 2;
        paper.text(x, y - 0.9, text, Letter.LABEL.middle());
    }

    /** Between two points, measured up and down, on a line at place x; a size too short for its words carries them above. */
    public static void upright(Pencil paper, Vec2 a, Vec2 b, double x, String text) {
        if (a.y() > b.y()) {
            upright(paper, b, a, x, text);
            return;
        }
        Pen pen = new Pen(LINE, Ink.BLACK);
        extend(paper, a, new Vec2(x, a.y()), pen);
        extend(paper, b, new Vec2(x, b.y()), pen);
        double wide = Typeface.width(text, Letter.LABEL), room = b.y() - a.y();
        boolean arrowsInside = room > 3 * ARROW;
        boolean fits = room > wide + 1;
        double sign = arrowsInside ? 1 : -1, out = arrowsInside ? 0 : 2 * ARROW;
        double above = fits ? out : Math.max(out, wide + 2);
        paper.line(x, a.y() - above, x, b.y() + out, pen);
        paper.arrowHead(x, a.y(), 0, -sign, ARROW, Ink.BLACK).arrowHead(x, b.y(), 0, sign, ARROW, Ink.BLACK);
        double middle = fits ? (a.y() + b.y()) / 2 : a.y() - 1.5 - wide / 2;
        paper.text(x - 0.9, middle, text, Letter.LABEL.middle(), 90);
    }

    /** A note with a leader whose arrow touches a point; the text stands on a shelf beside {@code shelf}. */
    public static void note(Pencil paper, Vec2 point, Vec2 shelf, String text) {
        Pen pen = new Pen(LINE, Ink.BLACK);
        double side = shelf.x() >= point.x() ? 1 : -1, wide = Typeface.width(text, Letter.LABEL) + 1;
        paper.line(point.x(), point.y(), shelf.x(), shelf.y(), pen);
        paper.line(shelf.x(), shelf.y(), shelf.x() + side * wide, shelf.y(), pen);
        Vec2 d = point.minus(shelf);
        if (d.length() > 0) paper.arrowHead(point.x(), point.y(), d.x(), d.y(), ARROW, Ink.BLACK);
        paper.text(shelf.x() + side * wide / 2, shelf.y() - 0.9, text, Letter.LABEL.middle());
    }

    /** A circle number at {@code centre} with a leader to a dot on the thing; a ring instead of the dot when it is hidden behind. */
    public static void balloon(Pencil paper, Vec2 point, Vec2 centre, String number, boolean seen) {
        Vec2 d = point.minus(centre);
        if (d.length() > BALLOON) {
            Vec2 from = centre.plus(d.unit().times(BALLOON));
            Pen pen = seen ? new Pen(LINE, Ink.BLACK) : new Pen(LINE, Ink.BLACK).dashed(1.0, 0.7);
            Vec2 to = seen ? point : point.minus(d.unit().times(0.8));
            paper.line(from.x(), from.y(), to.x(), to.y(), pen);
        }
        if (seen) paper.fillCircle(point.x(), point.y(), 0.6, Ink.BLACK);
        else paper.circle(point.x(), point.y(), 0.8, new Pen(LINE, Ink.BLACK));
        number(paper, centre, number);
    }

    /** Words about a place, bare, centred at a point of the margin, with a leader to a dot on the thing. */
    public static void words(Pencil paper, Vec2 point, Vec2 centre, String words) {
        double side = Math.signum(point.x() - centre.x()),
                from = centre.x() + side * (Typeface.width(words, Letter.LABEL) / 2 + 0.8);
        paper.line(from, centre.y(), point.x(), point.y(), new Pen(LINE, Ink.BLACK));
        paper.fillCircle(point.x(), point.y(), 0.6, Ink.BLACK);
        paper.textCentred(centre.x(), centre.y(), words, Letter.LABEL.middle());
    }

    /** A number in a circle. */
    public static void number(Pencil paper, Vec2 centre, String number) {
        paper.fillCircle(centre.x(), centre.y(), BALLOON, Ink.PAPER);
        paper.circle(centre.x(), centre.y(), BALLOON, new Pen(0.3, Ink.BLACK));
        double fit = number.length() > 2 ? 2.3 : 3.1;
        paper.textCentred(centre.x(), centre.y(), number, Letter.LABEL.middle().sized(fit));
    }

    private static void extend(Pencil paper, Vec2 from, Vec2 to, Pen pen) {
        Vec2 d = to.minus(from);
        if (d.length() < GAP) return;
        Vec2 u = d.unit();
        Vec2 start = from.plus(u.times(GAP)), end = to.plus(u.times(BEYOND));
        paper.line(start.x(), start.y(), end.x(), end.y(), pen);
    }
}
