package shotwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import shotwright.drawing.Drawing;
import shotwright.drawing.LayoutDrawing;
import shotwright.drawing.TechnicalView.Side;
import shotwright.geom.Transform;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.layout.Block;
import shotwright.layout.Cavity;
import shotwright.layout.DowelPlace;
import shotwright.layout.FeedSegment;
import shotwright.layout.Gate;
import shotwright.layout.Half;
import shotwright.layout.LayoutResult;
import shotwright.layout.PinPlace;
import shotwright.layout.ScrewPlace;
import shotwright.layout.Vent;
import shotwright.part.PulledPart;
import shotwright.region.Region;

/** The parting face of each half with everything that is cut into it, mold frame. */
final class LayoutPictures {
    private final LayoutResult layout;
    private final PulledPart part;
    private final Numbers show;

    private LayoutPictures(LayoutResult layout, PulledPart part, boolean inch) {
        this.layout = layout;
        this.part = part;
        show = inch ? Numbers.inch() : Numbers.metric();
    }

    static void add(Map<String, Pictures.Draws> to, LayoutResult layout, PulledPart part, boolean inch) {
        LayoutPictures p = new LayoutPictures(layout, part, inch);
        to.put("40-layout-A", () -> p.half(Half.A));
        to.put("40-layout-B", () -> p.half(Half.B));
    }

    private Drawing half(Half half) {
        Block b = layout.block();
        Vec2 high = new Vec2(b.widthMm() / 2, b.heightMm() / 2), low = high.times(-1);
        LayoutDrawing d = new LayoutDrawing().block(low, high);
        for (Vent v : layout.vents()) if (v.half() == half) vent(d, v, Region.rectangle(low, high));
        for (FeedSegment f : layout.feed()) {
            if (f.half() == null || f.half() == half) d.feed(area(f));
            else d.across(area(f));
        }
        for (Cavity c : layout.cavities()) d.cavity(placed(part.shadow(), c.place()), List.of());
        holes(d, half);
        if (half == Half.A || layout.entry() == LayoutResult.NozzleEntry.PARTING_EDGE) {
            d.nozzle(flat(layout.nozzleMm()), 3);
            d.note(flat(layout.nozzleMm()), "nozzle");
        }
        gateNote(d, half);
        d.size(Side.BELOW, low, new Vec2(high.x(), low.y()), show.coarse(b.widthMm()));
        d.size(Side.LEFT, low, new Vec2(low.x(), high.y()), show.coarse(b.heightMm()));
        double thick = half == Half.A ? b.thicknessAMm() : b.thicknessBMm();
        String seen = half == Half.A ? ", seen through from its back" : ", seen on its parting face";
        return d.drawing("half " + half + ", " + show.coarse(thick) + " thick" + seen, 150, 150);
    }

    private void holes(LayoutDrawing d, Half half) {
        for (DowelPlace p : layout.dowels()) d.dowel(p.atMm(), p.diameterMm());
        for (ScrewPlace s : layout.screws()) {
            if (s.headHalf() == half) d.screw(s.atMm(), s.clearanceMm(), s.counterboreMm());
            else d.screw(s.atMm(), s.threadDrillMm(), s.clearanceMm());
        }
        for (PinPlace p : layout.release().pins()) if (p.half() == half) d.pin(p.atMm(), p.diameterMm());
    }

    private void gateNote(LayoutDrawing d, Half half) {
        if (layout.gates().isEmpty()) return;
        Gate g = layout.gates().getFirst();
        String size = show.length(g.widthMm()) + " × " + show.length(g.depthMm());
        String whole = "gate " + size + (g.half() == half ? "" : ", in half " + g.half());
        d.note(flat(g.atMm()), whole, size.replaceFirst(" (mm|in) ", " "));
    }

    private static void vent(LayoutDrawing d, Vent v, Region block) {
        Vec2 from = flat(v.atMm()), to = from.plus(v.out().times(v.landMm() + v.channelLengthMm()));
        d.vent(strip(from, to, v.widthMm(), v.widthMm()).intersection(block), from, to);
    }

    private static Region area(FeedSegment f) {
        Vec2 from = flat(f.fromMm()), to = flat(f.toMm());
        double wide = Math.max(f.from().widthMm(), f.to().widthMm());
        if (from.distance(to) < 1e-6) return Region.disc(from, wide / 2, 48);
        Region strip = strip(from, to, f.from().widthMm(), f.to().widthMm());
        if (f.kind() == FeedSegment.Kind.GATE) return strip;
        return Region.unionOf(List.of(
                strip, Region.disc(from, f.from().widthMm() / 2, 48), Region.disc(to, f.to().widthMm() / 2, 48)));
    }

    private static Region strip(Vec2 from, Vec2 to, double wideFrom, double wideTo) {
        Vec2 left = to.minus(from).unit().left();
        Vec2 a = left.times(wideFrom / 2), b = left.times(wideTo / 2);
        return Region.of(List.of(from.minus(a), to.minus(b), to.plus(b), from.plus(a)));
    }

    /** A region of the pulled frame in the mold frame. */
    static Region placed(Region region, Transform place) {
        List<Region> pieces = new ArrayList<>();
        for (Region r : region.pieces()) {
            List<List<Vec2>> holes = r.holes().stream().map(h -> ring(h, place)).toList();
            pieces.add(Region.of(ring(r.exteriors().getFirst(), place), holes));
        }
        return Region.unionOf(pieces);
    }

    private static List<Vec2> ring(List<Vec2> ring, Transform place) {
        return ring.stream().map(p -> flat(place.apply(p.atZ(0)))).toList();
    }

    static Vec2 flat(Vec3 p) {
        return new Vec2(p.x(), p.y());
    }
}
