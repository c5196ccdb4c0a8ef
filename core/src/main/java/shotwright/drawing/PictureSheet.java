package shotwright.drawing;

import java.awt.geom.Line2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import shotwright.geom.Vec2;

/** Sets a picture on a sheet: circle numbers in the margins, opening arrow, scale, caption, legend. */
final class PictureSheet {
    private static final double STEP = 2 * Dimensions.BALLOON + 1.6;

    private final Scene scene;
    private final Pencil paper;
    private final double dpi;
    private final double foot;

    private PictureSheet(Scene scene, double width, double height, double dpi) {
        this.scene = scene;
        this.dpi = dpi;
        paper = Pencil.on(width, height);
        foot = scene.legend().map(Legend::height).orElse(0.0) + 8;
    }

    static Drawing of(Scene scene, double width, double height, double dpi) {
        return new PictureSheet(scene, width, height, dpi).draw();
    }

    private Drawing draw() {
        double w = paper.width(), h = paper.height(), high = h - foot;
        if (high < 15) throw new IllegalArgumentException("height: " + h + " mm leaves no room above the legend");
        boolean banded = scene.legend().map(l -> l.scale().bands() > 0).orElse(false);
        double k = dpi / 25.4, side = scene.callouts().isEmpty() && !banded ? 6 : 16, edge = 5;
        int pw = (int) Math.round(w * k), ph = (int) Math.round(high * k);
        double line = 0.25 * k * Math.clamp(w / 80, 0.5, 1);
        Picture p = Picture.render(scene, pw, ph, side * k, edge * k, (w - 2 * side) * k, (high - 2 * edge) * k, line);
        BufferedImage image = p.image();
        paper.fillBox(0, 0, w, h, scene.ground());
        paper.pixels(image, 0, 0, w, high);
        Vec2 corner = freeCorner(image, w, high, k);
        opening(corner.x(), corner.y());
        callouts(p, w, high, k, corner);
        if (banded) scene.legend().ifPresent(l -> readings(p, l, w, high, k, corner));
        String caption = scene.caption().isEmpty() ? scene.view().name() : scene.caption();
        double base = high + 5;
        double scaleRight = scale(p.projection().scale() / k, w - 4, base);
        paper.text(4, base, shortened(caption, scaleRight - 8), Letter.SMALL.in(Ink.GREY));
        scene.legend().ifPresent(l -> l.draw(paper, 5, high + 8, Math.min(w - 10, 92)));
        return paper.drawing(caption);
    }

    private static String shortened(String words, double room) {
        if (Typeface.width(words, Letter.SMALL) <= room) return words;
        int n = words.length();
        while (n > 1 && Typeface.width(words.substring(0, n) + "…", Letter.SMALL) > room) n--;
        return words.substring(0, n).strip() + "…";
    }

    /** Where the opening arrow covers nothing: the first free corner, upper left when none is. */
    private Vec2 freeCorner(BufferedImage image, double w, double high, double k) {
        double wide = 13, tall = 11;
        List<Vec2> corners = List.of(
                new Vec2(4.5, 4),
                new Vec2(w - wide - 2, 4),
                new Vec2(4.5, high - tall - 2),
                new Vec2(w - wide - 2, high - tall - 2));
        for (Vec2 c : corners) {
            boolean free = true;
            for (int y = (int) ((c.y() - 1) * k); y < Math.min(image.getHeight(), (c.y() + tall) * k); y++)
                for (int x = (int) ((c.x() - 2) * k); free && x < Math.min(image.getWidth(), (c.x() + wide) * k); x++)
                    free = (image.getRGB(x, Math.max(0, y)) & 0xffffff) == scene.ground();
            if (free) return c;
        }
        return corners.getFirst();
    }

    /** An arrow along the opening direction; a ring with a dot or a cross when it points at the eye or away. */
    private void opening(double x, double y) {
        double raise = scene.view().raiseDeg();
        Letter small = Letter.SMALL.in(Ink.BLACK);
        if (Math.abs(raise) > 80) {
            paper.circle(x, y + 1.5, 1.5, Pen.THIN);
            if (raise > 0) paper.fillCircle(x, y + 1.5, 0.5, Ink.BLACK);
            else {
                paper.line(x - 1, y + 0.5, x + 1, y + 2.5, Pen.THIN);
                paper.line(x - 1, y + 2.5, x + 1, y + 0.5, Pen.THIN);
            }
            paper.text(x + 3, y + 2.6, "opens", small);
            return;
        }
        paper.line(x, y + 9, x, y + 2, new Pen(0.35, Ink.BLACK));
        paper.arrowHead(x, y, 0, -1, 3, Ink.BLACK);
        paper.text(x + 2, y + 7, "opens", small);
    }

    /** A bar of a round length in the unit of the scene; gives where it begins. */
    private double scale(double mmOnPaperPerMm, double right, double base) {
        double perUnit = mmOnPaperPerMm * scene.unit().mm();
        double wish = 24 / perUnit, ten = Math.pow(10, Math.floor(Math.log10(wish)));
        double length = wish >= 5 * ten ? 5 * ten : wish >= 2 * ten ? 2 * ten : ten;
        double bar = length * perUnit;
        int decimals = (int) Math.max(0, -Math.floor(Math.log10(length) + 1e-9));
        String text = String.format(Locale.ROOT, "%." + decimals + "f ", length)
                + scene.unit().symbol();
        double from = right - Typeface.width(text, Letter.SMALL) - 1.5 - bar, y = base - 1;
        paper.line(from, y, from + bar, y, new Pen(0.5, Ink.BLACK));
        paper.line(from, y - 1.2, from, y + 1.2, Pen.THIN);
        paper.line(from + bar, y - 1.2, from + bar, y + 1.2, Pen.THIN);
        paper.text(from + bar + 1.5, base, text, Letter.SMALL.in(Ink.BLACK));
        return from;
    }

    /** Writes what a map says: on the surface where a band has room, else in the margin with a leader. */
    private void readings(Picture p, Legend legend, double w, double high, double k, Vec2 corner) {
        double half = Typeface.width("< " + legend.figure(legend.scale().from()), Letter.SMALL) / 2;
        List<Placed> outside = new ArrayList<>();
        for (Bands.Place b : p.bandPlaces(half * k, 40 * k, 3)) {
            Vec2 at = new Vec2((b.x() + 0.5) / k, (b.y() + 0.5) / k);
            double least = legend.scale().from();
            String text = b.value() < least ? "< " + legend.figure(least) : legend.figure(b.value());
            int ground = legend.scale().rgb(b.value());
            if (b.room() >= half * k)
                paper.textCentred(at.x(), at.y(), text, Letter.SMALL.middle().in(Ink.readableOn(ground)));
            else if (b.room() > 0.25 * k) outside.add(new Placed(text, "", false, at, true));
        }
        margins(outside, w, high, corner);
    }

    /** Words in a circle or bare, and the place on the picture they belong to. */
    private record Placed(String words, String target, boolean circle, Vec2 point, boolean seen) {}

    private void callouts(Picture p, double w, double high, double k, Vec2 corner) {
        List<Placed> all = new ArrayList<>();
        for (Callout c : scene.callouts()) {
            Vec2 at = p.projection().onPicture(c.at()).times(1 / k);
            if (c.foot() != null) beside(at, p.projection().onPicture(c.foot()).times(1 / k));
            all.add(new Placed(c.number(), c.target(), true, at, p.sees(c.at())));
        }
        margins(all, w, high, corner);
    }

    /** A chain line from a place beside the body to where it is nearest. */
    private void beside(Vec2 at, Vec2 foot) {
        paper.line(at.x(), at.y(), foot.x(), foot.y(), Pen.CENTRE.in(Ink.BLACK));
        paper.circle(foot.x(), foot.y(), 0.4, Pen.THIN);
    }

    /** Shares words out to the two margins, the outermost first. */
    private void margins(List<Placed> all, double w, double high, Vec2 corner) {
        List<Placed> left = new ArrayList<>(), right = new ArrayList<>();
        int most = (int) Math.max(1, Math.floor((high - 18) / STEP));
        all.sort(Comparator.comparingDouble(q -> -Math.abs(q.point().x() - w / 2)));
        for (Placed q : all) {
            boolean toLeft = q.point().x() < w / 2;
            List<Placed> wanted = toLeft ? left : right, other = toLeft ? right : left;
            (wanted.size() < most || other.size() >= most ? wanted : other).add(q);
        }
        boolean above = corner.y() < high / 2, atLeft = corner.x() < w / 2;
        column(left, 6, above && atLeft ? 17 : 6, above || !atLeft ? high - 4 : high - 18);
        column(right, w - 6, above && !atLeft ? 17 : 6, above || atLeft ? high - 4 : high - 18);
    }

    /** Spreads words along a margin in the order of what they point at, each as near to its own height as the others allow. */
    private void column(List<Placed> side, double x, double top, double bottom) {
        side.sort(Comparator.comparingDouble(q -> q.point().y()));
        List<Double> wanted = side.stream().map(q -> q.point().y() - 3).toList();
        double[] y = Spread.along(wanted, STEP, top, bottom);
        uncross(side, x, y);
        for (int i = 0; i < y.length; i++) {
            Placed q = side.get(i);
            Vec2 at = new Vec2(x, y[i]);
            if (q.target().isEmpty()) set(paper, q, at);
            else paper.link(q.target(), inside -> set(inside, q, at));
        }
    }

    private static void set(Pencil on, Placed q, Vec2 at) {
        if (q.circle()) Dimensions.balloon(on, q.point(), at, q.words(), q.seen());
        else Dimensions.words(on, q.point(), at, q.words());
    }

    /** Swaps circles whose leaders cross; each swap makes the leaders shorter together, so this ends. */
    private static void uncross(List<Placed> side, double x, double[] y) {
        boolean again = true;
        for (int pass = 0; again && pass < 50; pass++) {
            again = false;
            for (int i = 0; i < y.length; i++) {
                for (int j = i + 1; j < y.length; j++) {
                    Vec2 a = side.get(i).point(), b = side.get(j).point();
                    if (!Line2D.linesIntersect(a.x(), a.y(), x, y[i], b.x(), b.y(), x, y[j])) continue;
                    Placed swapped = side.get(i);
                    side.set(i, side.get(j));
                    side.set(j, swapped);
                    again = true;
                }
            }
        }
    }
}
