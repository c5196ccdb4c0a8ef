package shotwright.review.remedy;

import shotwright.brep.ExactFace;
import shotwright.geom.Vec3;

/** Compares the surfaces that faces lie on. */
final class Surfaces {
    private static final double SAME_MM = 1e-6, SAME_RAD = 1e-8;

    private Surfaces() {}

    /** Do both lie on one surface? Of free forms no more is known here than that they are free forms. */
    static boolean same(ExactFace a, ExactFace b) {
        if (a.kind() != b.kind()) return false;
        return switch (a.kind()) {
            case PLANE ->
                a.axis().cross(b.axis()).length() < SAME_RAD
                        && Math.abs(b.axisPointMm().minus(a.axisPointMm()).dot(a.axis())) < SAME_MM;
            case CYLINDER, CONE ->
                a.axis().cross(b.axis()).length() < SAME_RAD
                        && offAxis(a, b.axisPointMm()) < SAME_MM
                        && Math.abs(Math.abs(a.halfAngleRad()) - Math.abs(b.halfAngleRad())) < SAME_RAD
                        && Math.abs(radiusMm(a, b.axisPointMm()) - b.radiusMm()) < SAME_MM;
            case SPHERE, TORUS ->
                a.axisPointMm().distance(b.axisPointMm()) < SAME_MM
                        && Math.abs(a.radiusMm() - b.radiusMm()) < SAME_MM
                        && Math.abs(a.tubeRadiusMm() - b.tubeRadiusMm()) < SAME_MM;
            case FREE_FORM -> true;
        };
    }

    private static double offAxis(ExactFace f, Vec3 at) {
        return at.minus(f.axisPointMm()).cross(f.axis()).length();
    }

    /** Radius of a cylinder or a cone at the level of a place. */
    private static double radiusMm(ExactFace f, Vec3 at) {
        return f.radiusMm() + at.minus(f.axisPointMm()).dot(f.axis()) * Math.tan(f.halfAngleRad());
    }

    /**
     * How far the line in which a level plane cuts a wall lies, after leaning, from where it was.
     *
     * @param pull of length one
     * @param levelMm height of the plane along the pull
     * @param reachMm how long the wall is
     */
    static double neutralShiftMm(ExactFace before, ExactFace after, Vec3 pull, double levelMm, double reachMm) {
        if (before.kind() == ExactFace.Kind.PLANE) {
            Vec3 along = before.axis().cross(pull).unit();
            // in the plane, up it
            Vec3 up = along.cross(before.axis());
            Vec3 c = before.centroidMm();
            Vec3 on = c.plus(up.times((levelMm - c.dot(pull)) / up.dot(pull)));
            return Math.max(off(after, on.plus(along.times(reachMm))), off(after, on.plus(along.times(-reachMm))));
        }
        Vec3 a = before.axisPointMm(),
                on =
                        a.plus(before.axis()
                                .times((levelMm - a.dot(pull)) / before.axis().dot(pull)));
        return offAxis(after, on) + Math.abs(radiusMm(before, on) - radiusMm(after, on));
    }

    private static double off(ExactFace plane, Vec3 at) {
        return Math.abs(at.minus(plane.axisPointMm()).dot(plane.axis()));
    }
}
