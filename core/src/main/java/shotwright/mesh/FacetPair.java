package shotwright.mesh;

import shotwright.geom.Vec3;

/**
 * How deep two triangles reach into each other: the shortest shift that parts them. Two convex bodies are parted by a plane across one of
 * the two normals or one of the nine products of their edges (separating axes: Gottschalk, Lin and Manocha 1996, SIGGRAPH); the least
 * overlap on these axes is the shift. Triangles that only share a corner or an edge have depth 0, however they stand.
 *
 * <p>Plain doubles decide: the depths that count are ten orders of magnitude above rounding.
 */
final class FacetPair {
    /** Corners of both, from a corner of the first as origin. */
    private final double[] p = new double[18];
    /** Edges, then unit normals. */
    private final double[] edge = new double[18];

    private final double[] normal = new double[6];
    private final double[] longest = new double[2];
    private final double[] twiceArea = new double[2];
    private double ox, oy, oz;

    /** Takes up two facets; false when one of them has next to no area, so that its plane means nothing. */
    boolean take(TriMesh mesh, int f, int g) {
        double[] xyz = mesh.xyz();
        int[] tri = mesh.tri();
        int o = 3 * tri[3 * f];
        for (int k = 0; k < 6; k++) {
            int v = 3 * tri[k < 3 ? 3 * f + k : 3 * g + k - 3];
            for (int d = 0; d < 3; d++) p[3 * k + d] = xyz[v + d] - xyz[o + d];
        }
        ox = xyz[o];
        oy = xyz[o + 1];
        oz = xyz[o + 2];
        return plane(0) && plane(1);
    }

    private boolean plane(int which) {
        int k = 9 * which;
        double most = 0;
        for (int e = 0; e < 3; e++) {
            double square = 0;
            for (int d = 0; d < 3; d++) {
                double u = p[k + 3 * ((e + 1) % 3) + d] - p[k + 3 * e + d];
                edge[k + 3 * e + d] = u;
                square += u * u;
            }
            most = Math.max(most, square);
        }
        double nx = edge[k + 1] * edge[k + 5] - edge[k + 2] * edge[k + 4];
        double ny = edge[k + 2] * edge[k + 3] - edge[k] * edge[k + 5];
        double nz = edge[k] * edge[k + 4] - edge[k + 1] * edge[k + 3];
        double n = Math.sqrt(nx * nx + ny * ny + nz * nz);
        twiceArea[which] = n;
        longest[which] = most;
        normal[3 * which] = nx / n;
        normal[3 * which + 1] = ny / n;
        normal[3 * which + 2] = nz / n;
        return n > 1e-10 * most;
    }

    /** Overlap along a unit axis. */
    private double overlap(double x, double y, double z) {
        double a0 = Double.POSITIVE_INFINITY, a1 = Double.NEGATIVE_INFINITY;
        double b0 = Double.POSITIVE_INFINITY, b1 = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < 9; k += 3) {
            double a = p[k] * x + p[k + 1] * y + p[k + 2] * z;
            double b = p[k + 9] * x + p[k + 10] * y + p[k + 11] * z;
            a0 = Math.min(a0, a);
            a1 = Math.max(a1, a);
            b0 = Math.min(b0, b);
            b1 = Math.max(b1, b);
        }
        return Math.min(a1 - b0, b1 - a0);
    }

    private double overlapAlongNormal(int which) {
        return overlap(normal[3 * which], normal[3 * which + 1], normal[3 * which + 2]);
    }

    /** The depth, or any number not above {@code least} when it is not above that. */
    double depth(double least) {
        double best = overlapAlongNormal(0);
        if (best <= least) return best;
        best = Math.min(best, overlapAlongNormal(1));
        for (int i = 0; i < 9 && best > least; i += 3)
            for (int j = 9; j < 18; j += 3) {
                double x = edge[i + 1] * edge[j + 2] - edge[i + 2] * edge[j + 1];
                double y = edge[i + 2] * edge[j] - edge[i] * edge[j + 2];
                double z = edge[i] * edge[j + 1] - edge[i + 1] * edge[j];
                double n = x * x + y * y + z * z;
                if (n <= 1e-20 * longest[0] * longest[1]) continue;
                n = 1 / Math.sqrt(n);
                best = Math.min(best, overlap(x * n, y * n, z * n));
                if (best <= least) return best;
            }
        return best;
    }

    /** Both lie in one plane, within a distance. */
    boolean inOnePlane(double distance) {
        int which = twiceArea[0] >= twiceArea[1] ? 0 : 1;
        double x = normal[3 * which], y = normal[3 * which + 1], z = normal[3 * which + 2];
        double at = p[9 * which] * x + p[9 * which + 1] * y + p[9 * which + 2] * z;
        for (int k = 9 - 9 * which, end = k + 9; k < end; k += 3)
            if (Math.abs(p[k] * x + p[k + 1] * y + p[k + 2] * z - at) > distance) return false;
        return true;
    }

    /** For two facets in one plane: the shortest shift in the plane that parts them. */
    double depthInPlane(double least) {
        int which = twiceArea[0] >= twiceArea[1] ? 0 : 1;
        double nx = normal[3 * which], ny = normal[3 * which + 1], nz = normal[3 * which + 2];
        double best = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 18 && best > least; i += 3) {
            double x = edge[i + 1] * nz - edge[i + 2] * ny;
            double y = edge[i + 2] * nx - edge[i] * nz;
            double z = edge[i] * ny - edge[i + 1] * nx;
            double n = Math.sqrt(x * x + y * y + z * z);
            if (n > 0) best = Math.min(best, overlap(x / n, y / n, z / n));
        }
        return best;
    }

    /** The middle of the stretch where they cross; the middle of both where they lie on each other. */
    Vec3 place() {
        double sx = 0, sy = 0, sz = 0;
        int n = 0;
        for (int e = 0; e < 18; e += 3) {
            int other = e < 9 ? 1 : 0, far = e % 9 == 6 ? e - 6 : e + 3;
            double a = height(other, e), b = height(other, far);
            if (a < 0 == b < 0) continue;
            double t = a / (a - b);
            double x = p[e] + t * (p[far] - p[e]), y = p[e + 1] + t * (p[far + 1] - p[e + 1]);
            double z = p[e + 2] + t * (p[far + 2] - p[e + 2]);
            if (!inside(other, x, y, z)) continue;
            sx += x;
            sy += y;
            sz += z;
            n++;
        }
        if (n == 0) {
            for (int k = 0; k < 18; k += 3) {
                sx += p[k];
                sy += p[k + 1];
                sz += p[k + 2];
            }
            n = 6;
        }
        return new Vec3(ox + sx / n, oy + sy / n, oz + sz / n);
    }

    private double height(int which, int k) {
        double x = p[k] - p[9 * which], y = p[k + 1] - p[9 * which + 1], z = p[k + 2] - p[9 * which + 2];
        return x * normal[3 * which] + y * normal[3 * which + 1] + z * normal[3 * which + 2];
    }

    private boolean inside(int which, double x, double y, double z) {
        double nx = normal[3 * which], ny = normal[3 * which + 1], nz = normal[3 * which + 2];
        for (int k = 9 * which, end = k + 9; k < end; k += 3) {
            double dx = x - p[k], dy = y - p[k + 1], dz = z - p[k + 2];
            double turn = nx * (edge[k + 1] * dz - edge[k + 2] * dy)
                    + ny * (edge[k + 2] * dx - edge[k] * dz)
                    + nz * (edge[k] * dy - edge[k + 1] * dx);
            if (turn < 0) return false;
        }
        return true;
    }
}
