package shotwright.review;

import shotwright.geom.Vec3;
import shotwright.mesh.Bvh;
import shotwright.mesh.Probe;
import shotwright.mesh.TriMesh;

/**
 * Which end of the pull is half A. Hollows and cores belong to B: the part shrinks onto them and stays on the half that is left lying.
 * Measured by casting rays from points just off the walls: air that is open on one end only shows to which side a hollow opens.
 *
 * @param up the direction in which half A moves off
 * @param opensToBMm2 wall area whose air is open towards B only, mm²
 * @param opensToAMm2 wall area whose air is open towards A only, mm²
 */
record PullSide(Vec3 up, double opensToBMm2, double opensToAMm2) {
    private static final int SAMPLES = 1500;
    private static final double WALL = Math.sin(Math.toRadians(20));

    /** Chooses between a direction and its opposite. */
    static PullSide of(TriMesh mesh, Bvh tree, Vec3 direction) {
        double[] wall = new double[mesh.facetCount()];
        double total = 0;
        for (int f = 0; f < wall.length; f++) {
            Vec3 n = mesh.doubleAreaNormal(f);
            if (Math.abs(n.dot(direction)) <= WALL * n.length()) total += n.length() / 2;
            wall[f] = total;
        }
        double ahead = 0, behind = 0, share = total / SAMPLES, next = share / 2;
        Probe probe = new Probe();
        double off = 1e-3 * mesh.box().diagonal();
        for (int f = 0; f < wall.length && share > 0; f++) {
            for (int k = 0; next <= wall[f]; k++, next += share) {
                Vec3 n = mesh.doubleAreaNormal(f).unit();
                Vec3 p = inside(mesh, f, k).plus(n.times(off));
                boolean open = !tree.anyHit(probe.aim(p, direction), 0, Double.POSITIVE_INFINITY, f);
                boolean openBack = !tree.anyHit(probe.aim(p, direction.negate()), 0, Double.POSITIVE_INFINITY, f);
                if (open && !openBack) ahead += share;
                if (openBack && !open) behind += share;
            }
        }
        return choose(mesh, direction, behind, ahead);
    }

    private static PullSide choose(TriMesh mesh, Vec3 d, double behind, double ahead) {
        if (behind > 1.05 * ahead) return new PullSide(d, behind, ahead);
        if (ahead > 1.05 * behind) return new PullSide(reverse(d), ahead, behind);
        boolean lieOnBack = endArea(mesh, d) <= endArea(mesh, d.negate()) * 1.001;
        return lieOnBack ? new PullSide(d, behind, ahead) : new PullSide(reverse(d), ahead, behind);
    }

    private static Vec3 reverse(Vec3 d) {
        return new Vec3(0.0 - d.x(), 0.0 - d.y(), 0.0 - d.z());
    }

    /** Flat area at the end of the part that looks along d. */
    private static double endArea(TriMesh mesh, Vec3 d) {
        double top = Double.NEGATIVE_INFINITY, sum = 0;
        for (int v = 0; v < mesh.vertexCount(); v++)
            top = Math.max(top, mesh.vertex(v).dot(d));
        double near = top - 1e-3 * mesh.box().diagonal();
        for (int f = 0; f < mesh.facetCount(); f++) {
            Vec3 n = mesh.doubleAreaNormal(f);
            if (n.dot(d) > 0.999 * n.length() && mesh.centroid(f).dot(d) >= near) sum += n.length() / 2;
        }
        return sum;
    }

    /** The k-th of a row of points that fill a triangle evenly. */
    static Vec3 inside(TriMesh mesh, int f, int k) {
        double s = Math.sqrt(fraction(0.5 + k * 0.7548776662466927)), t = fraction(0.5 + k * 0.5698402909980532);
        Vec3 a = mesh.cornerPoint(f, 0), b = mesh.cornerPoint(f, 1), c = mesh.cornerPoint(f, 2);
        return a.times(1 - s).plus(b.times(s * (1 - t))).plus(c.times(s * t));
    }

    private static double fraction(double x) {
        return x - Math.floor(x);
    }
}
