package shotwright.report.half;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import shotwright.drawing.Body;
import shotwright.drawing.Creases;
import shotwright.drawing.Dimensions;
import shotwright.drawing.Drawing;
import shotwright.drawing.Ink;
import shotwright.drawing.Letter;
import shotwright.drawing.Pen;
import shotwright.drawing.Pencil;
import shotwright.drawing.RuledTable;
import shotwright.drawing.Section;
import shotwright.drawing.TechnicalView;
import shotwright.drawing.Texture;
import shotwright.drawing.Typeface;
import shotwright.geom.Plane;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.layout.Half;
import shotwright.layout.LayoutResult;
import shotwright.region.Region;

/**
 * The dimensioned drawing of one half: the view onto its parting face, a section beside it as the third-angle method places it (ISO 5456-2, from
 * memory), tables of holes and cuts with places from the datum corner, notes and title block. Scales after ISO 5455, sheets
 * after ISO 5457 (from memory).
 */
public final class HalfSheet {
    private static final double[] SCALES = {5, 2, 1, 0.5, 0.2, 0.1};
    private static final double[][] SHEETS = {{420, 297}, {594, 420}, {841, 594}};
    private static final double FRAME = 10, COLUMN = 144, INSIDE = 5;
    private static final double LEFT = 20, ABOVE = 24, BELOW = 34, BETWEEN = 16, BESIDE = 4;
    private static final double TITLE_HIGH = 50, LINE = 4.4;

    /** What is lower or shallower than this in a section is not dimensioned. */
    private static final double SHOWN_MM = 0.05;

    /**
     * Words of the title block.
     *
     * @param job what the job is called
     * @param customer for whom, empty when not known
     * @param file the part's file
     * @param stock what the half is sawn from
     * @param number tells this state of the half from any other
     */
    public record Title(String job, String customer, String file, String stock, String number) {}

    private final HalfFace face;
    private final LayoutResult layout;
    private final Title title;
    private final Sizes show;
    private final HalfTables tables;
    private final double sectionX;

    private HalfSheet(HalfFace face, LayoutResult layout, Title title, boolean inch) {
        this.face = face;
        this.layout = layout;
        this.title = title;
        show = new Sizes(inch);
        tables = new HalfTables(face, layout, show);
        sectionX = sectionX();
    }

    /** The sheet; places and sizes in mm or in inches. */
    public static Drawing drawing(HalfFace face, LayoutResult layout, Title title, boolean inch) {
        return new HalfSheet(face, layout, title, inch).drawing();
    }

    /** Along the melt's way through a gate that looks up or down the sheet; else through the middle of the first part. */
    private double sectionX() {
        return layout.gates().stream()
                .filter(g -> Math.abs(g.flow().y()) > 0.5)
                .findFirst()
                .map(g -> face.inView(g.atMm().xy()).x())
                .orElseGet(() -> face.parts().getFirst().box().centre().x());
    }

    private Drawing drawing() {
        double most = columnHeight();
        double[] size = SHEETS[SHEETS.length - 1];
        double scale = 0;
        for (int i = SHEETS.length - 1; i >= 0; i--) {
            double fits = scale(SHEETS[i]);
            if (most > SHEETS[i][1] - 2 * FRAME - 2 * INSIDE || fits < (i == 0 ? 0 : 1) && scale > 0) break;
            size = SHEETS[i];
            scale = fits;
        }
        Pencil paper = Pencil.on(size[0], size[1]);
        paper.fillBox(0, 0, size[0], size[1], Ink.WHITE);
        paper.box(FRAME, FRAME, size[0] - 2 * FRAME, size[1] - 2 * FRAME, Pen.FRAME);
        views(paper, size, scale);
        column(paper, size, scale);
        return paper.drawing("Half " + face.half() + " of " + title.job() + ", " + face.seen() + ", with a section");
    }

    /** The largest standard scale at which both views fit beside the column. */
    private double scale(double[] sheet) {
        Vec2 room = room(sheet);
        double wide = face.block().widthMm() + sectionWide(),
                high = face.block().heightMm();
        for (double s : SCALES) if (s * wide <= room.x() && s * high <= room.y()) return s;
        return SCALES[SCALES.length - 1];
    }

    private static Vec2 room(double[] sheet) {
        return new Vec2(sheet[0] - 2 * FRAME - COLUMN - LEFT - BETWEEN - BESIDE, sheet[1] - 2 * FRAME - ABOVE - BELOW);
    }

    private double sectionWide() {
        return face.thicknessMm() + face.proudMm();
    }

    private void views(Pencil paper, double[] sheet, double scale) {
        Vec2 room = room(sheet);
        double wide = scale * face.block().widthMm(),
                high = scale * face.block().heightMm();
        double spareX = Math.max(0, room.x() - wide - scale * sectionWide()) / 3;
        double spareY = Math.max(0, room.y() - high) / 2;
        double left = FRAME + LEFT + spareX, foot = FRAME + ABOVE + spareY + high;
        double datumX = face.half() == Half.A ? left + wide : left;
        double sectionLeft = left + wide + BETWEEN + spareX;
        face(paper, new Vec2(datumX, foot), scale);
        faceSizes(paper, left, foot, wide, high);
        datum(paper, datumX, foot);
        cutLine(paper, datumX + scale * sectionX, foot - high, foot);
        section(paper, sectionLeft + scale * face.proudMm(), foot, scale);
        String seen = face.half() == Half.A ? "A, turned over: parting face" : "B: parting face";
        double words = foot + BELOW - 9;
        paper.text(left + wide / 2, words, "half " + seen, Letter.LABEL.middle());
        paper.text(sectionLeft + scale * sectionWide() / 2, words, "section C–C", Letter.LABEL.middle());
    }

    private void face(Pencil paper, Vec2 origin, double scale) {
        Vec2 far = face.farCorner();
        TechnicalView v = new TechnicalView();
        v.area(Region.rectangle(Vec2.ZERO, far), Ink.METAL_A, Texture.NONE, Pen.THICK);
        Pen thin = Pen.THIN;
        face.steps().forEach(c -> v.contour(c, Ink.METAL_B, thin));
        for (HalfFace.Cut c : face.cuts()) if (vent(c)) v.contour(c.outline(), Ink.METAL_B, thin);
        for (HalfFace.Cut c : face.cuts()) if (!vent(c)) v.contour(c.outline(), Ink.METAL_DARK, thin);
        face.cavities().forEach(c -> v.contour(c, Ink.PAPER, Pen.THICK));
        face.cores().forEach(c -> v.contour(c, Ink.METAL_B, Pen.THICK));
        for (HalfFace.Hole h : face.holes()) {
            if (h.fromBack()) v.circle(h.at(), h.nearMm(), -1, Pen.HIDDEN, false);
            else v.circle(h.at(), h.nearMm(), Ink.PAPER, thin, true);
            if (!h.fromBack() && Math.abs(h.nearMm() - h.farMm()) > 1e-6)
                v.circle(h.at(), h.farMm(), -1, Pen.HIDDEN, false);
        }
        v.keepClear(Region.rectangle(new Vec2(sectionX - 0.2, 0), new Vec2(sectionX + 0.2, far.y())));
        for (HalfTables.Mark m : tables.marks()) v.note(m.at(), m.name());
        double left = origin.x() + scale * Math.min(0, far.x()),
                wide = scale * Math.abs(far.x()),
                high = scale * far.y();
        v.draw(paper, origin, scale, new Rectangle2D.Double(left + 1, origin.y() - high + 1, wide - 2, high - 2));
    }

    private static boolean vent(HalfFace.Cut c) {
        return c.kind() == HalfFace.Cut.Kind.VENT || c.kind() == HalfFace.Cut.Kind.VENT_CHANNEL;
    }

    private void faceSizes(Pencil paper, double left, double foot, double wide, double high) {
        Dimensions.across(
                paper,
                new Vec2(left, foot),
                new Vec2(left + wide, foot),
                foot + 16,
                show.length(face.block().widthMm()));
        Dimensions.upright(
                paper,
                new Vec2(left, foot),
                new Vec2(left, foot - high),
                left - 13,
                show.length(face.block().heightMm()));
    }

    /** The corner all places count from, with the ways in which x and y grow. */
    private void datum(Pencil paper, double x, double y) {
        double side = face.half() == Half.A ? -1 : 1;
        paper.fillCircle(x, y, 1.1, Ink.BLACK);
        paper.line(x, y + 3.2, x + side * 14, y + 3.2, Pen.THIN);
        paper.arrowHead(x + side * 14, y + 3.2, side, 0, 2.5, Ink.BLACK);
        paper.text(x + side * 16.2, y + 4.3, "x", Letter.LABEL.middle());
        double up = x - side * 3.2;
        paper.line(up, y, up, y - 14, Pen.THIN);
        paper.arrowHead(up, y - 14, 0, -1, 2.5, Ink.BLACK);
        paper.text(up, y - 15.2, "y", Letter.LABEL.middle());
        Letter word = side < 0 ? Letter.LABEL.heavy() : Letter.LABEL.heavy().end();
        paper.text(x - side * 2, y + 6, "datum", word);
    }

    /** Where the section is taken, seen from the right. */
    private void cutLine(Pencil paper, double x, double top, double foot) {
        for (double[] end : new double[][] {{top, -1}, {foot, 1}}) {
            double at = end[0], out = end[1];
            paper.line(x, at + 1 * out, x, at + 7 * out, Pen.THICK);
            paper.line(x + 7, at + 5 * out, x, at + 5 * out, Pen.THIN);
            paper.arrowHead(x + 0.4, at + 5 * out, -1, 0, 2.5, Ink.BLACK);
            paper.textCentred(x + 9.5, at + 5 * out, "C", Letter.LABEL.heavy().middle());
        }
        paper.line(x, top - 1, x, foot + 1, Pen.CUT);
    }

    private void section(Pencil paper, double faceX, double foot, double scale) {
        Plane plane = new Plane(Vec3.X, sectionX);
        Creases creases = Creases.of(face.mesh());
        Body body = face.half() == Half.A ? Body.halfA(creases) : Body.halfB(creases);
        Region metal = Section.of(face.mesh(), plane).region();
        if (metal.isEmpty()) return;
        TechnicalView.section(List.of(body), plane).draw(paper.upright(faceX, foot, scale));
        double high = scale * face.block().heightMm(), back = faceX + scale * face.thicknessMm();
        Dimensions.across(
                paper, new Vec2(faceX, foot), new Vec2(back, foot), foot + 16, show.length(face.thicknessMm()));
        double top = foot - high, proud = Math.max(0, metal.max().y()), level = top - 6;
        if (proud > SHOWN_MM) {
            Vec2 tip = new Vec2(faceX - scale * proud, top);
            Dimensions.across(paper, tip, new Vec2(faceX, top), level, show.length(proud));
            level -= 8;
        }
        double deep = deepest(plane);
        if (deep > SHOWN_MM) {
            Vec2 floor = new Vec2(faceX + scale * deep, top);
            Dimensions.across(paper, new Vec2(faceX, top), floor, level, show.length(deep));
        }
    }

    /** How deep the cavities go in a section. */
    private double deepest(Plane plane) {
        return face.parts().stream()
                .map(p -> Section.of(p, plane).region())
                .filter(r -> !r.isEmpty())
                .mapToDouble(r -> -r.min().y())
                .max()
                .orElse(0);
    }

    private double columnHeight() {
        double tables = this.tables.holes().height() + this.tables.cuts().height() + 8;
        return tables + notes().size() * LINE + 8 + TITLE_HIGH;
    }

    private void column(Pencil paper, double[] sheet, double scale) {
        double x = sheet[0] - FRAME - COLUMN, y = FRAME, wide = COLUMN - 2 * INSIDE;
        paper.line(x, FRAME, x, sheet[1] - FRAME, Pen.THIN);
        y += INSIDE;
        for (RuledTable t : List.of(tables.holes(), tables.cuts())) {
            if (t.isEmpty()) continue;
            t.draw(paper, x + INSIDE, y, wide);
            y += t.height() + 4;
        }
        double foot = sheet[1] - FRAME - TITLE_HIGH;
        List<String> notes = notes();
        double at = foot - LINE * notes.size() - 2.5;
        for (String n : notes) paper.text(x + INSIDE, at += LINE, n, Letter.SMALL.in(Ink.BLACK));
        titleBlock(paper, x, foot, scale);
    }

    private List<String> notes() {
        List<String> lines = new ArrayList<>();
        for (String n : List.of(
                "Places are measured from the datum corner, the same corner of the closed mold in both halves.",
                "Cavity and core as in the part's file, grown for shrink of " + percent(layout.shrinkX()) + " along x, "
                        + percent(layout.shrinkY()) + " along y, " + percent(layout.shrinkZ())
                        + " along the pull; within "
                        + show.tolerance(0.02) + " (common practice).",
                "Dowel holes in one clamping with the cavity, within " + show.tolerance(0.01)
                        + " of their places (common practice).",
                "Where nothing is said: ISO 2768-1 class m (from memory), up to " + show.upTo(6) + " "
                        + show.tolerance(0.1) + ", " + show.upTo(30) + " " + show.tolerance(0.2) + ", " + show.upTo(120)
                        + " " + show.tolerance(0.3) + ", " + show.upTo(400) + " " + show.tolerance(0.5) + ".",
                "Break outside edges only; never the parting line, gate, vents or shut-offs. Before the vents, touch off on the"
                        + " finished parting face.")) lines.addAll(wrapped(n));
        return lines;
    }

    private static List<String> wrapped(String note) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : note.split(" ")) {
            if (Typeface.width(line + " " + word, Letter.SMALL) > COLUMN - 2 * INSIDE) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    private static String percent(double share) {
        return shotwright.measure.Digits.fixed(100 * share, 2) + " %";
    }

    private void titleBlock(Pencil paper, double x, double y, double scale) {
        double wide = COLUMN, row = TITLE_HIGH / 4;
        paper.line(x, y, x + wide, y, Pen.THICK);
        for (int r = 1; r < 4; r++) paper.line(x, y + r * row, x + wide, y + r * row, Pen.THIN);
        cell(
                paper,
                x,
                y,
                0.72 * wide,
                row,
                "job",
                title.job() + (title.customer().isEmpty() ? "" : ", " + title.customer()));
        cell(paper, x + 0.72 * wide, y, 0.28 * wide, row, "half", String.valueOf(face.half()));
        cell(paper, x, y + row, 0.5 * wide, row, "part file", title.file());
        cell(paper, x + 0.5 * wide, y + row, 0.5 * wide, row, "sawn from", title.stock());
        double third = wide / 6;
        cell(
                paper,
                x,
                y + 2 * row,
                third,
                row,
                "scale",
                scale >= 1 ? (int) scale + " : 1" : "1 : " + Math.round(1 / scale));
        cell(paper, x + third, y + 2 * row, third, row, "unit", show.unit());
        cell(paper, x + 2 * third, y + 2 * row, third, row, "third angle", "");
        projection(paper, x + 2.5 * third, y + 2.62 * row);
        cell(paper, x + 3 * third, y + 2 * row, 3 * third, row, "finished size", face.size(show::length));
        cell(paper, x, y + 3 * row, 2 * third, row, "this state of the half", title.number());
        cell(paper, x + 2 * third, y + 3 * row, 2 * third, row, "drawn and checked by", "");
        cell(paper, x + 4 * third, y + 3 * row, 2 * third, row, "date", "");
    }

    private static void cell(Pencil paper, double x, double y, double wide, double high, String label, String value) {
        paper.line(x, y, x, y + high, Pen.THIN);
        paper.text(x + 2, y + 3.6, label, Letter.SMALL);
        Letter letter = Letter.LABEL.sized(4.2);
        double needs = Typeface.width(value, letter), room = wide - 4;
        if (needs > room) letter = letter.sized(4.2 * room / needs);
        paper.text(x + 2, y + high - 2.6, value, letter);
    }

    /** The mark of the third-angle method: the round end view stands left of the cone. */
    private static void projection(Pencil paper, double x, double y) {
        paper.circle(x - 6, y, 2.6, Pen.THIN).circle(x - 6, y, 1.3, Pen.THIN);
        paper.row(
                List.of(
                        new Vec2(x + 1, y - 1.3),
                        new Vec2(x + 8, y - 2.6),
                        new Vec2(x + 8, y + 2.6),
                        new Vec2(x + 1, y + 1.3)),
                true,
                Pen.THIN);
        paper.line(x - 9.6, y, x + 9, y, Pen.CENTRE);
    }
}
