package shotwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import shotwright.drawing.Body;
import shotwright.drawing.Creases;
import shotwright.drawing.Drawing;
import shotwright.drawing.Ink;
import shotwright.drawing.Key;
import shotwright.drawing.Pencil;
import shotwright.drawing.Picture;
import shotwright.drawing.Scene;
import shotwright.drawing.Section;
import shotwright.drawing.TechnicalView;
import shotwright.drawing.Texture;
import shotwright.drawing.View;
import shotwright.geom.Plane;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.layout.Cavity;
import shotwright.layout.FeedSegment;
import shotwright.layout.Gate;
import shotwright.layout.LayoutResult;
import shotwright.measure.LengthUnit;
import shotwright.mold.MoldResult;
import shotwright.part.PulledPart;
import shotwright.region.Region;

/** The two halves on the bench, and the closed mold cut through the gate. */
final class MoldPictures {
    private static final double WIDE = 170;
    private static final double HIGH = 110;
    /** A feed may lie this much beside its centre line's width and depth and is still filled. */
    private static final double BESIDE_MM = 0.5;

    private final MoldResult mold;
    private final Body halfA;
    private final Body halfB;

    MoldPictures(MoldResult mold) {
        this.mold = mold;
        halfA = Body.halfA(Creases.of(mold.a().mesh()));
        halfB = Body.halfB(Creases.of(mold.b().mesh()));
    }

    void add(Map<String, Pictures.Draws> to, LayoutResult layout, PulledPart part, boolean inch) {
        LengthUnit unit = inch ? LengthUnit.IN : LengthUnit.MM;
        to.put("50-half-A", () -> Picture.drawing(halfA().in(unit), WIDE, 130, Pictures.DPI));
        to.put("50-half-B", () -> Picture.drawing(halfB().in(unit), WIDE, 130, Pictures.DPI));
        if (!layout.gates().isEmpty()) to.put("50-mold-cut", () -> cut(layout, part));
    }

    Scene halfA() {
        View view = View.first().along(Vec3.Z.times(-1)).named("half A turned over, parting face up");
        return Scene.of(halfA).from(view);
    }

    Scene halfB() {
        return Scene.of(halfB).from(View.first().named("half B, parting face up"));
    }

    private Drawing cut(LayoutResult layout, PulledPart part) {
        Gate gate = layout.gates().getFirst();
        Vec2 flow = gate.flow().length() > 0 ? gate.flow().unit() : new Vec2(1, 0);
        Vec3 normal = flow.left().atZ(0);
        Plane plane = new Plane(normal, normal.dot(gate.atMm()));
        List<Body> bodies = new ArrayList<>(List.of(halfA, halfB));
        for (Cavity c : layout.cavities()) bodies.add(Body.part(part.mesh().transform(c.place())));
        Pencil paper = Pencil.on(WIDE, HIGH);
        TechnicalView.section(bodies, plane, feed(layout, bodies, plane), Ink.METAL_DARK)
                .name("A", mold.a().mesh().box().centre().z())
                .name("B", mold.b().mesh().box().centre().z())
                .draw(paper, 0, 0, WIDE, HIGH - Key.HIGH, "closed mold cut along the gate");
        Key.row(
                paper,
                4,
                HIGH - Key.HIGH / 2,
                List.of(
                        Key.area("half A", Ink.WHITE, Texture.HATCH_A),
                        Key.area("half B", Ink.WHITE, Texture.HATCH_B),
                        Key.area("part", Ink.PLASTIC_CUT, Texture.NONE),
                        Key.area("sprue, runner, gate", Ink.METAL_DARK, Texture.NONE)));
        return paper.drawing("closed mold cut along the gate");
    }

    /** What the cut shows of the feed: room between the halves that lies along one of its pieces. */
    private Region feed(LayoutResult layout, List<Body> bodies, Plane plane) {
        Section cut = Section.of(bodies.getFirst().mesh(), plane);
        List<Region> ways = new ArrayList<>();
        for (FeedSegment s : layout.feed()) ways.add(way(s, cut));
        Region room = Region.unionOf(ways).intersection(outline(cut));
        for (Body b : bodies) room = room.difference(Section.of(b.mesh(), plane).region());
        return room;
    }

    /** The block seen in the cut. */
    private Region outline(Section cut) {
        List<Vec2> all = new ArrayList<>();
        for (Body half : List.of(halfA, halfB))
            Section.of(half.mesh(), cut.plane()).region().exteriors().forEach(all::addAll);
        double left = all.stream().mapToDouble(Vec2::x).min().orElse(0);
        double right = all.stream().mapToDouble(Vec2::x).max().orElse(0);
        double low = all.stream().mapToDouble(Vec2::y).min().orElse(0);
        double high = all.stream().mapToDouble(Vec2::y).max().orElse(0);
        return Region.rectangle(new Vec2(left, low), new Vec2(right, high));
    }

    /** Where a piece of the feed can be in a cut, its round ends with it; empty when the cut passes beside it. */
    private static Region way(FeedSegment s, Section cut) {
        double wide = Math.max(s.from().widthMm(), s.to().widthMm()) / 2 + BESIDE_MM;
        double deep = Math.max(s.from().depthMm(), s.to().depthMm()) + BESIDE_MM;
        double a = cut.plane().signedDistance(s.fromMm()), b = cut.plane().signedDistance(s.toMm());
        if (Math.min(a, b) > wide || Math.max(a, b) < -wide) return Region.EMPTY;
        List<Region> ends = new ArrayList<>();
        for (Vec3 end : List.of(s.fromMm(), s.toMm())) {
            Vec2 p = cut.inCut(end), out = new Vec2(wide, Math.max(wide, deep));
            ends.add(Region.rectangle(p.minus(out), p.plus(out)));
        }
        return Region.unionOf(ends).convexHull();
    }
}
