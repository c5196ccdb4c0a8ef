package shotwright.brep;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.geom.Vec3;

/** A closed flat outline of straight lines and circular arcs. */
public final class Outline {
    private record Piece(Vec3 fromMm, @Nullable Vec3 overMm, Vec3 toMm) {}

    private final List<Piece> pieces = new ArrayList<>();
    private final Vec3 startMm;
    private Vec3 penMm;

    private Outline(Vec3 startMm) {
        this.startMm = startMm;
        this.penMm = startMm;
    }

    public static Outline from(Vec3 startMm) {
        return new Outline(startMm);
    }

    /** Through these points and straight back to the first. */
    public static Outline polygon(List<Vec3> cornersMm) {
        Outline o = from(cornersMm.getFirst());
        for (Vec3 p : cornersMm.subList(1, cornersMm.size())) o.line(p);
        return o.line(cornersMm.getFirst());
    }

    public Outline line(Vec3 toMm) {
        if (toMm.distance(penMm) > 1e-7) {
            pieces.add(new Piece(penMm, null, toMm));
            penMm = toMm;
        }
        return this;
    }

    /** A circular arc over a point between. */
    public Outline arc(Vec3 overMm, Vec3 toMm) {
        pieces.add(new Piece(penMm, overMm, toMm));
        penMm = toMm;
        return this;
    }

    /** As the engine reads it: for each piece 0 and both ends, or 1 and the ends with the point between. */
    double[] numbers() {
        if (penMm.distance(startMm) > 1e-7) throw new IllegalStateException("outline: it is not closed");
        double[] out = new double[10 * pieces.size()];
        int n = 0;
        for (Piece p : pieces) {
            out[n++] = p.overMm == null ? 0 : 1;
            for (Vec3 v : p.overMm == null ? List.of(p.fromMm, p.toMm) : List.of(p.fromMm, p.overMm, p.toMm)) {
                out[n++] = v.x();
                out[n++] = v.y();
                out[n++] = v.z();
            }
        }
        return java.util.Arrays.copyOf(out, n);
    }
}
