package shotwright.mold.exact;

import java.util.Random;
import shotwright.brep.ExactFailure;
import shotwright.brep.ExactShapes;
import shotwright.brep.Solid;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;
import shotwright.mesh.Bvh;
import shotwright.mesh.Probe;
import shotwright.mesh.TriMesh;
import shotwright.mold.MoldResult;

/** Tells which half a piece of metal belongs to, by points inside it that are looked up in the mesh halves. */
final class Labels {
    private static final double DEFLECTION_MM = 0.05, TURN_RAD = 0.35;
    private static final int POINTS = 20_000;
    private static final double ROOM_MM = 1;

    private final Bvh a;
    private final Bvh b;
    private final Box3 around;

    /** Looks within a millimetre of the parts' box. */
    Labels(MoldResult mold, Box3 parts) {
        around = parts.grow(ROOM_MM);
        a = Bvh.of(mold.a().mesh());
        b = Bvh.of(mold.b().mesh());
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
        Bvh own = Bvh.of(mesh);
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
            if (!holds(own, p)) continue;
            if (holds(a, p)) inA++;
            else if (holds(b, p)) inB++;
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

    /** Is a point inside a closed mesh? An odd number of walls above it. */
    private static boolean holds(Bvh tree, Vec3 p) {
        Probe probe = new Probe().aim(p, new Vec3(1.3e-3, 2.7e-3, 1).unit());
        return tree.allHits(probe, 0, Double.POSITIVE_INFINITY, Bvh.NONE) % 2 == 1;
    }
}
