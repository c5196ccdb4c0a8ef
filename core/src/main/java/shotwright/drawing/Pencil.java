package shotwright.drawing;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import shotwright.geom.Vec2;

/**
 * Lays marks on a sheet. A pencil on paper works in paper millimetres with y down; {@link #at} gives one that works in the millimetres of a
 * part, y up, at a scale. Weights of lines and sizes of letters are those of the paper with either.
 */
public final class Pencil {
    private final List<Mark> marks;
    private final double width;
    private final double height;
    private final AffineTransform place;

    private Pencil(List<Mark> marks, double width, double height, AffineTransform place) {
        this.marks = marks;
        this.width = width;
        this.height = height;
        this.place = place;
    }

    /** A pencil on an empty sheet of this size, mm. */
    public static Pencil on(double width, double height) {
        return new Pencil(new ArrayList<>(), width, height, new AffineTransform());
    }

    /** A pencil on the same sheet for a part whose origin lies at a place of the paper; y up, drawn at scale : 1. */
    public Pencil at(double paperX, double paperY, double scale) {
        return new Pencil(marks, width, height, new AffineTransform(scale, 0, 0, -scale, paperX, paperY));
    }

    /** The same turned a quarter to the left: the part's x runs up the page, its y to the left. */
    public Pencil upright(double paperX, double paperY, double scale) {
        return new Pencil(marks, width, height, new AffineTransform(0, -scale, -scale, 0, paperX, paperY));
    }

    /** What was drawn so far. */
    public Drawing drawing(String title) {
        return new Drawing(title, width, height, marks);
    }

    public double width() {
        return width;
    }

    public double height() {
        return height;
    }

    /** Where a point lies on the paper. */
    public Vec2 onPaper(double x, double y) {
        Point2D p = place.transform(new Point2D.Double(x, y), null);
        return new Vec2(p.getX(), p.getY());
    }

    /** A pencil on the same sheet that works in paper millimetres. */
    public Pencil paper() {
        return new Pencil(marks, width, height, new AffineTransform());
    }

    public Pencil line(double x1, double y1, double x2, double y2, Pen pen) {
        Line2D line = new Line2D.Double(x1, y1, x2, y2);
        return shape(line, pen.fitted(onPaper(x1, y1).distance(onPaper(x2, y2))));
    }

    public Pencil shape(Shape shape, Pen pen) {
        marks.add(new Mark.Line(place.createTransformedShape(shape), pen));
        return this;
    }

    public Pencil row(List<Vec2> points, boolean closed, Pen pen) {
        return shape(path(points, closed), pen);
    }

    public Pencil circle(double x, double y, double radius, Pen pen) {
        return shape(disc(x, y, radius), pen);
    }

    public Pencil box(double x, double y, double w, double h, Pen pen) {
        return shape(new Rectangle2D.Double(x, y, w, h), pen);
    }

    public Pencil fill(Shape shape, int rgb) {
        marks.add(new Mark.Fill(place.createTransformedShape(shape), rgb));
        return this;
    }

    public Pencil fillBox(double x, double y, double w, double h, int rgb) {
        return fill(new Rectangle2D.Double(x, y, w, h), rgb);
    }

    public Pencil fillCircle(double x, double y, double radius, int rgb) {
        return fill(disc(x, y, radius), rgb);
    }

    /** Parallel lines across an area; angle on the paper, counter-clockwise from the x axis, pitch in paper millimetres. */
    public Pencil hatch(Shape area, double angleDeg, double pitch, Pen pen) {
        marks.add(new Mark.Line(Hatch.lines(place.createTransformedShape(area), angleDeg, pitch), pen));
        return this;
    }

    /** The hatching of a texture: cut metal leaning, ruled upright; none for the others. */
    Pencil hatch(Shape area, Texture texture, double pitch) {
        return switch (texture) {
            case HATCH_A -> hatch(area, 45, pitch, Pen.HAIR);
            case HATCH_B -> hatch(area, -45, pitch, Pen.HAIR);
            case RULED -> hatch(area, 90, pitch / 2, Pen.HAIR);
            case NONE, CROSSED -> this;
        };
    }

    public Pencil text(double x, double y, String text, Letter letter) {
        return text(x, y, text, letter, 0);
    }

    /** Lettering turned to the left about its reference point. */
    public Pencil text(double x, double y, String text, Letter letter, double turnDeg) {
        if (text.isEmpty()) return this;
        Vec2 p = onPaper(x, y);
        marks.add(new Mark.Text(text, p.x(), p.y(), letter, turnDeg));
        return this;
    }

    /** Lettering whose middle, not its base line, stands at the height. */
    public Pencil textCentred(double x, double y, String text, Letter letter) {
        Vec2 p = onPaper(x, y);
        return paper().text(p.x(), p.y() + letter.capital() / 2, text, letter).back(this);
    }

    /** A slim filled arrow head with its tip at a point, pointing along a direction. */
    public Pencil arrowHead(double x, double y, double dx, double dy, double length, int rgb) {
        Vec2 tip = onPaper(x, y), d = onPaper(x + dx, y + dy).minus(tip).unit();
        Vec2 foot = tip.minus(d.times(length)), side = d.left().times(length * 0.16);
        Shape head = path(List.of(tip, foot.plus(side), foot.minus(side)), true);
        marks.add(new Mark.Fill(head, rgb));
        return this;
    }

    /** Centre lines of a circle, standing out a little. */
    public Pencil centre(double x, double y, double radius) {
        Vec2 p = onPaper(x, y);
        double r = radius * Math.abs(place.getScaleX()) + 2;
        paper().line(p.x() - r, p.y(), p.x() + r, p.y(), Pen.CENTRE)
                .line(p.x(), p.y() - r, p.x(), p.y() + r, Pen.CENTRE);
        return this;
    }

    public Pencil pixels(BufferedImage image, double x, double y, double w, double h) {
        marks.add(new Mark.Pixels(image, x, y, w, h));
        return this;
    }

    /** What is drawn inside leads to a place in the text. */
    public Pencil link(String target, Consumer<Pencil> inside) {
        List<Mark> own = new ArrayList<>();
        inside.accept(new Pencil(own, width, height, place));
        marks.add(new Mark.Link(target, own));
        return this;
    }

    /** Another drawing laid on this sheet, its corner at a place of the paper. */
    public Pencil place(Drawing other, double x, double y) {
        AffineTransform by = AffineTransform.getTranslateInstance(x, y);
        for (Mark m : other.marks()) marks.add(moved(m, by, x, y));
        return this;
    }

    private static Mark moved(Mark mark, AffineTransform by, double x, double y) {
        return switch (mark) {
            case Mark.Line l -> new Mark.Line(by.createTransformedShape(l.shape()), l.pen());
            case Mark.Fill f -> new Mark.Fill(by.createTransformedShape(f.shape()), f.rgb());
            case Mark.Text t -> new Mark.Text(t.text(), t.x() + x, t.y() + y, t.letter(), t.turnDeg());
            case Mark.Pixels p -> new Mark.Pixels(p.image(), p.x() + x, p.y() + y, p.width(), p.height());
            case Mark.Link k ->
                new Mark.Link(
                        k.target(),
                        k.marks().stream().map(m -> moved(m, by, x, y)).toList());
        };
    }

    private Pencil back(Pencil to) {
        return to;
    }

    /** A row of points as a path. */
    public static Path2D path(List<Vec2> points, boolean closed) {
        Path2D p = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        for (int i = 0; i < points.size(); i++) {
            Vec2 v = points.get(i);
            if (i == 0) p.moveTo(v.x(), v.y());
            else p.lineTo(v.x(), v.y());
        }
        if (closed && !points.isEmpty()) p.closePath();
        return p;
    }

    private static Shape disc(double x, double y, double r) {
        return new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r);
    }
}
