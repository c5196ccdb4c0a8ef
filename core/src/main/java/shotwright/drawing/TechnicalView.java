package shotwright.drawing;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import shotwright.geom.Plane;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.region.Region;

/**
 * A flat view to scale, made of outlines, cuts, edges and circles in the view's own millimetres (x right, y up), with sizes and circle
 * numbers around it: thick outlines, thin edges, hatching at a fixed pitch on paper.
 */
public final class TechnicalView {
    /** Where a size stands. */
    public enum Side {
        BELOW,
        ABOVE,
        LEFT,
        RIGHT
    }

    private static final double LEVEL = 7.5;
    private static final double HATCH_PITCH = 2.25;
    private static final int EDGE_PIXELS = 1600;
    private static final Pen SEEN = new Pen(0.25, Ink.BLACK);

    private final List<Layer> layers = new ArrayList<>();
    private final List<Size> sizes = new ArrayList<>();
    private final List<Note> notes = new ArrayList<>();
    private final List<Shape> obstacles = new ArrayList<>();
    private final List<Balloon> balloons = new ArrayList<>();
    private final double[] reserved = new double[Side.values().length];
    private Vec2 low = new Vec2(Double.MAX_VALUE, Double.MAX_VALUE);
    private Vec2 high = new Vec2(-Double.MAX_VALUE, -Double.MAX_VALUE);

    private interface Layer {
        void draw(Pencil part);
    }

    private record Size(Side side, int level, Vec2 a, Vec2 b, String text) {}

    private record Note(Vec2 at, String text, String inShort) {}

    private record Balloon(String number, Vec2 at, String target) {}

    /** The outline of a body as its shadow has it, in the view's millimetres, and the edges that are seen. */
    public static TechnicalView outline(Body body, Region shadow, View view) {
        TechnicalView v = new TechnicalView();
        v.lines(Picture.visibleEdges(Scene.of(body).from(view), EDGE_PIXELS), SEEN);
        return v.area(shadow, -1, Texture.NONE, Pen.THICK);
    }

    /** Cut faces of bodies by one plane, with what is seen behind it. The plane's normal points to the eye. */
    public static TechnicalView section(List<Body> bodies, Plane plane) {
        return section(bodies, plane, List.of());
    }

    /**
     * What fills a part of a cut that no body fills.
     *
     * @param region where, in the plane's x and y
     * @param rgb its ground
     * @param texture its hatching
     */
    public record Room(Region region, int rgb, Texture texture) {}

    /** The same with rooms filled behind the cut faces and in front of what is seen. */
    public static TechnicalView section(List<Body> bodies, Plane plane, List<Room> rooms) {
        TechnicalView v = new TechnicalView();
        Scene scene = Scene.of(bodies.toArray(Body[]::new)).from(facing(plane)).cutBy(plane);
        v.lines(Picture.visibleEdges(scene, EDGE_PIXELS), SEEN);
        for (Room r : rooms) v.area(r.region(), r.rgb(), r.texture(), Pen.THIN);
        for (Body b : bodies) {
            Region r = Section.of(b.mesh(), plane).region();
            v.area(r, b.cutRgb() == Ink.PAPER ? -1 : b.cutRgb(), b.cutTexture(), Pen.THICK);
        }
        return v;
    }

    /** One body cut, hatched as a body alone is. */
    public static TechnicalView section(Creases creases, Plane plane) {
        return section(List.of(new Body(creases, FacetPaint.of(Material.PLASTIC), Ink.PAPER, Texture.HATCH_A)), plane);
    }

    /** The view whose eye looks straight at a plane, upright as in {@link Section}. */
    private static View facing(Plane plane) {
        Vec3 n = plane.normal();
        if (Math.abs(n.z()) > 0.99) return n.z() > 0 ? View.fromA() : View.fromB();
        double raise = Math.toDegrees(Math.asin(Math.clamp(n.z(), -1, 1)));
        return new View("cut", Vec3.Z, Math.toDegrees(Math.atan2(n.x(), -n.y())), raise);
    }

    /** An area with ground (−1 for none), hatching and border. */
    public TechnicalView area(Region region, int rgb, Texture texture, Pen border) {
        if (region.isEmpty()) return this;
        take(region.min());
        take(region.max());
        Shape shape = path(region);
        obstacles.add(shape);
        layers.add(part -> {
            if (rgb >= 0) part.fill(shape, rgb);
            part.hatch(shape, texture, HATCH_PITCH);
            part.shape(shape, border);
        });
        return this;
    }

    /** Separate straight lines x₁ y₁ x₂ y₂. */
    public TechnicalView lines(List<double[]> lines, Pen pen) {
        Path2D all = new Path2D.Double();
        for (double[] l : lines) {
            all.moveTo(l[0], l[1]);
            all.lineTo(l[2], l[3]);
            take(new Vec2(l[0], l[1]));
            take(new Vec2(l[2], l[3]));
        }
        layers.add(part -> part.shape(all, pen));
        return this;
    }

    /** An outline of lines and arcs with ground, −1 for none. */
    public TechnicalView contour(Contour c, int rgb, Pen border) {
        Shape shape = c.shape();
        Rectangle2D box = shape.getBounds2D();
        take(new Vec2(box.getMinX(), box.getMinY()));
        take(new Vec2(box.getMaxX(), box.getMaxY()));
        obstacles.add(shape);
        layers.add(part -> {
            if (rgb >= 0) part.fill(shape, rgb);
            part.shape(shape, border);
        });
        return this;
    }

    /** Notes keep off this area if they can. */
    public TechnicalView keepClear(Region region) {
        obstacles.add(path(region));
        return this;
    }

    /** A row of points. */
    public TechnicalView row(List<Vec2> points, Pen pen) {
        points.forEach(this::take);
        layers.add(part -> part.row(points, false, pen));
        return this;
    }

    /** A circle, with centre lines when asked. */
    public TechnicalView circle(Vec2 centre, double diameter, int rgb, Pen pen, boolean centreLines) {
        double r = diameter / 2;
        take(centre.plus(new Vec2(r, r)));
        take(centre.minus(new Vec2(r, r)));
        obstacles.add(new Ellipse2D.Double(centre.x() - r, centre.y() - r, diameter, diameter));
        layers.add(part -> {
            if (rgb >= 0) part.fillCircle(centre.x(), centre.y(), r, rgb);
            part.circle(centre.x(), centre.y(), r, pen);
            if (centreLines) part.centre(centre.x(), centre.y(), r);
        });
        return this;
    }

    /** Anything else, drawn with a pencil in the view's millimetres; does not count for the extent. */
    public TechnicalView draw(java.util.function.Consumer<Pencil> drawing) {
        layers.add(drawing::accept);
        return this;
    }

    /** A size between two points on a side; sizes on one side are stacked outwards in the order they are given. */
    public TechnicalView size(Side side, Vec2 a, Vec2 b, String text) {
        int level = (int) sizes.stream().filter(s -> s.side() == side).count();
        sizes.add(new Size(side, level, a, b, text));
        return this;
    }

    /** Overall width below and height at the left, to a tenth; call it after the other sizes, so that it stands outside them. */
    public TechnicalView overall() {
        Vec2 s = high.minus(low);
        size(Side.BELOW, low, new Vec2(high.x(), low.y()), tenth(s.x()));
        return size(Side.LEFT, low, new Vec2(low.x(), high.y()), tenth(s.y()));
    }

    /** Keeps paper free between the view and its sizes. */
    public TechnicalView reserve(Side side, double mmOnPaper) {
        reserved[side.ordinal()] = Math.max(reserved[side.ordinal()], mmOnPaper);
        return this;
    }

    /** A word with a leader to a point; it stands where it covers least of what is drawn. */
    public TechnicalView note(Vec2 at, String text) {
        return note(at, text, text);
    }

    /** The same in fewer words where the whole finds no free place. */
    public TechnicalView note(Vec2 at, String text, String inShort) {
        notes.add(new Note(at, text, inShort));
        return this;
    }

    /** A name left of the view at a height of it. */
    public TechnicalView name(String text, double y) {
        reserve(Side.LEFT, 8);
        return draw(p -> {
            Vec2 at = p.onPaper(low.x(), y);
            p.paper().textCentred(at.x() - 6, at.y(), text, Letter.NAME);
        });
    }

    public TechnicalView number(int number, Vec2 at) {
        return number(Integer.toString(number), at, "");
    }

    public TechnicalView number(String number, Vec2 at, String target) {
        balloons.add(new Balloon(number, at, target));
        return this;
    }

    public Vec2 low() {
        return low;
    }

    public Vec2 high() {
        return high;
    }

    /** The view fitted on a sheet, a caption below; empty for none. */
    public Drawing drawing(String caption, double width, double height) {
        Pencil paper = Pencil.on(width, height);
        draw(paper, 0, 0, width, height, caption);
        return paper.drawing(caption.isEmpty() ? "view to scale" : caption);
    }

    /** The view fitted into a rectangle of a sheet; gives its scale. */
    public double draw(Pencil paper, double x, double y, double width, double height, String caption) {
        if (low.x() > high.x()) throw new IllegalArgumentException("view: there is nothing to draw");
        double left = margin(Side.LEFT), right = margin(Side.RIGHT), top = margin(Side.ABOVE);
        double bottom = margin(Side.BELOW) + (caption.isEmpty() ? 0 : 6);
        if (!balloons.isEmpty()) top += 2 * Dimensions.BALLOON + 3;
        double w = width - left - right, h = height - top - bottom;
        if (w < 5 || h < 5) throw new IllegalArgumentException("sheet: " + width + " × " + height + " mm is too small");
        Vec2 extent = high.minus(low), middle = low.plus(high).times(0.5);
        double scale = Math.min(w / Math.max(1e-9, extent.x()), h / Math.max(1e-9, extent.y()));
        double px = x + left + w / 2 - scale * middle.x(), py = y + top + h / 2 + scale * middle.y();
        Pencil part = paper.at(px, py, scale);
        layers.forEach(l -> l.draw(part));
        Frame f = new Frame(part.onPaper(low.x(), high.y()), part.onPaper(high.x(), low.y()));
        sizes.forEach(s -> size(paper, part, f, s));
        notes(paper, px, py, scale, new Rectangle2D.Double(x, y, width, height));
        balloons(paper, part, f, x, x + width);
        double foot = f.low().y() + margin(Side.BELOW) + 3.5;
        paper.text((f.high().x() + f.low().x()) / 2, foot, caption, Letter.SMALL.middle());
        return scale;
    }

    /** The bare view with a pencil set for it; neither sizes nor numbers. */
    public void draw(Pencil part) {
        layers.forEach(l -> l.draw(part));
    }

    /** The view and its notes at a scale, its origin at a place of the paper; the notes keep within a rectangle of the paper. */
    public void draw(Pencil paper, Vec2 origin, double scale, Rectangle2D within) {
        draw(paper.at(origin.x(), origin.y(), scale));
        notes(paper, origin.x(), origin.y(), scale, within);
    }

    private void notes(Pencil paper, double px, double py, double scale, Rectangle2D sheet) {
        AffineTransform place = new AffineTransform(scale, 0, 0, -scale, px, py);
        NotePlaces places = new NotePlaces(
                sheet, obstacles.stream().map(place::createTransformedShape).toList());
        for (Note n : notes) {
            Vec2 p = new Vec2(px + scale * n.at().x(), py - scale * n.at().y());
            String text = places.isCrowded(p, wide(n.text())) ? n.inShort() : n.text();
            Dimensions.note(paper, p, places.shelf(p, wide(text)), text);
        }
    }

    private static double wide(String text) {
        return Typeface.width(text, Letter.LABEL) + 1;
    }

    /** Upper left and lower right of the view on paper. */
    private record Frame(Vec2 high, Vec2 low) {}

    private void size(Pencil paper, Pencil part, Frame f, Size s) {
        Vec2 a = part.onPaper(s.a().x(), s.a().y()), b = part.onPaper(s.b().x(), s.b().y());
        double away = LEVEL * (s.level() + 1) + reserved[s.side().ordinal()];
        switch (s.side()) {
            case BELOW -> Dimensions.across(paper, a, b, f.low().y() + away, s.text());
            case ABOVE -> Dimensions.across(paper, a, b, f.high().y() - away + 1, s.text());
            case LEFT -> Dimensions.upright(paper, a, b, f.high().x() - away, s.text());
            case RIGHT -> Dimensions.upright(paper, a, b, f.low().x() + away, s.text());
        }
    }

    /** Circle numbers in a row above the view, from left to right as the points they belong to. */
    private void balloons(Pencil paper, Pencil part, Frame f, double from, double to) {
        record At(Balloon balloon, Vec2 point) {}
        List<At> row = new ArrayList<>();
        for (Balloon b : balloons) row.add(new At(b, part.onPaper(b.at().x(), b.at().y())));
        row.sort(java.util.Comparator.comparingDouble(a -> a.point().x()));
        double y = f.high().y() - margin(Side.ABOVE) - Dimensions.BALLOON - 2, r = Dimensions.BALLOON;
        List<Double> wanted = row.stream().map(a -> a.point().x() + 3).toList();
        double[] x = Spread.along(wanted, 2 * r + 1.5, from + r + 0.5, to - r - 0.5);
        for (int i = 0; i < x.length; i++) {
            At a = row.get(i);
            Vec2 centre = new Vec2(x[i], y);
            if (a.balloon().target().isEmpty())
                Dimensions.balloon(paper, a.point(), centre, a.balloon().number(), true);
            else
                paper.link(
                        a.balloon().target(),
                        in -> Dimensions.balloon(
                                in, a.point(), centre, a.balloon().number(), true));
        }
    }

    private double margin(Side side) {
        long levels = sizes.stream().filter(s -> s.side() == side).count();
        double words = side == Side.RIGHT && levels > 0 ? 6 : 0;
        return reserved[side.ordinal()] + (levels == 0 ? 3 : LEVEL * levels + 4 + words);
    }

    private void take(Vec2 p) {
        low = new Vec2(Math.min(low.x(), p.x()), Math.min(low.y(), p.y()));
        high = new Vec2(Math.max(high.x(), p.x()), Math.max(high.y(), p.y()));
    }

    static String tenth(double v) {
        return String.format(java.util.Locale.ROOT, "%.1f", v);
    }

    /** All rings of a region as one shape, even-odd. */
    static Shape path(Region region) {
        Path2D all = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        region.exteriors().forEach(r -> all.append(Pencil.path(r, true), false));
        region.holes().forEach(r -> all.append(Pencil.path(r, true), false));
        return all;
    }
}
