package shotwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import shotwright.drawing.Body;
import shotwright.drawing.Drawing;
import shotwright.drawing.Picture;
import shotwright.drawing.Scene;
import shotwright.drawing.TechnicalView;
import shotwright.drawing.View;
import shotwright.geom.Plane;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.layout.Cavity;
import shotwright.layout.Gate;
import shotwright.layout.LayoutResult;
import shotwright.measure.LengthUnit;
import shotwright.mold.MoldResult;
import shotwright.part.PulledPart;

/** The two halves on the bench, and the closed mold cut through the gate. */
final class MoldPictures {
    private MoldPictures() {}

    static void add(
            Map<String, Pictures.Draws> to, MoldResult mold, LayoutResult layout, PulledPart part, boolean inch) {
        LengthUnit unit = inch ? LengthUnit.IN : LengthUnit.MM;
        to.put("50-half-A", () -> Picture.drawing(halfA(mold).in(unit), 170, 130, Pictures.DPI));
        to.put("50-half-B", () -> Picture.drawing(halfB(mold).in(unit), 170, 130, Pictures.DPI));
        if (!layout.gates().isEmpty()) to.put("50-mold-cut", () -> cut(mold, layout, part));
    }

    static Scene halfA(MoldResult mold) {
        View view = View.first().along(Vec3.Z.times(-1)).named("half A turned over, parting face up");
        return Scene.of(Body.halfA(mold.a().mesh())).from(view);
    }

    static Scene halfB(MoldResult mold) {
        View view = View.first().named("half B, parting face up");
        return Scene.of(Body.halfB(mold.b().mesh())).from(view);
    }

    private static Drawing cut(MoldResult mold, LayoutResult layout, PulledPart part) {
        Gate gate = layout.gates().getFirst();
        Vec2 flow = gate.flow().length() > 0 ? gate.flow().unit() : new Vec2(1, 0);
        Vec3 normal = flow.left().atZ(0);
        List<Body> bodies = new ArrayList<>(
                List.of(Body.halfA(mold.a().mesh()), Body.halfB(mold.b().mesh())));
        for (Cavity c : layout.cavities()) bodies.add(Body.part(part.mesh().transform(c.place())));
        Plane plane = new Plane(normal, normal.dot(gate.atMm()));
        return TechnicalView.section(bodies, plane)
                .name("A", mold.a().mesh().box().centre().z())
                .name("B", mold.b().mesh().box().centre().z())
                .drawing("closed mold cut along the gate; the part is dark", 170, 110);
    }
}
