package shotwright.drawing;

import java.awt.geom.Path2D;
import java.util.List;
import java.util.Locale;

/**
 * Cutters hung to scale from one line: the first part of the cutter or its holder that does not go into the cavity. A heavy line shows how
 * deep each has to go; what is missing is written beside it.
 */
public final class CutterReach {
    private static final double TOP = 13;

    /** Form of the cutting end. */
    public enum Tip {
        FLAT,
        BALL,
        POINT
    }

    /**
     * One cutter.
     *
     * @param name its place on the rack or in the program
     * @param form what it is, for example {@code "flat 1.0"}
     * @param diameterMm over the flutes, at the tip for a tapered one
     * @param taperDeg lean of the flank, 0 for a straight one
     * @param fluteMm length of the flutes
     * @param neckMm diameter of the neck above the flutes
     * @param reachMm from the tip to the first part that does not fit
     * @param tip form of the end
     * @param neededMm how deep it has to go
     * @param owned false for one that must be bought
     */
    public record Tool(
            String name,
            String form,
            double diameterMm,
            double taperDeg,
            double fluteMm,
            double neckMm,
            double reachMm,
            Tip tip,
            double neededMm,
            boolean owned) {
        public Tool {
            if (!(diameterMm > 0 && reachMm > 0))
                throw new IllegalArgumentException(
                        "cutter " + name + ": diameter " + diameterMm + ", reach " + reachMm);
        }

        double missing() {
            return neededMm - reachMm;
        }
    }

    private CutterReach() {}

    public static Drawing drawing(List<Tool> tools, double width, double height) {
        if (tools.isEmpty()) throw new IllegalArgumentException("cutters: there is none to draw");
        Pencil p = Pencil.on(width, height);
        double deepest = tools.stream()
                .mapToDouble(t -> Math.max(t.reachMm(), t.neededMm()))
                .max()
                .orElse(1);
        double widest = tools.stream().mapToDouble(CutterReach::widest).max().orElse(1);
        double left = 12, column = (width - left) / tools.size();
        double scale = Math.min((height - TOP - 18) / deepest, column * 0.42 / widest);
        Axis depth = Axis.fromZero("", 0, deepest);
        p.text(0, 4, "mm it can go in", Letter.SMALL);
        double bottom = TOP + scale * deepest;
        for (double t : depth.ticks(6)) {
            double y = TOP + scale * t;
            if (y > bottom + 1e-6) continue;
            p.text(left - 4, y + 1, depth.figure(t), Letter.SMALL.end());
            if (t > 0) p.line(left - 2, y, width, y, new Pen(0.18, Ink.HAIR));
        }
        for (int i = 0; i < tools.size(); i++) tool(p, tools.get(i), left + column * (i + 0.42), column, scale, bottom);
        p.line(left - 2, TOP, width, TOP, Pen.THICK);
        return p.drawing("What each cutter must reach, millimetres");
    }

    private static double widest(Tool t) {
        double taper = 2 * t.fluteMm() * Math.tan(Math.toRadians(t.taperDeg()));
        return Math.max(t.neckMm(), t.diameterMm() + taper);
    }

    private static void tool(Pencil p, Tool t, double x, double column, double scale, double bottom) {
        Path2D outline = outline(t, x, scale);
        int ink = t.owned() ? Ink.BLACK : Ink.BLUE;
        Pen pen = t.owned() ? Pen.THIN : new Pen(0.3, ink).dashed(1.1, 0.8);
        double collar = Math.max(2.2, widest(t) * scale / 2 + 1);
        if (t.owned()) {
            p.fillBox(x - collar, TOP - 3.6, 2 * collar, 3.6, Ink.METAL_DARK);
            p.fill(outline, Ink.METAL_B);
        }
        p.box(x - collar, TOP - 3.6, 2 * collar, 3.6, pen).shape(outline, pen);
        flutes(p, t, x, scale, ink);
        double need = TOP + scale * t.neededMm(), tip = TOP + scale * t.reachMm(), half = collar + 1.5;
        p.line(x - half, need, x + half, need, new Pen(0.6, Ink.BLACK));
        p.text(
                x + half + 0.8,
                need + (need < TOP + 3 ? 3.4 : 1),
                TechnicalView.tenth(t.neededMm()),
                Letter.SMALL.in(Ink.BLACK));
        boolean tooShort = t.missing() > 1e-9;
        if (tooShort) {
            p.line(x, tip, x, need, new Pen(0.4, Ink.OXIDE));
            Letter letter = Letter.SMALL.end().heavy().in(Ink.OXIDE);
            p.text(x - half + 0.5, (tip + need) / 2 + 1, TechnicalView.tenth(t.missing()), letter);
        }
        double y = bottom + 6;
        p.text(x, y, t.name(), Letter.SMALL.middle().heavy().in(ink));
        p.text(x, y + 3.7, t.form(), Letter.SMALL.middle().in(t.owned() ? Ink.GREY : ink));
        String spare = tooShort
                ? "stops short"
                : !t.owned() ? "to buy" : String.format(Locale.ROOT, "%.1f to spare", -t.missing());
        Letter last = tooShort || !t.owned() ? Letter.SMALL.middle().heavy() : Letter.SMALL.middle();
        double fit = Math.min(last.size(), last.size() * (column - 1) / Typeface.width(spare, last));
        p.text(x, y + 7.4, spare, last.sized(fit).in(tooShort ? Ink.OXIDE : t.owned() ? Ink.GREY : ink));
    }

    private static Path2D outline(Tool t, double x, double k) {
        double r = t.diameterMm() / 2 * k, flute = Math.min(t.fluteMm(), t.reachMm()) * k, tip = TOP + t.reachMm() * k;
        double up = r + flute * Math.tan(Math.toRadians(t.taperDeg())), neck = t.neckMm() / 2 * k;
        Path2D o = new Path2D.Double();
        o.moveTo(x - neck, TOP);
        o.lineTo(x - neck, tip - flute);
        o.lineTo(x - up, tip - flute);
        switch (t.tip()) {
            case FLAT -> {
                o.lineTo(x - r, tip);
                o.lineTo(x + r, tip);
            }
            case POINT -> o.lineTo(x, tip);
            case BALL -> {
                double c = tip - Math.min(r, flute), q = 0.5523 * r;
                o.lineTo(x - r, c);
                o.curveTo(x - r, c + q, x - q, tip, x, tip);
                o.curveTo(x + q, tip, x + r, c + q, x + r, c);
            }
        }
        o.lineTo(x + up, tip - flute);
        o.lineTo(x + neck, tip - flute);
        o.lineTo(x + neck, TOP);
        o.closePath();
        return o;
    }

    private static void flutes(Pencil p, Tool t, double x, double k, int ink) {
        double r = t.diameterMm() / 2 * k;
        if (r < 0.4) return;
        double end = TOP + t.reachMm() * k;
        double flute = Math.min(t.fluteMm(), t.reachMm()) * k;
        double stop = t.tip() == Tip.FLAT ? 0 : r;
        for (double y = end - flute + 2 * r; y <= end - stop + 1e-9; y += Math.max(1.6, 2.4 * r))
            p.line(x - r, y, x + r, Math.max(y - 2 * r, end - flute), new Pen(0.13, ink));
    }
}
