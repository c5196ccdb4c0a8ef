package shotwright.report.half;

import java.util.List;
import shotwright.drawing.Contour;
import shotwright.drawing.dxf.DxfFile;
import shotwright.drawing.dxf.DxfLayer;
import shotwright.drawing.dxf.DxfLayer.Line;
import shotwright.geom.Vec2;

/** A parting face as outlines on named layers, millimetres, origin at the datum corner. */
public final class HalfDxf {
    private static final DxfLayer BLOCK = new DxfLayer("BLOCK", 7, Line.CONTINUOUS);
    private static final DxfLayer DATUM = new DxfLayer("DATUM", 1, Line.CONTINUOUS);
    private static final DxfLayer CAVITY = new DxfLayer("CAVITY", 5, Line.CONTINUOUS);
    private static final DxfLayer CORE = new DxfLayer("CORE", 6, Line.CONTINUOUS);
    private static final DxfLayer STEP = new DxfLayer("PARTING_STEP", 8, Line.CONTINUOUS);
    private static final DxfLayer WORDS = new DxfLayer("TEXT", 7, Line.CONTINUOUS);
    private static final double DATUM_MM = 8;
    private static final double LETTER_MM = 2.5;

    private final HalfFace face;
    private final DxfFile file = new DxfFile();

    private HalfDxf(HalfFace face) {
        this.face = face;
    }

    /** The file's text; {@code name} says which job it is. */
    public static String text(HalfFace face, String name) {
        HalfDxf d = new HalfDxf(face);
        d.outlines();
        face.holes().forEach(d::hole);
        d.words(name);
        return d.file.text();
    }

    private void outlines() {
        Vec2 far = face.farCorner();
        file.contour(BLOCK, Contour.straight(List.of(Vec2.ZERO, new Vec2(far.x(), 0), far, new Vec2(0, far.y()))));
        double in = Math.signum(far.x()) * DATUM_MM;
        file.line(DATUM, Vec2.ZERO, new Vec2(in, 0)).line(DATUM, Vec2.ZERO, new Vec2(0, DATUM_MM));
        face.steps().forEach(c -> file.contour(STEP, c));
        face.cavities().forEach(c -> file.contour(CAVITY, c));
        face.cores().forEach(c -> file.contour(CORE, c));
        for (HalfFace.Cut c : face.cuts()) file.contour(layer(c.kind()), c.outline());
    }

    private static DxfLayer layer(HalfFace.Cut.Kind kind) {
        int colour =
                switch (kind) {
                    case SPRUE, RUNNER -> 3;
                    case GATE -> 2;
                    case VENT, VENT_CHANNEL -> 4;
                    case PRY -> 8;
                };
        return new DxfLayer(kind.name(), colour, Line.CONTINUOUS);
    }

    private void hole(HalfFace.Hole h) {
        String name = h.kind().name();
        int colour =
                switch (h.kind()) {
                    case DOWEL -> 1;
                    case SCREW -> 30;
                    case PIN -> 6;
                    case SPRUE, WELL -> 3;
                };
        DxfLayer seen = new DxfLayer(name, colour, Line.CONTINUOUS);
        DxfLayer behind = new DxfLayer(name + "_BACK", colour, Line.HIDDEN);
        file.circle(h.fromBack() ? behind : seen, h.at(), h.nearMm() / 2);
        if (Math.abs(h.nearMm() - h.farMm()) > 1e-6) file.circle(behind, h.at(), h.farMm() / 2);
    }

    private void words(String name) {
        double left = Math.min(0, face.farCorner().x()), y = -2 * LETTER_MM;
        for (String line : List.of(
                name,
                face.seen(),
                "millimetres; origin at the datum corner, marked on layer DATUM; nozzle side at the top")) {
            file.text(WORDS, new Vec2(left, y), LETTER_MM, line);
            y -= 1.6 * LETTER_MM;
        }
    }
}
