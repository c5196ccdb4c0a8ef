package shotwright.review.face;

import java.util.ArrayList;
import java.util.List;
import shotwright.brep.ExactBody;
import shotwright.brep.ExactFace;
import shotwright.geom.Vec3;
import shotwright.mesh.Edges;
import shotwright.mesh.TriMesh;

/**
 * A face as it stands in the mold.
 *
 * @param facets the face and the triangles over it
 * @param lean how far it leans off the pull
 * @param hollow whether it is round about air
 * @param turnDeg for cylinders and cones how much of a turn it takes, together with the faces that carry it on
 * @param narrowMm for round faces its least radius, else 0
 * @param wideMm for round faces its largest radius, else 0
 * @param lowMm its lower end along the pull
 * @param highMm its upper end along the pull
 * @param size how large it is
 * @param smoothCount how many faces it runs smoothly into
 * @param outsideShare how much of its sharp border is an outside corner
 */
public record FaceShape(
        FaceFacets facets,
        FaceLean lean,
        boolean hollow,
        double turnDeg,
        double narrowMm,
        double wideMm,
        double lowMm,
        double highMm,
        FaceSize size,
        int smoothCount,
        double outsideShare) {
    /** More of a turn than this is said to close: it cannot be pulled out sideways. */
    static final double CLOSED_DEG = 200;

    private static final double LEVEL_DEG = 89.5;
    private static final double SAME = 1e-3;

    /** All faces of a body. */
    public static List<FaceShape> of(ExactBody body, TriMesh mesh, Edges edges, FaceBorders borders, Vec3 pull) {
        List<FaceFacets> all = FaceFacets.of(body, mesh);
        List<Round> rounds = all.stream().map(Round::of).toList();
        List<FaceShape> out = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) out.add(shape(all.get(i), i, rounds, borders, pull));
        return List.copyOf(out);
    }

    private static FaceShape shape(FaceFacets f, int i, List<Round> rounds, FaceBorders borders, Vec3 pull) {
        FaceLean lean = FaceLean.of(f, pull);
        Round round = rounds.get(i);
        double turn = 0;
        for (Round r : rounds) if (r.carriesOn(round)) turn += r.turnRad;
        double deg = Math.toDegrees(Math.min(turn, 2 * Math.PI));
        double[] ends = f.extent(pull);
        boolean level = lean.lowDeg() > LEVEL_DEG || lean.highDeg() < -LEVEL_DEG;
        return new FaceShape(
                f,
                lean,
                round.hollow,
                deg,
                round.narrowMm,
                round.wideMm,
                ends[0],
                ends[1],
                deg >= CLOSED_DEG ? FaceSize.round(f, round.wideMm) : FaceSize.plain(f, pull, level),
                borders.smoothNeighbours(i).length,
                borders.outsideShare(i));
    }

    public ExactFace face() {
        return facets.face();
    }

    public double depthMm() {
        return highMm - lowMm;
    }

    /** Goes round about its axis far enough to hold what is in it. */
    boolean closes() {
        return turnDeg >= CLOSED_DEG;
    }

    /** Looks straight along the pull, or straight against it. */
    public boolean isLevel() {
        return lean.lowDeg() > LEVEL_DEG || lean.highDeg() < -LEVEL_DEG;
    }

    /** The axis of a cylinder or a cone stands across the pull rather than along it. */
    public boolean liesAcross(Vec3 pull) {
        return Math.abs(face().axis().dot(pull)) < Math.sqrt(0.5);
    }

    /** What is round about a round face. */
    private record Round(FaceFacets f, double turnRad, boolean hollow, double narrowMm, double wideMm) {
        static Round of(FaceFacets f) {
            ExactFace face = f.face();
            if (f.isSliver()) return new Round(f, 0, false, 0, 0);
            return switch (face.kind()) {
                case PLANE, FREE_FORM -> new Round(f, 0, false, 0, 0);
                case CYLINDER, CONE -> {
                    double turn = Turn.of(f, face.axis(), face.axis().across()).takenRad(), low = 1e300, high = 0;
                    for (int facet : f.facets()) {
                        for (int k = 0; k < 3; k++) {
                            double r = off(face, f.corner(facet, k)).length();
                            low = Math.min(low, r);
                            high = Math.max(high, r);
                        }
                    }
                    boolean even = face.kind() == ExactFace.Kind.CYLINDER;
                    yield new Round(
                            f,
                            turn,
                            looksAt(f, off(face, f.corner(f.facets()[0], 0))),
                            even ? face.radiusMm() : low,
                            even ? face.radiusMm() : high);
                }
                case SPHERE ->
                    new Round(
                            f,
                            0,
                            looksAt(f, f.corner(f.facets()[0], 0).minus(face.axisPointMm())),
                            face.radiusMm(),
                            face.radiusMm());
                case TORUS -> {
                    Vec3 p = f.corner(f.facets()[0], 0), off = off(face, p);
                    Vec3 ring = face.axisPointMm().plus(off.unit().times(face.radiusMm()));
                    yield new Round(f, 0, looksAt(f, p.minus(ring)), face.tubeRadiusMm(), face.tubeRadiusMm());
                }
            };
        }

        /** From the axis straight out to a place. */
        private static Vec3 off(ExactFace face, Vec3 at) {
            Vec3 d = at.minus(face.axisPointMm());
            return d.minus(face.axis().times(d.dot(face.axis())));
        }

        /** Does the face look back along the way from its middle to its first corner? */
        private static boolean looksAt(FaceFacets f, Vec3 fromMiddle) {
            return f.normal(f.facets()[0], 0).dot(fromMiddle) < 0;
        }

        /** On one cylinder or cone, side by side with another or the same. */
        boolean carriesOn(Round o) {
            ExactFace a = f.face(), b = o.f.face();
            if (turnRad == 0 || o.turnRad == 0 || a.kind() != b.kind() || hollow != o.hollow) return false;
            if (a == b) return true;
            Vec3 between = off(a, b.axisPointMm());
            boolean line = a.axis().cross(b.axis()).length() < SAME && between.length() < SAME * (1 + wideMm);
            boolean wide = a.kind() == ExactFace.Kind.CYLINDER
                    ? Math.abs(a.radiusMm() - b.radiusMm()) < SAME * a.radiusMm()
                    : Math.abs(Math.abs(a.halfAngleRad()) - Math.abs(b.halfAngleRad())) < SAME
                            && Math.abs(narrowMm - o.narrowMm) < SAME * (1 + narrowMm);
            if (!line || !wide) return false;
            double[] p = f.extent(a.axis()), q = o.f.extent(a.axis());
            double shared = Math.min(p[1], q[1]) - Math.max(p[0], q[0]);
            return shared > 0.3 * Math.min(p[1] - p[0], q[1] - q[0]);
        }
    }
}
