package shotwright.mesh;

import org.jspecify.annotations.Nullable;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;

/**
 * A tree of boxes over the facets of a mesh, for rays and nearest points. Immutable; any number of threads may ask at once, each with a
 * {@link Probe} of its own. Searches with a probe allocate nothing.
 *
 * <p>Rays meet facets by the watertight test of Woop, Benthin and Wald (2013, Journal of Computer Graphics Techniques 2-1): a ray through
 * an edge or a corner shared by facets hits at least one of them. Distances {@code t} are in lengths of the direction given, which need not
 * be one. Ray origins may lie up to a thousand diagonals away.
 */
public final class Bvh {
    /** Answered when nothing is met, and given when no facet is to be skipped. */
    public static final int NONE = -1;

    private static final int FIRST = 0;
    private static final int ANY = 1;
    private static final int ALL = 2;

    private final TriMesh mesh;
    private final int[] order;
    private final float[] boxes;
    private final int[] children;
    private final int root;
    private final double cx, cy, cz;
    private final double[] corners;

    private Bvh(TriMesh mesh) {
        this.mesh = mesh;
        Box3 box = mesh.box();
        Vec3 c = box.centre();
        cx = c.x();
        cy = c.y();
        cz = c.z();
        BvhBuilder tree = new BvhBuilder(mesh, new double[] {cx, cy, cz}, 1e-12 * box.diagonal());
        order = tree.order;
        boxes = tree.boxes;
        children = tree.children;
        root = tree.root;
        corners = new double[9 * order.length];
        double[] xyz = mesh.xyz();
        int[] tri = mesh.tri();
        for (int i = 0; i < order.length; i++)
            for (int k = 0; k < 3; k++) System.arraycopy(xyz, 3 * tri[3 * order[i] + k], corners, 9 * i + 3 * k, 3);
    }

    /** Builds the tree; a mesh without facets is refused. */
    public static Bvh of(TriMesh mesh) {
        if (mesh.facetCount() == 0) throw new IllegalArgumentException("mesh: has no facets");
        return new Bvh(mesh);
    }

    public TriMesh mesh() {
        return mesh;
    }

    /** A facet met by a ray, or nearest to a point: how far along or away, and where. */
    public record Hit(int facet, double t, Vec3 point) {}

    /** The first facet a ray meets, or null. For single questions; many rays go faster with a {@link Probe}. */
    public @Nullable Hit firstHit(Vec3 origin, Vec3 direction) {
        Probe p = new Probe().aim(origin, direction);
        int f = firstHit(p, 0, Double.POSITIVE_INFINITY, NONE);
        return f == NONE ? null : new Hit(f, p.t, p.hitPoint());
    }

    /** The nearest point of the surface, or null when none lies within the distance. */
    public @Nullable Hit nearest(Vec3 point, double maxDistance) {
        Probe p = new Probe();
        int f = nearest(p, point.x(), point.y(), point.z(), maxDistance);
        return f == NONE ? null : new Hit(f, p.t, p.nearestPoint());
    }

    /**
     * The first facet the aimed ray meets at {@code tMin ≤ t ≤ tMax}, from whichever side, or {@link #NONE}; the probe then holds {@code t}.
     *
     * @param skip a facet not to meet, usually the one the ray starts on, or {@link #NONE}
     */
    public int firstHit(Probe p, double tMin, double tMax, int skip) {
        return search(p, tMin, tMax, skip, FIRST);
    }

    /** Does the aimed ray meet anything at {@code tMin ≤ t ≤ tMax}? Stops at the first facet found, which need not be the nearest. */
    public boolean anyHit(Probe p, double tMin, double tMax, int skip) {
        return search(p, tMin, tMax, skip, ANY) != NONE;
    }

    /**
     * All facets the aimed ray meets at {@code tMin ≤ t ≤ tMax}; answers how many. The probe holds them in order of {@code t}. A ray through
     * a shared edge meets each of its facets; a facet in the plane of the ray is not met.
     */
    public int allHits(Probe p, double tMin, double tMax, int skip) {
        p.clearHits();
        search(p, tMin, tMax, skip, ALL);
        return p.hitCount();
    }

    /** Numeric kernel: one loop holds the whole descent, nearer child first. */
    private int search(Probe p, double tMin, double tMax, int skip, int kind) {
        int[] stack = p.stack;
        double[] key = p.stackKey;
        double ox = p.ox - cx, oy = p.oy - cy, oz = p.oz - cz;
        double ix = 1 / p.dx, iy = 1 / p.dy, iz = 1 / p.dz;
        int nx = ix < 0 ? 3 : 0, ny = iy < 0 ? 4 : 1, nz = iz < 0 ? 5 : 2;
        int fx = 3 - nx, fy = 5 - ny, fz = 7 - nz;
        p.facet = NONE;
        p.t = tMax;
        int top = 0, node = root;
        double near = tMin;
        while (true) {
            if (node < 0 && near <= p.t) {
                int code = -1 - node;
                for (int i = code >> 3, end = i + (code & 7); i < end; i++) meet(p, i, tMin, skip, kind);
                if (kind == ANY && p.facet != NONE) return p.facet;
            } else if (near <= p.t) {
                // a comparison with NaN (ray in the plane of a box face) leaves the interval as it is, which errs on
                // the safe side
                int b = 12 * node;
                double n0 = tMin, f0 = p.t, n1 = tMin, f1 = p.t;
                double u = (boxes[b + nx] - ox) * ix;
                if (u > n0) n0 = u;
                u = (boxes[b + ny] - oy) * iy;
                if (u > n0) n0 = u;
                u = (boxes[b + nz] - oz) * iz;
                if (u > n0) n0 = u;
                u = (boxes[b + fx] - ox) * ix;
                if (u < f0) f0 = u;
                u = (boxes[b + fy] - oy) * iy;
                if (u < f0) f0 = u;
                u = (boxes[b + fz] - oz) * iz;
                if (u < f0) f0 = u;
                b += 6;
                u = (boxes[b + nx] - ox) * ix;
                if (u > n1) n1 = u;
                u = (boxes[b + ny] - oy) * iy;
                if (u > n1) n1 = u;
                u = (boxes[b + nz] - oz) * iz;
                if (u > n1) n1 = u;
                u = (boxes[b + fx] - ox) * ix;
                if (u < f1) f1 = u;
                u = (boxes[b + fy] - oy) * iy;
                if (u < f1) f1 = u;
                u = (boxes[b + fz] - oz) * iz;
                if (u < f1) f1 = u;
                boolean in0 = n0 <= f0, in1 = n1 <= f1;
                if (in0 && in1) {
                    int swap = n1 < n0 ? 1 : 0;
                    stack[top] = children[2 * node + 1 - swap];
                    key[top++] = swap == 1 ? n0 : n1;
                    near = swap == 1 ? n1 : n0;
                    node = children[2 * node + swap];
                    continue;
                }
                if (in0 || in1) {
                    near = in0 ? n0 : n1;
                    node = children[2 * node + (in0 ? 0 : 1)];
                    continue;
                }
            }
            if (top == 0) return p.facet;
            node = stack[--top];
            near = key[top];
        }
    }

    private void meet(Probe p, int i, double tMin, int skip, int kind) {
        int k = 9 * i, kx = p.kx, ky = p.ky, kz = p.kz;
        double ox = p.okx, oy = p.oky, oz = p.okz;
        double az = corners[k + kz] - oz, bz = corners[k + 3 + kz] - oz, cz = corners[k + 6 + kz] - oz;
        double ax = corners[k + kx] - ox - p.shearX * az, ay = corners[k + ky] - oy - p.shearY * az;
        double bx = corners[k + 3 + kx] - ox - p.shearX * bz, by = corners[k + 3 + ky] - oy - p.shearY * bz;
        double cx = corners[k + 6 + kx] - ox - p.shearX * cz, cy = corners[k + 6 + ky] - oy - p.shearY * cz;
        double u = cx * by - cy * bx, v = ax * cy - ay * cx, w = bx * ay - by * ax;
        if ((u < 0 || v < 0 || w < 0) && (u > 0 || v > 0 || w > 0)) return;
        double det = u + v + w;
        if (det == 0) return;
        double t = (u * az + v * bz + w * cz) * p.shearZ / det;
        if (!(t >= tMin && t <= p.t)) return;
        int f = order[i];
        if (f == skip) return;
        if (kind == ALL) p.record(t, f);
        else if (t < p.t || p.facet == NONE || f < p.facet) {
            p.t = t;
            p.facet = f;
        }
    }

    /**
     * The facet nearest to a point, not farther than {@code maxDistance}, or {@link #NONE}; the probe then holds the distance as {@code t}
     * and the point. Numeric kernel: one loop holds the whole descent, nearer child first.
     */
    public int nearest(Probe p, double x, double y, double z, double maxDistance) {
        int[] stack = p.stack;
        double[] key = p.stackKey;
        double qx = x - cx, qy = y - cy, qz = z - cz;
        p.facet = NONE;
        p.t = maxDistance * maxDistance;
        int top = 0, node = root;
        double near = 0;
        while (true) {
            if (node < 0 && near <= p.t) {
                int code = -1 - node;
                for (int i = code >> 3, end = i + (code & 7); i < end; i++)
                    NearestOnTriangle.improve(p, corners, 9 * i, order[i], x, y, z);
            } else if (near <= p.t) {
                double d0 = outside(12 * node, qx, qy, qz), d1 = outside(12 * node + 6, qx, qy, qz);
                int swap = d1 < d0 ? 1 : 0;
                double farther = swap == 1 ? d0 : d1;
                if (farther <= p.t) {
                    stack[top] = children[2 * node + 1 - swap];
                    key[top++] = farther;
                }
                near = swap == 1 ? d1 : d0;
                node = children[2 * node + swap];
                continue;
            }
            if (top == 0) break;
            node = stack[--top];
            near = key[top];
        }
        p.t = Math.sqrt(p.t);
        return p.facet;
    }

    /**
     * Notes in the probe, as places in the order of the tree, all facets behind {@code after} whose boxes come within {@code slack} of the
     * box of the facet at that place; answers how many.
     */
    int neighbours(Probe p, int after, double slack) {
        int k = 9 * after;
        double x0 = low(k) - cx - slack, y0 = low(k + 1) - cy - slack, z0 = low(k + 2) - cz - slack;
        double x1 = high(k) - cx + slack, y1 = high(k + 1) - cy + slack, z1 = high(k + 2) - cz + slack;
        int top = 0, node = root, found = 0;
        while (true) {
            if (node < 0) {
                int code = -1 - node;
                for (int i = code >> 3, end = i + (code & 7); i < end; i++) if (i > after) found = p.note(found, i);
                if (top == 0) return found;
                node = p.stack[--top];
                continue;
            }
            int b = 12 * node;
            boolean in0 = meets(b, x0, y0, z0, x1, y1, z1), in1 = meets(b + 6, x0, y0, z0, x1, y1, z1);
            if (in1) p.stack[top++] = children[2 * node + 1];
            if (in0) node = children[2 * node];
            else if (top == 0) return found;
            else node = p.stack[--top];
        }
    }

    private boolean meets(int b, double x0, double y0, double z0, double x1, double y1, double z1) {
        return boxes[b] <= x1
                && boxes[b + 3] >= x0
                && boxes[b + 1] <= y1
                && boxes[b + 4] >= y0
                && boxes[b + 2] <= z1
                && boxes[b + 5] >= z0;
    }

    private double low(int k) {
        return Math.min(corners[k], Math.min(corners[k + 3], corners[k + 6]));
    }

    private double high(int k) {
        return Math.max(corners[k], Math.max(corners[k + 3], corners[k + 6]));
    }

    /** The facet at a place in the order of the tree. */
    int facetAt(int place) {
        return order[place];
    }

    private double outside(int b, double x, double y, double z) {
        double dx = Math.max(0, Math.max(boxes[b] - x, x - boxes[b + 3]));
        double dy = Math.max(0, Math.max(boxes[b + 1] - y, y - boxes[b + 4]));
        double dz = Math.max(0, Math.max(boxes[b + 2] - z, z - boxes[b + 5]));
        return dx * dx + dy * dy + dz * dz;
    }
}
