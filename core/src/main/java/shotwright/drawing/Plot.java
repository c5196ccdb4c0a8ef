package shotwright.drawing;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import shotwright.geom.Vec2;

/**
 * Curves over an axis: lines named at their ends, bands for what an estimate is worth, limits as heavy lines with their words, and marked
 * points. Told apart by weight and dash, not by colour.
 */
public final class Plot {
    private final Axis x;
    private final Axis y;
    private final List<Series> series = new ArrayList<>();
    private final List<Strip> bands = new ArrayList<>();
    private final List<Limit> limits = new ArrayList<>();
    private final List<Upright> uprights = new ArrayList<>();
    private final List<Point> points = new ArrayList<>();

    private record Series(String name, double[] x, double[] y, Pen pen) {}

    private record Strip(double[] x, double[] low, double[] high) {}

    private record Limit(double y, String words, Pen pen) {}

    private record Upright(double x, String words) {}

    private record Point(double x, double y, String words, boolean filled) {}

    public Plot(Axis x, Axis y) {
        this.x = x;
        this.y = y;
    }

    /** The main curve. */
    public Plot curve(String name, double[] xs, double[] ys) {
        return curve(name, xs, ys, new Pen(0.5, Ink.BLACK));
    }

    /** A curve to compare with: thin and dashed. */
    public Plot beside(String name, double[] xs, double[] ys) {
        return curve(name, xs, ys, new Pen(0.25, Ink.BLACK).dashed(1.5, 0.8));
    }

    public Plot curve(String name, double[] xs, double[] ys, Pen pen) {
        if (xs.length != ys.length)
            throw new IllegalArgumentException("curve: " + xs.length + " x for " + ys.length + " y");
        series.add(new Series(name, xs.clone(), ys.clone(), pen));
        return this;
    }

    /** Between a lower and an upper limit. */
    public Plot band(double[] xs, double[] low, double[] high) {
        bands.add(new Strip(xs.clone(), low.clone(), high.clone()));
        return this;
    }

    /** A value not to be passed; when it lies above the picture its words stand over it with an arrow. */
    public Plot limit(double at, String words) {
        limits.add(new Limit(at, words, new Pen(0.6, Ink.BLACK)));
        return this;
    }

    /** A value for orientation, thin and dashed. */
    public Plot level(double at, String words) {
        limits.add(new Limit(at, words, new Pen(0.25, Ink.BLACK).dashed(1.0, 0.8)));
        return this;
    }

    /** An upright dashed line, its words at the top. */
    public Plot moment(double at, String words) {
        uprights.add(new Upright(at, words));
        return this;
    }

    /** A marked point; the chosen one is filled and its words are bold. */
    public Plot point(double atX, double atY, String words, boolean chosen) {
        points.add(new Point(atX, atY, words, chosen));
        return this;
    }

    public Drawing drawing(String title, double width, double height) {
        Pencil paper = Pencil.on(width, height);
        draw(paper, 0, 0, width, height);
        return paper.drawing(title);
    }

    /** Into a rectangle of a sheet. */
    public void draw(Pencil paper, double left, double top, double width, double height) {
        double names = series.stream().mapToDouble(s -> longest(s.name())).max().orElse(0);
        Frame f = frame(left, top, width, height, names);
        grid(paper, f, left);
        for (Strip b : bands) strip(paper, f, b);
        for (Series s : series) line(paper, f, s);
        for (Limit l : limits) limit(paper, f, l);
        for (Upright u : uprights) upright(paper, f, u);
        names(paper, f);
        for (Point p : points) point(paper, f, p);
    }

    private Frame frame(double left, double top, double width, double height, double names) {
        double figures = y.ticks(5).stream()
                .mapToDouble(t -> Typeface.width(y.figure(t, 5), Letter.SMALL))
                .max()
                .orElse(5);
        double l = left + figures + 2.5, t = top + 7, r = left + width - (names > 0 ? names + 3 : 4);
        if (r - l < width * 0.35) r = l + width * 0.35;
        return new Frame(l, t, r, top + height - 11);
    }

    private record Frame(double left, double top, double right, double bottom) {
        double x(Axis a, double v) {
            return left + (right - left) * a.share(v);
        }

        double y(Axis a, double v) {
            return bottom - (bottom - top) * a.share(v);
        }
    }

    private void grid(Pencil paper, Frame f, double left) {
        paper.text(left, f.top() - 3.4, y.title(), Letter.SMALL);
        for (double t : y.ticks(5)) {
            double py = f.y(y, t);
            paper.line(f.left(), py, f.right(), py, new Pen(0.18, Ink.HAIR));
            paper.text(f.left() - 1.5, py + 1, y.figure(t, 5), Letter.SMALL.end());
        }
        paper.line(f.left(), f.bottom(), f.right(), f.bottom(), Pen.THIN);
        double last = -1e9;
        int most = (int) Math.max(2, (f.right() - f.left()) / 16);
        for (double t : x.ticks(most)) {
            double px = f.x(x, t), wide = Typeface.width(x.figure(t, most), Letter.SMALL);
            if (x.logarithmic()) paper.line(px, f.top(), px, f.bottom(), new Pen(0.18, Ink.HAIR));
            paper.line(px, f.bottom(), px, f.bottom() + 1, Pen.THIN);
            if (px - wide / 2 < last + 1.5) continue;
            paper.text(px, f.bottom() + 4.4, x.figure(t, most), Letter.SMALL.middle());
            last = px + wide / 2;
        }
        paper.text(f.right(), f.bottom() + 9, x.title(), Letter.SMALL.end());
    }

    private void strip(Pencil paper, Frame f, Strip b) {
        List<Vec2> ring = new ArrayList<>();
        for (int i = 0; i < b.x().length; i++) ring.add(inside(f, b.x()[i], b.high()[i]));
        for (int i = b.x().length - 1; i >= 0; i--) ring.add(inside(f, b.x()[i], b.low()[i]));
        if (ring.size() < 3) return;
        paper.fill(Pencil.path(ring, true), Ink.METAL_B);
        Pen edge = new Pen(0.13, Ink.LIGHT);
        paper.row(ring.subList(0, b.x().length), false, edge).row(ring.subList(b.x().length, ring.size()), false, edge);
    }

    private Vec2 inside(Frame f, double vx, double vy) {
        return new Vec2(Math.clamp(f.x(x, vx), f.left(), f.right()), Math.clamp(f.y(y, vy), f.top(), f.bottom()));
    }

    private void line(Pencil paper, Frame f, Series s) {
        Path2D path = new Path2D.Double();
        boolean down = false;
        for (int i = 0; i < s.x().length; i++) {
            double px = f.x(x, s.x()[i]), py = f.y(y, s.y()[i]);
            boolean shown =
                    Double.isFinite(px) && Double.isFinite(py) && px >= f.left() - 1e-6 && px <= f.right() + 1e-6;
            if (!shown) {
                down = false;
                continue;
            }
            py = Math.clamp(py, f.top(), f.bottom());
            if (down) path.lineTo(px, py);
            else path.moveTo(px, py);
            down = true;
        }
        paper.shape(path, s.pen());
    }

    private void limit(Pencil paper, Frame f, Limit l) {
        double py = f.y(y, l.y());
        if (py > f.bottom() + 1e-6) return;
        if (py < f.top() - 1e-6) {
            double wide = Typeface.width(l.words(), Letter.SMALL);
            paper.text(f.right(), f.top() - 2, l.words(), Letter.SMALL.end().in(Ink.BLACK));
            paper.line(f.right() - wide - 2.5, f.top() - 1.6, f.right() - wide - 2.5, f.top() - 4, l.pen());
            paper.arrowHead(f.right() - wide - 2.5, f.top() - 6.2, 0, -1, 2.5, Ink.BLACK);
            return;
        }
        paper.line(f.left(), py, f.right(), py, l.pen());
        double base = py - f.top() < 4 ? py + 3.6 : py - 1;
        double wide = Typeface.width(l.words(), Letter.SMALL);
        if (passes(f, f.right() - wide, f.right(), base - 3.5, base + 2))
            paper.text(f.left() + 1, base, l.words(), Letter.SMALL.in(Ink.BLACK));
        else paper.text(f.right(), base, l.words(), Letter.SMALL.end().in(Ink.BLACK));
    }

    /** Whether a curve or the edge of a band runs through a rectangle of the paper. */
    private boolean passes(Frame f, double left, double right, double top, double bottom) {
        return series.stream().anyMatch(s -> passes(f, s.x(), s.y(), left, right, top, bottom))
                || bands.stream().anyMatch(b -> passes(f, b.x(), b.low(), left, right, top, bottom))
                || bands.stream().anyMatch(b -> passes(f, b.x(), b.high(), left, right, top, bottom));
    }

    private boolean passes(Frame f, double[] xs, double[] ys, double left, double right, double top, double bottom) {
        Rectangle2D box = new Rectangle2D.Double(left, top, right - left, bottom - top);
        for (int i = 1; i < xs.length; i++) {
            Vec2 a = inside(f, xs[i - 1], ys[i - 1]), b = inside(f, xs[i], ys[i]);
            if (box.intersectsLine(a.x(), a.y(), b.x(), b.y())) return true;
        }
        return false;
    }

    private void upright(Pencil paper, Frame f, Upright u) {
        double px = f.x(x, u.x());
        if (px < f.left() - 1e-6 || px > f.right() + 1e-6) return;
        paper.line(px, f.top(), px, f.bottom(), new Pen(0.25, Ink.BLACK).dashed(1.0, 0.8));
        boolean room = px + 1 + Typeface.width(u.words(), Letter.SMALL) < f.right();
        Letter letter = room ? Letter.SMALL : Letter.SMALL.end();
        boolean limitThere = limits.stream().anyMatch(l -> Math.abs(f.y(y, l.y()) - f.top()) < 6);
        paper.text(px + (room ? 1 : -1), f.top() + (limitThere ? 9 : 2.4), u.words(), letter.in(Ink.BLACK));
    }

    /** Names of curves beside their ends, kept apart. */
    private void names(Pencil paper, Frame f) {
        record End(Series series, double y) {}
        List<End> ends = new ArrayList<>();
        for (Series s : series) {
            int last = s.x().length - 1;
            while (last > 0 && !(f.x(x, s.x()[last]) <= f.right() + 1e-6)) last--;
            if (last >= 0 && !s.name().isEmpty())
                ends.add(new End(s, Math.clamp(f.y(y, s.y()[last]), f.top(), f.bottom())));
        }
        ends.sort(Comparator.comparingDouble(End::y));
        double tallest = ends.stream().anyMatch(e -> e.series().name().contains("\n")) ? 8 : 4;
        double[] at = Spread.along(ends.stream().map(End::y).toList(), tallest, f.top(), f.bottom());
        for (int i = 0; i < at.length; i++) {
            String[] lines = ends.get(i).series().name().split("\n");
            double base = at[i] + 1 - (lines.length - 1) * 1.8;
            for (String l : lines) {
                paper.text(f.right() + 2, base, l, Letter.SMALL.in(Ink.BLACK));
                base += 3.6;
            }
        }
    }

    private static double longest(String name) {
        double w = 0;
        for (String l : name.split("\n")) w = Math.max(w, Typeface.width(l, Letter.SMALL));
        return w;
    }

    private void point(Pencil paper, Frame f, Point p) {
        Vec2 at = inside(f, p.x(), p.y());
        paper.fillCircle(at.x(), at.y(), 0.9, p.filled() ? Ink.BLACK : Ink.PAPER);
        paper.circle(at.x(), at.y(), 0.9, new Pen(0.35, Ink.BLACK));
        Letter letter = p.filled() ? Letter.SMALL.heavy().in(Ink.BLACK) : Letter.SMALL.in(Ink.BLACK);
        boolean room = at.x() + 2 + Typeface.width(p.words(), letter) < f.right() + 2;
        double wide = Typeface.width(p.words(), letter), left = room ? at.x() + 1.6 : at.x() - 1.6 - wide;
        boolean under = passes(f, left, left + wide, at.y() - 4.2, at.y() - 1.2)
                && !passes(f, left, left + wide, at.y() + 1.8, at.y() + 4.8);
        paper.text(left, at.y() + (under ? 4.4 : -1.6), p.words(), letter);
    }

    /** A number to two or three figures for words beside a point. */
    public static String short3(double v) {
        double a = Math.abs(v);
        return String.format(Locale.ROOT, a >= 100 ? "%.0f" : a >= 10 ? "%.1f" : "%.2f", v);
    }
}
