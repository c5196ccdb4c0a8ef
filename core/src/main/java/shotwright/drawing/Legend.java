package shotwright.drawing;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Says what the colours of a map mean: title, bar with figures below, the limit as a thick tick right through, and boxes for rulings.
 *
 * @param title what is mapped, with its unit
 * @param scale values on colours
 * @param ticks values written below the bar
 * @param limit value of the limit
 * @param limitText what the limit is called
 * @param keys rulings and colours outside the bar
 * @param decimals of the figures
 */
public record Legend(
        String title,
        ColourScale scale,
        List<Double> ticks,
        OptionalDouble limit,
        String limitText,
        List<Key> keys,
        int decimals) {
    private static final double BAR = 3.6;

    /** A box of one colour and ruling with its meaning. */
    public record Key(int rgb, Texture texture, String text) {}

    public Legend {
        ticks = List.copyOf(ticks);
        keys = List.copyOf(keys);
    }

    /** A bar without limit. */
    public static Legend of(String title, ColourScale scale, int decimals, Double... ticks) {
        return new Legend(title, scale, List.of(ticks), OptionalDouble.empty(), "", List.of(), decimals);
    }

    /** Draft in degrees with what is asked for as the limit, and the two rulings. */
    public static Legend draft(double askedDeg) {
        ColourScale s = ColourScale.draft(askedDeg);
        List<Key> keys = List.of(
                new Key(s.rgb(askedDeg / 2), Texture.RULED, "less than asked"),
                new Key(s.rgb(-1), Texture.CROSSED, "undercut"),
                new Key(Material.PLASTIC.rgb(), Texture.NONE, "floors, tops"));
        return new Legend(
                "draft, degrees",
                s,
                List.of(0.0, askedDeg / 2, askedDeg, 1.5 * askedDeg),
                OptionalDouble.of(askedDeg),
                "asked",
                keys,
                2);
    }

    public Legend limitedAt(double value, String text) {
        return new Legend(title, scale, ticks, OptionalDouble.of(value), text, keys, decimals);
    }

    public Legend with(Key key) {
        List<Key> all = new ArrayList<>(keys);
        all.add(key);
        return new Legend(title, scale, ticks, limit, limitText, all, decimals);
    }

    /** Height it takes, mm. */
    double height() {
        return keys.isEmpty() ? 14 : 20;
    }

    /** Draws it with its left upper corner at a place of the paper. */
    void draw(Pencil paper, double x, double y, double width) {
        double bar = y + 5;
        paper.text(x, y + 2.8, title, Letter.SMALL);
        int steps = scale.bands() > 0 ? scale.bands() : 160;
        for (int i = 0; i < steps; i++) {
            double a = x + width * i / steps;
            double share = scale.bands() > 1 ? (double) i / (steps - 1) : (i + 0.5) / steps;
            paper.fillBox(a, bar, x + width - a, BAR, scale.map().at(scale.bands() == 1 ? 0.5 : share));
            if (scale.bands() > 0 && i > 0) paper.line(a, bar, a, bar + BAR, Pen.THIN);
        }
        paper.box(x, bar, width, BAR, Pen.THIN);
        for (double t : ticks) {
            double tx = x + width * place(t);
            paper.line(tx, bar + BAR, tx, bar + BAR + 0.9, Pen.THIN);
            paper.text(tx, bar + BAR + 3.7, figure(t), Letter.SMALL.middle());
        }
        if (limit.isPresent()) {
            double tx = x + width * place(limit.getAsDouble());
            paper.line(tx, bar - 1.2, tx, bar + BAR + 1.2, new Pen(0.7, Ink.BLACK));
            paper.text(tx, bar - 1.8, limitText, Letter.SMALL.middle().heavy().in(Ink.BLACK));
        }
        keys(paper, x, bar + BAR + 5.6);
    }

    private void keys(Pencil paper, double x, double y) {
        double at = x;
        for (Key k : keys) {
            swatch(paper, at, y, k);
            paper.text(at + 7.2, y + 3, k.text(), Letter.SMALL);
            at += 10 + Typeface.width(k.text(), Letter.SMALL);
        }
    }

    private static void swatch(Pencil paper, double x, double y, Key key) {
        Rectangle2D box = new Rectangle2D.Double(x, y, 6, BAR);
        paper.fill(box, key.rgb());
        Pen pen = new Pen(0.25, Ink.readableOn(key.rgb()));
        switch (key.texture()) {
            case NONE -> {}
            case RULED -> {
                Path2D lines = new Path2D.Double();
                for (double at = x + 0.75; at < x + 6; at += 1.5) {
                    lines.moveTo(at, y);
                    lines.lineTo(at, y + BAR);
                }
                paper.shape(lines, pen);
            }
            case CROSSED -> paper.hatch(box, 45, 1.5, pen).hatch(box, -45, 1.5, pen);
            case HATCH_A -> paper.hatch(box, 45, 2.25, pen);
            case HATCH_B -> paper.hatch(box, -45, 2.25, pen);
        }
        paper.shape(box, Pen.THIN);
    }

    private double place(double value) {
        return scale.plain(value);
    }

    /** A value as it stands below the bar. */
    String figure(double v) {
        return String.format(java.util.Locale.ROOT, "%." + decimals + "f", v).replace('-', '−');
    }
}
