package shotwright.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import shotwright.geom.Box3;
import shotwright.geom.Vec3;
import shotwright.mesh.Edges;
import shotwright.mesh.TriMesh;

/**
 * Sorts the facets of a mesh into shells (facets that hang together over edges) and the shells into bodies: an outward shell is a body, an
 * inward shell inside one is a hollow of it, an inward shell that lies in none is a body turned inside out.
 */
final class Shells {
    /** Of two bodies the larger volume comes first. */
    private static final Comparator<Body> LARGEST_FIRST =
            Comparator.comparingDouble((Body b) -> -Math.abs(b.volumeMm3())).thenComparingInt(Body::shell);

    private final TriMesh mesh;
    private final int[] shellOfFacet;
    private final int count;
    private final double[] volume;
    private final int[] facets;
    private final double[] lo;
    private final double[] hi;
    private final int[] anyFacet;

    /**
     * A body.
     *
     * @param shell the number of its outer shell
     * @param hollows numbers of the shells inside it
     * @param volumeMm3 hollows taken off
     */
    record Body(int shell, List<Integer> hollows, double volumeMm3) {}

    private Shells(TriMesh mesh, int[] shellOfFacet, int count) {
        this.mesh = mesh;
        this.shellOfFacet = shellOfFacet;
        this.count = count;
        volume = new double[count];
        facets = new int[count];
        anyFacet = new int[count];
        lo = new double[3 * count];
        hi = new double[3 * count];
        Arrays.fill(lo, Double.POSITIVE_INFINITY);
        Arrays.fill(hi, Double.NEGATIVE_INFINITY);
        Vec3[] origin = new Vec3[count];
        for (int f = mesh.facetCount() - 1; f >= 0; f--) {
            int s = shellOfFacet[f];
            anyFacet[s] = f;
            facets[s]++;
            Vec3 o = origin[s] == null ? mesh.cornerPoint(f, 0) : origin[s];
            origin[s] = o;
            Vec3 p = mesh.cornerPoint(f, 0), q = mesh.cornerPoint(f, 1), r = mesh.cornerPoint(f, 2);
            volume[s] += p.minus(o).dot(q.minus(o).cross(r.minus(o))) / 6;
            grow(s, p);
            grow(s, q);
            grow(s, r);
        }
    }

    static Shells of(Edges edges) {
        TriMesh mesh = edges.mesh();
        int n = mesh.facetCount();
        int[] root = new int[n];
        for (int f = 0; f < n; f++) root[f] = f;
        for (int e = 0; e < edges.count(); e++)
            for (int i = 1; i < edges.sideCount(e); i++) join(root, edges.facet(e, 0), edges.facet(e, i));
        int[] number = new int[n];
        Arrays.fill(number, -1);
        int[] shell = new int[n];
        int count = 0;
        for (int f = 0; f < n; f++) {
            int r = find(root, f);
            if (number[r] < 0) number[r] = count++;
            shell[f] = number[r];
        }
        return new Shells(mesh, shell, count);
    }

    private static int find(int[] root, int f) {
        int r = f;
        while (root[r] != r) {
            root[r] = root[root[r]];
            r = root[r];
        }
        return r;
    }

    private static void join(int[] root, int a, int b) {
        int p = find(root, a), q = find(root, b);
        if (p < q) root[q] = p;
        else root[p] = q;
    }

    private void grow(int s, Vec3 p) {
        lo[3 * s] = Math.min(lo[3 * s], p.x());
        lo[3 * s + 1] = Math.min(lo[3 * s + 1], p.y());
        lo[3 * s + 2] = Math.min(lo[3 * s + 2], p.z());
        hi[3 * s] = Math.max(hi[3 * s], p.x());
        hi[3 * s + 1] = Math.max(hi[3 * s + 1], p.y());
        hi[3 * s + 2] = Math.max(hi[3 * s + 2], p.z());
    }

    int count() {
        return count;
    }

    double volume(int shell) {
        return volume[shell];
    }

    int facets(int shell) {
        return facets[shell];
    }

    int anyFacet(int shell) {
        return anyFacet[shell];
    }

    Box3 box(int s) {
        return new Box3(
                new Vec3(lo[3 * s], lo[3 * s + 1], lo[3 * s + 2]), new Vec3(hi[3 * s], hi[3 * s + 1], hi[3 * s + 2]));
    }

    /** The bodies, largest first. */
    List<Body> bodies(ReadGuard guard) {
        int[] holder = new int[count];
        Arrays.fill(holder, -1);
        for (int s = 0; s < count; s++) if (volume[s] < 0) holder[s] = holder(s, guard);
        List<Body> bodies = new ArrayList<>();
        for (int s = 0; s < count; s++) {
            if (holder[s] >= 0) continue;
            List<Integer> hollows = new ArrayList<>();
            double v = volume[s];
            if (v > 0) {
                for (int h = 0; h < count; h++) {
                    if (holder[h] != s) continue;
                    hollows.add(h);
                    v += volume[h];
                }
            }
            bodies.add(new Body(s, hollows, v));
        }
        bodies.sort(LARGEST_FIRST);
        return bodies;
    }

    /** The smallest outward shell around an inward one, or −1. */
    private int holder(int inner, ReadGuard guard) {
        int best = -1;
        Vec3 p = mesh.cornerPoint(anyFacet[inner], 0);
        for (int s = 0; s < count; s++) {
            if (!(volume[s] > -volume[inner]) || best >= 0 && volume[s] >= volume[best] || !boxHolds(s, inner))
                continue;
            guard.at("sorting bodies", 0.6);
            if (windingNumber(s, p) > 0.5) best = s;
        }
        return best;
    }

    private boolean boxHolds(int outer, int inner) {
        for (int k = 0; k < 3; k++)
            if (lo[3 * inner + k] < lo[3 * outer + k] || hi[3 * inner + k] > hi[3 * outer + k]) return false;
        return true;
    }

    /** How often a shell goes round a point: solid angles of its facets (van Oosterom and Strackee 1983), over 4π. */
    private double windingNumber(int shell, Vec3 p) {
        double sum = 0;
        for (int f = 0; f < mesh.facetCount(); f++) {
            if (shellOfFacet[f] != shell) continue;
            Vec3 a = mesh.cornerPoint(f, 0).minus(p),
                    b = mesh.cornerPoint(f, 1).minus(p),
                    c = mesh.cornerPoint(f, 2).minus(p);
            double la = a.length(), lb = b.length(), lc = c.length();
            double below = la * lb * lc + a.dot(b) * lc + b.dot(c) * la + c.dot(a) * lb;
            sum += 2 * Math.atan2(a.dot(b.cross(c)), below);
        }
        return sum / (4 * Math.PI);
    }

    int shellOf(int facet) {
        return shellOfFacet[facet];
    }

    /** The facets of some shells as a mesh of their own. */
    TriMesh extract(List<Integer> shells) {
        boolean[] wanted = new boolean[count];
        for (int s : shells) wanted[s] = true;
        return Facets.keep(mesh, f -> wanted[shellOfFacet[f]]);
    }
}
