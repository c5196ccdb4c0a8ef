package shotwright.drawing;

import java.awt.geom.Arc2D;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import shotwright.geom.Vec2;
import shotwright.region.Region;

/**
 * A mold half seen on its parting face, in the mold frame (x right, y up, mm): block, cavities, runner, gates, vents, dowels, screws, pins.
 * Each kind has its own form, so that none is told by tone alone.
 */
public final class LayoutDrawing {
    private final TechnicalView view = new TechnicalView();
    private final Set<Kind> kinds = EnumSet.noneOf(Kind.class);

    /** The block from corner to corner. */
    public LayoutDrawing block(Vec2 low, Vec2 high) {
        view.area(Region.rectangle(low, high), Ink.METAL_A, Texture.NONE, Pen.THICK);
        return this;
    }

    /** A cavity's outline on the parting face, with the edges seen in it as x₁ y₁ x₂ y₂. */
    public LayoutDrawing cavity(Region outline, List<double[]> edges) {
        view.area(outline, Ink.PAPER, Texture.NONE, Pen.THICK).lines(edges, new Pen(0.18, Ink.BLACK));
        return this;
    }

    /** Runner, sprue or gate: what plastic flows through, darker than the metal. */
    public LayoutDrawing feed(Region area) {
        kinds.add(Kind.FEED);
        view.area(area, Ink.METAL_DARK, Texture.NONE, Pen.THIN);
        return this;
    }

    /** Runner or gate that is cut into the other half: dashed. */
    public LayoutDrawing across(Region area) {
        kinds.add(Kind.ACROSS);
        view.area(area, -1, Texture.NONE, Pen.HIDDEN);
        return this;
    }

    /** A vent: pale, with a centre line. */
    public LayoutDrawing vent(Region area, Vec2 from, Vec2 to) {
        kinds.add(Kind.VENT);
        view.area(area, Ink.METAL_B, Texture.NONE, Pen.THIN).row(List.of(from, to), Pen.CENTRE);
        return this;
    }

    /** A dowel: quarters black and white. */
    public LayoutDrawing dowel(Vec2 at, double diameter) {
        kinds.add(Kind.DOWEL);
        view.circle(at, diameter, Ink.PAPER, Pen.THIN, true).draw(p -> quarters(p, at.x(), at.y(), diameter / 2));
        return this;
    }

    /** A screw: hole with its head or thread dashed round it. */
    public LayoutDrawing screw(Vec2 at, double holeDiameter, double headDiameter) {
        kinds.add(Kind.SCREW);
        view.circle(at, holeDiameter, Ink.PAPER, Pen.THIN, true).circle(at, headDiameter, -1, Pen.HIDDEN, false);
        return this;
    }

    /** A release pin. */
    public LayoutDrawing pin(Vec2 at, double diameter) {
        kinds.add(Kind.PIN);
        view.circle(at, diameter, Ink.METAL_DARK, Pen.THIN, true);
        return this;
    }

    /** Where the nozzle meets the mold. */
    public LayoutDrawing nozzle(Vec2 at, double diameter) {
        kinds.add(Kind.NOZZLE);
        view.circle(at, diameter, Ink.PAPER, Pen.THICK, true);
        return this;
    }

    /** A level line where a cut is taken, with its letter at both ends and arrows that say from which side it is seen. */
    public LayoutDrawing cutLine(Vec2 from, Vec2 to, String letter) {
        Vec2 seen = to.minus(from).unit().left();
        view.reserve(TechnicalView.Side.LEFT, 8).reserve(TechnicalView.Side.RIGHT, 8);
        view.draw(p -> {
            p.line(from.x(), from.y(), to.x(), to.y(), Pen.CUT);
            Pencil paper = p.paper();
            Vec2 a = p.onPaper(from.x(), from.y()), b = p.onPaper(to.x(), to.y());
            Vec2 d = b.minus(a).unit(), look = new Vec2(seen.x(), -seen.y());
            end(paper, a, d.times(-1), look, letter);
            end(paper, b, d, look, letter);
        });
        return this;
    }

    private static void end(Pencil paper, Vec2 at, Vec2 out, Vec2 look, String letter) {
        Vec2 foot = at.plus(out.times(2)), tip = foot.plus(look.times(5));
        paper.line(at.x(), at.y(), foot.x(), foot.y(), Pen.THICK);
        paper.line(foot.x(), foot.y(), tip.x(), tip.y(), Pen.THIN);
        paper.arrowHead(tip.x(), tip.y(), look.x(), look.y(), 2.5, Ink.BLACK);
        Vec2 name = foot.plus(look.times(2.5)).plus(out.times(2.4));
        paper.textCentred(name.x(), name.y(), letter, Letter.LABEL.middle().heavy());
    }

    public LayoutDrawing number(int number, Vec2 at) {
        view.number(number, at);
        return this;
    }

    public LayoutDrawing size(TechnicalView.Side side, Vec2 a, Vec2 b, String text) {
        view.size(side, a, b, text);
        return this;
    }

    public LayoutDrawing note(Vec2 at, String text) {
        view.note(at, text);
        return this;
    }

    /** A note in fewer words where the whole finds no free place. */
    public LayoutDrawing note(Vec2 at, String text, String inShort) {
        view.note(at, text, inShort);
        return this;
    }

    /** The drawing with its caption and, below, a sample of every kind that is in it with its word. */
    public Drawing drawing(String caption, double width, double height) {
        Pencil paper = Pencil.on(width, height);
        view.draw(paper, 0, 0, width, height - Key.HIGH, caption);
        Key.row(paper, 4, height - Key.HIGH / 2, kinds.stream().map(k -> k.key).toList());
        return paper.drawing(caption);
    }

    /** What a form means. */
    private enum Kind {
        FEED("runner, gate", (p, x, y) -> p.fillBox(x, y - 1.4, 6, 2.8, Ink.METAL_DARK)
                .box(x, y - 1.4, 6, 2.8, Pen.THIN)),
        ACROSS("in the other half", (p, x, y) -> p.box(x, y - 1.4, 6, 2.8, Pen.HIDDEN)),
        VENT("vent", (p, x, y) -> p.fillBox(x, y - 1.4, 6, 2.8, Ink.METAL_B)
                .box(x, y - 1.4, 6, 2.8, Pen.THIN)
                .line(x, y, x + 6, y, Pen.CENTRE)),
        DOWEL("dowel", (p, x, y) -> {
            p.fillCircle(x + 3, y, 1.6, Ink.PAPER);
            quarters(p, x + 3, y, 1.6);
            p.circle(x + 3, y, 1.6, Pen.THIN);
        }),
        SCREW("screw", (p, x, y) -> p.circle(x + 3, y, 0.9, Pen.THIN).circle(x + 3, y, 1.8, Pen.HIDDEN)),
        PIN("pin", (p, x, y) -> p.fillCircle(x + 3, y, 1.4, Ink.METAL_DARK)
                .circle(x + 3, y, 1.4, Pen.THIN)
                .centre(x + 3, y, 1.4)),
        NOZZLE("nozzle", (p, x, y) -> p.fillCircle(x + 3, y, 1.3, Ink.PAPER).circle(x + 3, y, 1.3, Pen.THICK));

        private final Key key;

        Kind(String word, Key.Sample sample) {
            key = new Key(word, sample);
        }
    }

    private static void quarters(Pencil p, double x, double y, double r) {
        for (int start = 0; start < 360; start += 180)
            p.fill(new Arc2D.Double(x - r, y - r, 2 * r, 2 * r, start, 90, Arc2D.PIE), Ink.BLACK);
    }
}
