package shotwright.review.face;

import java.util.Arrays;
import shotwright.geom.Vec3;

/**
 * Which part of a full turn about an axis the outward normals of a round face take, from the corners of its triangles.
 *
 * @param from the direction from which angles count, across the axis
 * @param anglesRad angles of the corners' normals, rising, −π to π
 */
record Turn(Vec3 from, double[] anglesRad) {
    /** Corners stand no further apart than a chord of the mesh turns; a wider gap is not on the face. */
    private static final double CHORD_RAD = 0.25;

    /**
     * The turn of a cylinder or a cone.
     *
     * @param axis of length one
     * @param from across the axis, of length one
     */
    static Turn of(FaceFacets face, Vec3 axis, Vec3 from) {
        Vec3 side = axis.cross(from);
        double[] all = new double[3 * face.facets().length];
        int n = 0;
        for (int f : face.facets()) {
            for (int k = 0; k < 3; k++) {
                Vec3 normal = face.normal(f, k);
                all[n++] = Math.atan2(normal.dot(side), normal.dot(from));
            }
        }
        Arrays.sort(all);
        return new Turn(from, all);
    }

    /** How much of the turn is taken: 2π less the widest gap. */
    double takenRad() {
        if (anglesRad.length == 0) return 0;
        double gap = anglesRad[0] + 2 * Math.PI - anglesRad[anglesRad.length - 1];
        for (int i = 1; i < anglesRad.length; i++) gap = Math.max(gap, anglesRad[i] - anglesRad[i - 1]);
        return gap < CHORD_RAD ? 2 * Math.PI : 2 * Math.PI - gap;
    }

    /** Does the face have a normal just this way? */
    boolean takes(double angleRad) {
        int i = Arrays.binarySearch(anglesRad, angleRad);
        if (i >= 0) return true;
        int next = -i - 1, n = anglesRad.length;
        double after = next < n ? anglesRad[next] : anglesRad[0] + 2 * Math.PI;
        double before = next > 0 ? anglesRad[next - 1] : anglesRad[n - 1] - 2 * Math.PI;
        return after - before < CHORD_RAD;
    }
}
