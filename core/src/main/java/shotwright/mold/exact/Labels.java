package shotwright.mold.exact;

import java.util.List;
import java.util.Random;
import shotwright.brep.ExactFailure;
import shotwright.brep.ExactShapes;
import shotwright.brep.Solid;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;
import shotwright.mesh.TriMesh;
import shotwright.mold.MoldResult;

/** Tells which half a piece of metal belongs to, by points inside it that are looked up in the mesh halves. */
final class Labels {
    private static final double DEFLECTION_MM = 0.05, TURN_RAD = 0.35;
    private static final int POINTS = 20_000;
    private static final double ROOM_MM = 1;

    private final Inside a;
    private final Inside b;
    private final Box3 around;

    /** Looks within a millimetre of the parts' box. */
    Labels(MoldResult mold, Box3 parts) {
        around = parts.grow(ROOM_MM);
        a = new Inside(List.of(mold.a().mesh()));
        b = new Inside(List.of(mold.b().mesh()));
    }

    /**
     * Where a piece lies.
     *
     * @param inA whether most of it lies in half A
     * @param otherMm3 about how much of it lies in the other half, within the region looked at
     */
    record Label(boolean inA, double otherMm3) {}

    Label of(ExactShapes x, Solid piece) throws ExactFailure {
        TriMesh mesh = x.mesh(piece, DEFLECTION_MM, TURN_RAD).mesh();
        Inside own = new Inside(List.of(mesh));
        Box3 box = overlap(mesh.box());
        Random random = new Random(7);
        Vec3 size = box.size();
        int inA = 0, inB = 0;
        for (int k = 0; k < POINTS; k++) {
            Vec3 p = box.min()
                    .plus(new Vec3(
                            size.x() * random.nextDouble(),
                            size.y() * random.nextDouble(),
                            size.z() * random.nextDouble()));
            if (!own.holds(p)) continue;
            if (a.holds(p)) inA++;
            else if (b.holds(p)) inB++;
        }
        return new Label(inA >= inB, box.volume() * Math.min(inA, inB) / POINTS);
    }

    /** The part of a piece's box that lies around the parts; the whole box where none of it does. */
    private Box3 overlap(Box3 piece) {
        Vec3 low = high(piece.min(), around.min()),
                up = high(piece.max().negate(), around.max().negate()).negate();
        boolean apart = low.x() >= up.x() || low.y() >= up.y() || low.z() >= up.z();
        return apart ? piece : new Box3(low, up);
    }

    private static Vec3 high(Vec3 p, Vec3 q) {
        return new Vec3(Math.max(p.x(), q.x()), Math.max(p.y(), q.y()), Math.max(p.z(), q.z()));
    }
}
