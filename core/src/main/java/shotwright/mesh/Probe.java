package shotwright.mesh;

import java.util.Arrays;
import shotwright.geom.Vec3;

/**
 * What one thread holds while it asks a {@link Bvh}: the ray it aims, the stack of the search, and what the last search found. May serve
 * any number of trees, one after the other; must not be shared between threads.
 */
public final class Probe {
    /** The depth the builder keeps to, and a little more. */
    private static final int DEPTH = 100;

    final int[] stack = new int[DEPTH];
    final double[] stackKey = new double[DEPTH];
    double ox, oy, oz;
    double dx, dy, dz;
    /** The axis the ray runs along most, and the other two; the origin in that order; the shear that turns the ray onto it (Woop). */
    int kx, ky, kz;

    double okx, oky, okz;
    double shearX, shearY, shearZ;
    int facet = Bvh.NONE;
    double t;
    double x, y, z;
    private int hits;
    private double[] hitT = new double[16];
    private int[] hitFacet = new int[16];

    /** Aims a ray; a direction of length zero is refused. */
    public Probe aim(Vec3 origin, Vec3 direction) {
        return aim(origin.x(), origin.y(), origin.z(), direction.x(), direction.y(), direction.z());
    }

    /** Aims a ray; a direction of length zero is refused. */
    public Probe aim(double ox, double oy, double oz, double dx, double dy, double dz) {
        this.ox = ox;
        this.oy = oy;
        this.oz = oz;
        this.dx = dx;
        this.dy = dy;
        this.dz = dz;
        double mx = Math.abs(dx), my = Math.abs(dy), mz = Math.abs(dz);
        kz = mz >= mx && mz >= my ? 2 : mx >= my ? 0 : 1;
        kx = (kz + 1) % 3;
        ky = (kz + 2) % 3;
        double d = component(kz, dx, dy, dz);
        if (!(Math.abs(d) > 0) || !Double.isFinite(d))
            throw new IllegalArgumentException("ray: (" + dx + ", " + dy + ", " + dz + ") has no direction");
        okx = component(kx, ox, oy, oz);
        oky = component(ky, ox, oy, oz);
        okz = component(kz, ox, oy, oz);
        shearX = component(kx, dx, dy, dz) / d;
        shearY = component(ky, dx, dy, dz) / d;
        shearZ = 1 / d;
        return this;
    }

    private static double component(int axis, double x, double y, double z) {
        return axis == 0 ? x : axis == 1 ? y : z;
    }

    /** The facet last found, or {@link Bvh#NONE}. */
    public int facet() {
        return facet;
    }

    /** After a ray: where along it the hit lies, in lengths of the direction. After a search for the nearest point: the distance. */
    public double t() {
        return t;
    }

    /** The point of the ray at the last hit. */
    public Vec3 hitPoint() {
        return new Vec3(ox + t * dx, oy + t * dy, oz + t * dz);
    }

    /** The point of the surface found by the last search for the nearest point. */
    public Vec3 nearestPoint() {
        return new Vec3(x, y, z);
    }

    /** Coordinate x of {@link #nearestPoint()}, likewise {@code nearestY} and {@code nearestZ}. */
    public double nearestX() {
        return x;
    }

    public double nearestY() {
        return y;
    }

    public double nearestZ() {
        return z;
    }

    /** How many facets the last search for all hits met. */
    public int hitCount() {
        return hits;
    }

    /** Where along the ray the {@code i}-th of all hits lies, nearest first. */
    public double hitT(int i) {
        return hitT[i];
    }

    /** The {@code i}-th of all facets hit, nearest first. */
    public int hitFacet(int i) {
        return hitFacet[i];
    }

    /** Notes one more found at place {@code i} of the list; answers how many there are. */
    int note(int i, int what) {
        if (i == hitFacet.length) {
            hitT = Arrays.copyOf(hitT, 2 * i);
            hitFacet = Arrays.copyOf(hitFacet, 2 * i);
        }
        hitFacet[i] = what;
        return i + 1;
    }

    void clearHits() {
        hits = 0;
    }

    /** Keeps the hits in order of {@code t}, equal ones in order of facets, so that the answer does not depend on the tree. */
    void record(double at, int which) {
        if (hits == hitT.length) {
            hitT = Arrays.copyOf(hitT, 2 * hits);
            hitFacet = Arrays.copyOf(hitFacet, 2 * hits);
        }
        int i = hits++;
        while (i > 0 && (hitT[i - 1] > at || (hitT[i - 1] == at && hitFacet[i - 1] > which))) {
            hitT[i] = hitT[i - 1];
            hitFacet[i] = hitFacet[i - 1];
            i--;
        }
        hitT[i] = at;
        hitFacet[i] = which;
    }
}
