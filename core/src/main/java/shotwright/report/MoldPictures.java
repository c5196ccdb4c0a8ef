package shotwright.report;

import java.util.List;
import java.util.Map;
import shotwright.drawing.Body;
import shotwright.drawing.Creases;
import shotwright.drawing.Drawing;
import shotwright.drawing.Picture;
import shotwright.drawing.Scene;
import shotwright.drawing.View;
import shotwright.geom.Plane;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.layout.Gate;
import shotwright.layout.LayoutResult;
import shotwright.measure.LengthUnit;
import shotwright.mesh.TriMesh;
import shotwright.mold.ConvexTool;
import shotwright.mold.MoldResult;
import shotwright.mold.Tools;
import shotwright.part.PulledPart;

/** The two halves on the bench, and the closed mold cut through the gate. */
final class MoldPictures {
    private static final double WIDE = 170;
    private static final double HIGH = 110;

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
        return cutThroughGate(layout, part).drawing("closed mold cut along the gate", WIDE, HIGH);
    }

    MoldCut cutThroughGate(LayoutResult layout, PulledPart part) {
        Gate gate = layout.gates().getFirst();
        Vec2 flow = gate.flow().length() > 0 ? gate.flow().unit() : new Vec2(1, 0);
        Vec3 normal = flow.left().atZ(0);
        List<TriMesh> parts = layout.cavities().stream()
                .map(c -> part.mesh().transform(c.place()))
                .toList();
        List<ConvexTool> tools = Tools.of(layout, mold.stepMm(), parts);
        return new MoldCut(halfA, halfB, parts, tools, new Plane(normal, normal.dot(gate.atMm())));
    }
}
