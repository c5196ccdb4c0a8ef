package shotwright.report.half;

import java.util.ArrayList;
import java.util.List;
import shotwright.drawing.RuledTable;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.layout.DowelPlace;
import shotwright.layout.FeedSegment;
import shotwright.layout.Gate;
import shotwright.layout.LayoutResult;
import shotwright.layout.PinPlace;
import shotwright.layout.PryRelief;
import shotwright.layout.ScrewPlace;
import shotwright.layout.Section;
import shotwright.layout.Vent;
import shotwright.stock.Fit;

/** The tables beside the view of a half: holes and cuts with their places from the datum corner, and a mark for each that stands in the view too. */
final class HalfTables {
    /** A hole whose size is this near to the middle of a fit's limits has that fit. */
    private static final double FIT_MM = 0.0015;

    /** Less is neither a cavity nor a core. */
    private static final double LEAST_MM = 0.05;

    private static final List<Fit> HOLE_FITS = List.of(Fit.H7, Fit.G7, Fit.F7, Fit.N7);

    /**
     * A mark in the view.
     *
     * @param at the thing it points to, in the view
     * @param name as in the tables
     */
    record Mark(Vec2 at, String name) {}

    private final HalfFace face;
    private final LayoutResult layout;
    private final Sizes show;
    private final List<Mark> marks = new ArrayList<>();
    private final RuledTable holes;
    private final RuledTable cuts;

    HalfTables(HalfFace face, LayoutResult layout, Sizes show) {
        this.face = face;
        this.layout = layout;
        this.show = show;
        holes = new RuledTable(List.of("hole", "for", "x", "y", "Ø", "limits", "deep"), List.of(2, 3));
        cuts = new RuledTable(List.of("cut", "for", "x", "y", "wide", "long", "deep"), List.of(2, 3, 4, 5));
        dowels();
        screws();
        pins();
        standing();
        heights();
        gates();
        runners();
        vents();
        pockets();
    }

    List<Mark> marks() {
        return List.copyOf(marks);
    }

    RuledTable holes() {
        return holes;
    }

    RuledTable cuts() {
        return cuts;
    }

    private void hole(String mark, String what, Vec2 at, String diameter, String limits, String deep) {
        marks.add(new Mark(at, mark));
        holes.row(mark, what, show.place(Math.abs(at.x())), show.place(at.y()), diameter, limits, deep);
    }

    /** A hole for a dowel or pin: the fit it has, else its size with limits as far apart as those of grade IT7 (ISO 286). */
    private void fit(String mark, String what, Vec2 at, double nominalMm, double holeMm, String deep) {
        for (Fit f : HOLE_FITS) {
            if (Math.abs(f.middleMm(nominalMm) - holeMm) > FIT_MM) continue;
            String limits = limits(nominalMm + f.lowUm(nominalMm) / 1000.0, nominalMm + f.highUm(nominalMm) / 1000.0);
            hole(mark, what, at, show.length(nominalMm) + " " + f.name(), limits, deep);
            return;
        }
        double half = (Fit.H7.highUm(nominalMm) - Fit.H7.lowUm(nominalMm)) / 2000.0;
        hole(mark, what, at, show.fine(holeMm) + " IT7", limits(holeMm - half, holeMm + half), deep);
    }

    private String limits(double lowMm, double highMm) {
        return show.fine(lowMm) + " to " + show.fine(highMm);
    }

    private String deep(double mm) {
        return mm >= face.thicknessMm() - 1e-6 ? "through" : show.length(mm);
    }

    private void dowels() {
        int n = 0;
        for (DowelPlace d : layout.dowels()) {
            boolean kept = d.holdHalf() == face.half();
            fit(
                    "D" + ++n,
                    kept ? "dowel, kept" : "dowel, slides",
                    face.inView(d.atMm()),
                    d.diameterMm(),
                    kept ? d.holdHoleMm() : d.slipHoleMm(),
                    deep(kept ? d.holdDepthMm() : d.slipDepthMm()));
        }
    }

    private void screws() {
        int n = 0;
        for (ScrewPlace s : layout.screws()) {
            String mark = "S" + ++n;
            Vec2 at = face.inView(s.atMm());
            if (s.headHalf() != face.half()) {
                if (s.threadDepthMm() > 0)
                    hole(
                            mark,
                            "thread, " + s.screw(),
                            at,
                            show.length(s.threadDrillMm()),
                            "drill",
                            deep(s.threadDepthMm()));
                continue;
            }
            hole(mark, "screw", at, show.length(s.clearanceMm()), "", "through");
            if (s.counterboreDepthMm() > 0)
                holes.row(
                        "",
                        "head, from back",
                        "",
                        "",
                        show.length(s.counterboreMm()),
                        "",
                        show.length(s.counterboreDepthMm()));
        }
    }

    private void pins() {
        List<HalfFace.Hole> wide = new ArrayList<>();
        int n = 0;
        for (PinPlace p : layout.release().pins()) {
            if (p.half() != face.half()) continue;
            String relief = "pin " + (layout.release().pins().indexOf(p) + 1) + ", relief";
            fit("P" + ++n, "pin", face.inView(p.atMm()), p.diameterMm(), p.holeMm(), "through");
            face.holes().stream().filter(h -> h.name().equals(relief)).forEach(wide::add);
        }
        reliefs(wide, n);
    }

    /** The wider holes for pins from the back, in one row where they are alike. */
    private void reliefs(List<HalfFace.Hole> wide, int pins) {
        if (wide.isEmpty()) return;
        double least = wide.stream().mapToDouble(HalfFace.Hole::depthMm).min().orElseThrow();
        double most = wide.stream().mapToDouble(HalfFace.Hole::depthMm).max().orElseThrow();
        String deep = most - least < 0.01 ? show.length(least) : show.length(least) + " to " + show.length(most);
        String which = pins == 1 ? "P1" : "P1–P" + pins;
        holes.row(which, "wider from back", "", "", show.length(wide.getFirst().nearMm()), "", deep);
    }

    /** Sprue and well. */
    private void standing() {
        for (HalfFace.Hole h : face.holes()) {
            boolean well = h.kind() == HalfFace.Hole.Kind.WELL;
            if (!well && h.kind() != HalfFace.Hole.Kind.SPRUE) continue;
            String taper = Math.abs(h.nearMm() - h.farMm()) > 1e-6 ? "far end " + show.length(h.farMm()) : "";
            hole(
                    well ? "W" : "E",
                    well ? "cold slug well" : "sprue",
                    h.at(),
                    show.length(h.nearMm()),
                    taper,
                    deep(h.depthMm()));
        }
    }

    /** A cut with its place; its mark points to another place of it. */
    private void cut(String mark, Vec3 marked, String what, Vec3 mold, double wideMm, double longMm, String deep) {
        Vec2 at = face.inView(mold.xy());
        marks.add(new Mark(face.inView(marked.xy()), mark));
        cuts.row(
                mark,
                what,
                show.place(Math.abs(at.x())),
                show.place(at.y()),
                show.length(wideMm),
                show.length(longMm),
                deep);
    }

    private void heights() {
        if (face.deepestMm() > LEAST_MM) cuts.row("", "cavity, deepest", "", "", "", "", show.length(face.deepestMm()));
        if (face.proudMm() > LEAST_MM) cuts.row("", "core, stands out", "", "", "", "", show.length(face.proudMm()));
    }

    private void gates() {
        for (Gate g : layout.gates()) {
            if (g.half() != face.half() || g.kind() == Gate.Kind.DIRECT) continue;
            String mark = layout.gates().size() == 1 ? "G" : "G" + g.cavity();
            Vec3 middle = g.atMm().minus(g.flow().times(g.landMm() / 2).atZ(0));
            cut(
                    mark,
                    middle,
                    g.kind().name().toLowerCase(java.util.Locale.ROOT) + " gate",
                    g.atMm(),
                    g.widthMm(),
                    g.landMm(),
                    show.length(g.depthMm()));
        }
    }

    private void runners() {
        int n = 0;
        for (FeedSegment s : layout.feed()) {
            boolean lying = Math.abs(s.fromMm().z() - s.toMm().z()) < 1e-6;
            if (!lying || s.kind() == FeedSegment.Kind.GATE || s.half() != null && s.half() != face.half()) continue;
            String what = shape(s.from())
                    + (s.kind() == FeedSegment.Kind.SPRUE
                            ? " sprue"
                            : s.kind() == FeedSegment.Kind.RUNNER ? " runner" : " slug");
            cut(
                    "R" + ++n,
                    s.fromMm().toward(s.toMm(), 0.5),
                    what,
                    s.toMm(),
                    s.to().widthMm(),
                    s.lengthMm(),
                    show.length(s.to().depthMm()));
        }
    }

    private static String shape(Section s) {
        return switch (s.shape()) {
            case ROUND -> "round";
            case HALF_ROUND -> "half round";
            case TRAPEZOID ->
                "trapezoid "
                        + shotwright.measure.Digits.figures(s.wallDraftDeg(), 2).replaceFirst("\\.0$", "") + "°";
            case RECTANGLE -> "square";
        };
    }

    private void vents() {
        int n = 0;
        for (Vent v : layout.vents()) {
            if (v.half() != face.half()) continue;
            Vec3 middle = v.atMm().plus(v.out().times(v.landMm() / 2).atZ(0));
            cut("V" + ++n, middle, "vent", v.atMm(), v.widthMm(), v.landMm(), show.fine(v.depthMm()));
            if (v.channelDepthMm() > 0 && v.channelLengthMm() > 0)
                cuts.row(
                        "",
                        "then to the edge",
                        "",
                        "",
                        show.length(v.widthMm()),
                        show.length(v.channelLengthMm()),
                        show.length(v.channelDepthMm()));
        }
    }

    private void pockets() {
        int n = 0;
        for (PryRelief p : layout.pry()) {
            if (p.half() != face.half()) continue;
            Vec2 a = face.inView(p.minMm()), b = face.inView(p.maxMm());
            Vec2 near = new Vec2(Math.min(Math.abs(a.x()), Math.abs(b.x())), Math.min(a.y(), b.y()));
            String mark = "K" + ++n;
            marks.add(new Mark(a.plus(b).times(0.5), mark));
            cuts.row(
                    mark,
                    "pry pocket, its corner",
                    show.place(near.x()),
                    show.place(near.y()),
                    show.length(Math.abs(b.x() - a.x())),
                    show.length(Math.abs(b.y() - a.y())),
                    show.length(p.depthMm()));
        }
    }
}
