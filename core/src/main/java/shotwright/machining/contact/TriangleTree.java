package shotwright.machining.contact;

import java.util.Arrays;
import shotwright.geom.Vec3;
import shotwright.mesh.Edges;
import shotwright.mesh.TriMesh;

/**
 * The facets of a mesh that can be seen from above, in a tree of boxes in plan with the highest point of each, and of their edges those that
 * a convex tool can stand on. Immutable; any number of threads may use one at once.
 *
 * <p>Facets that look down or stand upright are touched by their edges at most, and every such edge that shows from above belongs to a facet
 * that looks up. Edges in a valley or in a plane are never touched before the facets beside them.
 */
public final class TriangleTree {
    private static final int LEAF = 4;
    private static final int BINS = 12;
    /** How far, in lengths of the mesh, an edge may bulge and still count as flat. */
    private static final double FLAT_SHARE = 1e-12;

    /** Rise per unit of run from which a facet counts as upright: its plane says too little about its heights. */
    static final double UPRIGHT_SLOPE = 1e6;

    private final TriMesh mesh;
    /** Facets in tree order: nine coordinates each. */
    final double[] corners;
    /** Facets in tree order: rise along x, along y, height at the origin. */
    final double[] planes;
    /** Facets in tree order: bit k is set where side k is kept here. */
    final byte[] edges;
    /** Nodes: lowest x, highest x, lowest y, highest y, highest z. */
    final double[] boxes;
    /** Nodes: the first of two children standing side by side, or −1 − (first facet · 8 + count). */
    final int[] links;

    private final int[] order;

    private int nodeCount = 1;

    private TriangleTree(TriMesh mesh) {
        this.mesh = mesh;
        int[] up = lookingUp(mesh);
        double[] middle = new double[2 * mesh.facetCount()];
        double[] box = new double[5 * mesh.facetCount()];
        for (int f : up) measure(f, box, middle);
        double[] growing = new double[5 * Math.max(1, 2 * up.length)];
        int[] growingLinks = new int[Math.max(1, 2 * up.length)];
        if (up.length > 0) split(up, 0, up.length, 0, box, middle, growing, growingLinks);
        boxes = Arrays.copyOf(growing, 5 * nodeCount);
        links = Arrays.copyOf(growingLinks, nodeCount);
        order = up;
        corners = new double[9 * up.length];
        planes = new double[3 * up.length];
        for (int i = 0; i < up.length; i++) fill(i);
        edges = keptEdges();
    }

    /** Builds the tree. @throws IllegalArgumentException when no facet looks up */
    public static TriangleTree of(TriMesh mesh) {
        TriangleTree tree = new TriangleTree(mesh);
        if (tree.order.length == 0)
            throw new IllegalArgumentException("mesh: no facet of " + mesh.facetCount() + " looks up; turn it over");
        return tree;
    }

    public TriMesh mesh() {
        return mesh;
    }

    /** How many facets look up. */
    public int facetCount() {
        return order.length;
    }

    /** The mesh's number of a facet in tree order. */
    int facet(int place) {
        return order[place];
    }

    private static int[] lookingUp(TriMesh mesh) {
        int[] up = new int[mesh.facetCount()];
        int n = 0;
        for (int f = 0; f < up.length; f++) if (mesh.doubleAreaNormal(f).z() > 0) up[n++] = f;
        return Arrays.copyOf(up, n);
    }

    private void measure(int f, double[] box, double[] middle) {
        double x0 = Double.POSITIVE_INFINITY, x1 = -x0, y0 = x0, y1 = -x0, z1 = -x0;
        for (int k = 0; k < 3; k++) {
            int v = mesh.corner(f, k);
            x0 = Math.min(x0, mesh.x(v));
            x1 = Math.max(x1, mesh.x(v));
            y0 = Math.min(y0, mesh.y(v));
            y1 = Math.max(y1, mesh.y(v));
            z1 = Math.max(z1, mesh.z(v));
        }
        box[5 * f] = x0;
        box[5 * f + 1] = x1;
        box[5 * f + 2] = y0;
        box[5 * f + 3] = y1;
        box[5 * f + 4] = z1;
        middle[2 * f] = (x0 + x1) / 2;
        middle[2 * f + 1] = (y0 + y1) / 2;
    }

    private void split(
            int[] at, int from, int to, int node, double[] box, double[] middle, double[] out, int[] outLinks) {
        double[] all = around(at, from, to, box);
        System.arraycopy(all, 0, out, 5 * node, 5);
        if (to - from <= LEAF) {
            outLinks[node] = -1 - (from * 8 + to - from);
            return;
        }
        int cut = partition(at, from, to, box, middle);
        int child = nodeCount;
        nodeCount += 2;
        outLinks[node] = child;
        split(at, from, cut, child, box, middle, out, outLinks);
        split(at, cut, to, child + 1, box, middle, out, outLinks);
    }

    private static double[] around(int[] at, int from, int to, double[] box) {
        double[] all = nothing();
        for (int i = from; i < to; i++) grow(all, box, 5 * at[i]);
        return all;
    }

    private static double[] nothing() {
        double inf = Double.POSITIVE_INFINITY;
        return new double[] {inf, -inf, inf, -inf, -inf};
    }

    private static void grow(double[] all, double[] box, int k) {
        all[0] = Math.min(all[0], box[k]);
        all[1] = Math.max(all[1], box[k + 1]);
        all[2] = Math.min(all[2], box[k + 2]);
        all[3] = Math.max(all[3], box[k + 3]);
        all[4] = Math.max(all[4], box[k + 4]);
    }

    private static double girth(double[] b) {
        return b[1] < b[0] ? 0 : b[1] - b[0] + b[3] - b[2];
    }

    /** Cuts where the girths of both sides, weighed with their numbers, add up to least; in the middle when all middles coincide. */
    private static int partition(int[] at, int from, int to, double[] box, double[] middle) {
        double least = Double.POSITIVE_INFINITY, bestLo = 0, bestStep = 0;
        int bestAxis = -1, bestBin = 0;
        for (int axis = 0; axis < 2; axis++) {
            double lo = Double.POSITIVE_INFINITY, hi = Double.NEGATIVE_INFINITY;
            for (int i = from; i < to; i++) {
                lo = Math.min(lo, middle[2 * at[i] + axis]);
                hi = Math.max(hi, middle[2 * at[i] + axis]);
            }
            double step = (hi - lo) / BINS;
            if (!(step > 0)) continue;
            double[][] sides = new double[BINS][];
            int[] count = new int[BINS];
            for (int i = from; i < to; i++) {
                int b = bin(middle[2 * at[i] + axis], lo, step);
                double[] side = sides[b];
                if (side == null) sides[b] = side = nothing();
                grow(side, box, 5 * at[i]);
                count[b]++;
            }
            double[] upper = new double[BINS];
            double[] run = nothing();
            for (int b = BINS - 1, n = 0; b > 0; b--) {
                if (sides[b] != null) grow(run, sides[b], 0);
                n += count[b];
                upper[b] = n * girth(run);
            }
            run = nothing();
            for (int b = 0, n = 0; b < BINS - 1; b++) {
                if (sides[b] != null) grow(run, sides[b], 0);
                n += count[b];
                double cost = n * girth(run) + upper[b + 1];
                if (n > 0 && n < to - from && cost < least) {
                    least = cost;
                    bestAxis = axis;
                    bestBin = b;
                    bestLo = lo;
                    bestStep = step;
                }
            }
        }
        if (bestAxis < 0) return (from + to) / 2;
        int cut = from;
        for (int i = from; i < to; i++)
            if (bin(middle[2 * at[i] + bestAxis], bestLo, bestStep) <= bestBin) {
                int swap = at[i];
                at[i] = at[cut];
                at[cut++] = swap;
            }
        return cut;
    }

    private static int bin(double at, double lo, double step) {
        return Math.min(BINS - 1, (int) ((at - lo) / step));
    }

    private void fill(int place) {
        for (int k = 0; k < 3; k++) {
            int v = mesh.corner(order[place], k);
            corners[9 * place + 3 * k] = mesh.x(v);
            corners[9 * place + 3 * k + 1] = mesh.y(v);
            corners[9 * place + 3 * k + 2] = mesh.z(v);
        }
        Vec3 n = mesh.doubleAreaNormal(order[place]);
        double a = -n.x() / n.z(), b = -n.y() / n.z();
        planes[3 * place] = a;
        planes[3 * place + 1] = b;
        planes[3 * place + 2] = corners[9 * place + 2] - a * corners[9 * place] - b * corners[9 * place + 1];
    }

    private byte[] keptEdges() {
        Edges table = Edges.of(mesh);
        double flat = FLAT_SHARE * mesh.box().diagonal();
        boolean[] done = new boolean[table.count()];
        byte[] kept = new byte[order.length];
        for (int i = 0; i < order.length; i++)
            for (int side = 0; side < 3; side++) {
                int e = table.edge(order[i], side);
                if (e == Edges.NONE || done[e]) continue;
                done[e] = true;
                if (!valley(table, e, flat)) kept[i] |= (byte) (1 << side);
            }
        return kept;
    }

    private boolean valley(Edges table, int e, double flat) {
        if (table.sideCount(e) != 2) return false;
        int f = table.facet(e, 0), g = table.facet(e, 1);
        Vec3 n = mesh.doubleAreaNormal(f);
        if (upright(n) || upright(mesh.doubleAreaNormal(g))) return false;
        int opposite = mesh.corner(g, (table.side(e, 1) + 2) % 3);
        return mesh.vertex(opposite).minus(mesh.vertex(table.low(e))).dot(n.unit()) >= -flat;
    }

    private static boolean upright(Vec3 n) {
        return !(n.z() * UPRIGHT_SLOPE > Math.hypot(n.x(), n.y()));
    }
}
