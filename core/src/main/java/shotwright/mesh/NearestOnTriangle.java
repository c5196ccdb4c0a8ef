package shotwright.mesh;

/**
 * The point of a triangle nearest to a given point, found by the region of the triangle's plane it projects to: a corner, an edge or the
 * inside (Ericson 2005, Real-Time Collision Detection, 5.1.5).
 */
final class NearestOnTriangle {
    private NearestOnTriangle() {}

    /**
     * Puts the triangle at {@code corners[k …]} into the probe when it lies nearer than the squared distance {@code p.t}, or as near with a
     * smaller facet number. Numeric kernel: the seven regions in one piece.
     */
    static void improve(Probe p, double[] corners, int k, int facet, double px, double py, double pz) {
        double ax = corners[k], ay = corners[k + 1], az = corners[k + 2];
        double ux = corners[k + 3] - ax, uy = corners[k + 4] - ay, uz = corners[k + 5] - az;
        double vx = corners[k + 6] - ax, vy = corners[k + 7] - ay, vz = corners[k + 8] - az;
        double wx = px - ax, wy = py - ay, wz = pz - az;
        double uu = ux * ux + uy * uy + uz * uz, uv = ux * vx + uy * vy + uz * vz, vv = vx * vx + vy * vy + vz * vz;
        double uw = ux * wx + uy * wy + uz * wz, vw = vx * wx + vy * wy + vz * wz;
        double alongB = uw - uu, acrossB = vw - uv;
        double alongC = uw - uv, acrossC = vw - vv;
        double onC = uw * acrossB - alongB * vw;
        double onB = alongC * vw - uw * acrossC;
        double onA = alongB * acrossC - alongC * acrossB;
        double s, t;
        if (uw <= 0 && vw <= 0) {
            s = 0;
            t = 0;
        } else if (alongB >= 0 && acrossB <= alongB) {
            s = 1;
            t = 0;
        } else if (onC <= 0 && uw >= 0 && alongB <= 0) {
            s = uu > 0 ? uw / uu : 0;
            t = 0;
        } else if (acrossC >= 0 && alongC <= acrossC) {
            s = 0;
            t = 1;
        } else if (onB <= 0 && vw >= 0 && acrossC <= 0) {
            s = 0;
            t = vv > 0 ? vw / vv : 0;
        } else if (onA <= 0 && acrossB - alongB >= 0 && alongC - acrossC >= 0) {
            t = (acrossB - alongB) / (acrossB - alongB + (alongC - acrossC));
            s = 1 - t;
        } else {
            double sum = onA + onB + onC;
            s = onB / sum;
            t = onC / sum;
        }
        double x = ax + s * ux + t * vx, y = ay + s * uy + t * vy, z = az + s * uz + t * vz;
        double d = (x - px) * (x - px) + (y - py) * (y - py) + (z - pz) * (z - pz);
        if (d < p.t || (d == p.t && (p.facet == Bvh.NONE || facet < p.facet))) {
            p.t = d;
            p.facet = facet;
            p.x = x;
            p.y = y;
            p.z = z;
        }
    }
}
