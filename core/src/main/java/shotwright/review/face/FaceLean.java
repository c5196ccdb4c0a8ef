package shotwright.review.face;

import shotwright.brep.ExactFace;
import shotwright.geom.Vec3;

/**
 * How far a face leans off the pull: 90° looks along it, 0° stands along it, −90° looks against it.
 *
 * <p>A plane has one lean. On a cylinder or a cone sin(lean) is a constant plus a multiple of the cosine of the turn about the axis, so its
 * ends are those of the turn the face takes, or the crest and the trough where it takes them. On balls, rings and free forms the ends are the
 * least and the most of the exact normals at the corners of the triangles, border included; between corners such a face turns by no more
 * than 0.2 rad, and a bulge between them is not seen.
 *
 * @param lowDeg least lean on the face
 * @param highDeg most lean on the face
 * @param lowAtMm where it leans least
 * @param highAtMm where it leans most
 */
public record FaceLean(double lowDeg, double highDeg, Vec3 lowAtMm, Vec3 highAtMm) {
    private static final double ALONG = 1e-9;

    /**
     * The lean of a face.
     *
     * @param pull of length one, axes of the file
     */
    public static FaceLean of(FaceFacets f, Vec3 pull) {
        ExactFace face = f.face();
        if (f.isSliver()) return even(0, face.centroidMm());
        return switch (face.kind()) {
            case PLANE -> {
                Vec3 out = f.normal(f.facets()[0], 0);
                double sign = Math.signum(out.dot(face.axis()));
                yield even(sign * face.axis().dot(pull), f.middleMm());
            }
            case CYLINDER -> round(f, pull, 0);
            case CONE -> {
                double along = f.normal(f.facets()[0], 0).dot(face.axis());
                yield round(f, pull, Math.copySign(Math.sin(Math.abs(face.halfAngleRad())), along));
            }
            case SPHERE, TORUS, FREE_FORM -> sampled(f, pull);
        };
    }

    private static FaceLean even(double sine, Vec3 at) {
        double deg = Math.toDegrees(Math.asin(Math.clamp(sine, -1, 1)));
        return new FaceLean(deg, deg, at, at);
    }

    /** Normals that all stand at one angle to the axis, {@code along} being its sine. */
    private static FaceLean round(FaceFacets f, Vec3 pull, double along) {
        Vec3 axis = f.face().axis();
        double level = along * axis.dot(pull);
        Vec3 off = pull.minus(axis.times(axis.dot(pull)));
        if (off.length() < ALONG) return even(level, f.middleMm());
        FaceLean corners = sampled(f, pull);
        double swing = Math.sqrt(1 - along * along) * off.length();
        Turn turn = Turn.of(f, axis, off.unit());
        double high = turn.takes(0) ? deg(level + swing) : corners.highDeg;
        double low = turn.takes(Math.PI) ? deg(level - swing) : corners.lowDeg;
        return new FaceLean(low, high, corners.lowAtMm, corners.highAtMm);
    }

    private static double deg(double sine) {
        return Math.toDegrees(Math.asin(Math.clamp(sine, -1, 1)));
    }

    private static FaceLean sampled(FaceFacets f, Vec3 pull) {
        double low = 2, high = -2;
        Vec3 lowAt = Vec3.ZERO, highAt = Vec3.ZERO;
        for (int facet : f.facets()) {
            for (int k = 0; k < 3; k++) {
                double sine = f.normal(facet, k).dot(pull);
                if (sine < low) {
                    low = sine;
                    lowAt = f.corner(facet, k);
                }
                if (sine > high) {
                    high = sine;
                    highAt = f.corner(facet, k);
                }
            }
        }
        return new FaceLean(deg(low), deg(high), lowAt, highAt);
    }
}
