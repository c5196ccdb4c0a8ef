package shotwright.machining.contact;

import shotwright.cutter.CutterProfile;

/**
 * The exact height at which a cutter let down along its axis comes to rest on a mesh. Immutable; any number of threads may ask at once, each
 * with a {@link Cursor} of its own. A search goes down the tree by the best height still possible under each box and starts from what was
 * touched last, so places asked along a line cost little.
 *
 * <p>A facet rising with slope m carries the tip at its plane's height on the axis plus m·ρ − g(ρ), where ρ is the contact radius of that
 * slope, if the contact lies within the facet; else its edges carry it ({@link EdgeContact}).
 */
public final class DropCutter {
    private static final int DEEPEST = 128;
    /** How far outside a facet a contact may lie, in lengths of its sides, so that none falls between two. */
    private static final double SEAM_SHARE = 1e-10;
    /** Bounds this much too low still count, mm: what is found then does not depend on what was asked before. */
    private static final double ROUNDING_MM = 1e-11;

    private final TriangleTree tree;
    private final CutterProfile profile;
    private final double floorMm;
    private final double end2;
    /** Facets in tree order: contact seen from the axis in x and y, tip above the plane on the axis. */
    private final double[] contacts;

    /**
     * @param tree the facets
     * @param profile the cutting end
     * @param floorMm the lowest height there is: where nothing is touched, or −∞
     */
    public DropCutter(TriangleTree tree, CutterProfile profile, double floorMm) {
        this.tree = tree;
        this.profile = profile;
        this.floorMm = floorMm;
        end2 = profile.largestRadiusMm() * profile.largestRadiusMm();
        contacts = new double[3 * tree.facetCount()];
        for (int i = 0; i < contacts.length; i += 3) {
            double a = tree.planes[i], b = tree.planes[i + 1], slope = Math.sqrt(a * a + b * b);
            if (slope == 0) continue;
            if (slope > TriangleTree.UPRIGHT_SLOPE) {
                contacts[i + 2] = Double.NEGATIVE_INFINITY;
                continue;
            }
            double rho = profile.contactRadiusMm(slope);
            contacts[i] = rho * a / slope;
            contacts[i + 1] = rho * b / slope;
            contacts[i + 2] = slope * rho - profile.heightMm(rho);
        }
    }

    public DropCutter(TriangleTree tree, CutterProfile profile) {
        this(tree, profile, Double.NEGATIVE_INFINITY);
    }

    public CutterProfile profile() {
        return profile;
    }

    public TriangleTree tree() {
        return tree;
    }

    /** The same facets under another cutter. */
    public DropCutter with(CutterProfile other) {
        return new DropCutter(tree, other, floorMm);
    }

    /** What one thread remembers from question to question. */
    public static final class Cursor {
        private final int[] stack = new int[DEEPEST];
        private final double[] bounds = new double[DEEPEST];
        private int last = -1;
        private double best;

        /** The facet of the mesh touched last, or −1. */
        public int facet(DropCutter of) {
            return last < 0 ? -1 : of.tree.facet(last);
        }
    }

    /** The tip's height with the axis at (x, y), millimetres; the floor where nothing is under the cutter. For single questions. */
    public double tipMm(double xMm, double yMm) {
        return tipMm(xMm, yMm, new Cursor());
    }

    /** The tip's height with the axis at (x, y), millimetres; the floor where nothing is under the cutter. */
    public double tipMm(double xMm, double yMm, Cursor c) {
        c.best = floorMm;
        if (c.last >= 0) {
            int warm = c.last;
            c.last = -1;
            if (warm < tree.facetCount()) touch(warm, xMm, yMm, c);
        }
        int[] links = tree.links;
        int top = 0, node = 0;
        double bound = bound(0, xMm, yMm, c.best);
        while (true) {
            if (bound > c.best) {
                int link = links[node];
                if (link < 0) {
                    int code = -1 - link;
                    for (int i = code >> 3, to = i + (code & 7); i < to; i++) touch(i, xMm, yMm, c);
                } else {
                    double first = bound(link, xMm, yMm, c.best), second = bound(link + 1, xMm, yMm, c.best);
                    boolean swap = second > first;
                    double worse = swap ? first : second;
                    if (worse > c.best) {
                        c.stack[top] = swap ? link : link + 1;
                        c.bounds[top++] = worse;
                    }
                    node = swap ? link + 1 : link;
                    bound = swap ? second : first;
                    continue;
                }
            }
            if (top == 0) return c.best;
            node = c.stack[--top];
            bound = c.bounds[top];
        }
    }

    /** No tip can stand higher for what lies in a box. */
    private double bound(int node, double x, double y, double best) {
        double[] b = tree.boxes;
        int k = 5 * node;
        double high = b[k + 4] + ROUNDING_MM;
        if (!(high > best)) return Double.NEGATIVE_INFINITY;
        double dx = Math.max(0, Math.max(b[k] - x, x - b[k + 1])),
                dy = Math.max(0, Math.max(b[k + 2] - y, y - b[k + 3]));
        double d2 = dx * dx + dy * dy;
        if (d2 > end2) return Double.NEGATIVE_INFINITY;
        return d2 == 0 ? high : high - profile.heightMm(Math.sqrt(d2));
    }

    private void touch(int i, double x, double y, Cursor c) {
        double[] t = tree.planes;
        int k = 3 * i;
        double tip = t[k] * x + t[k + 1] * y + t[k + 2] + contacts[k + 2];
        if (tip > c.best && inside(9 * i, x + contacts[k], y + contacts[k + 1])) {
            c.best = tip;
            c.last = i;
        }
        int kept = tree.edges[i];
        if ((kept & 1) != 0) edge(9 * i, 9 * i + 3, i, x, y, c);
        if ((kept & 2) != 0) edge(9 * i + 3, 9 * i + 6, i, x, y, c);
        if ((kept & 4) != 0) edge(9 * i + 6, 9 * i, i, x, y, c);
    }

    private boolean inside(int k, double x, double y) {
        double[] v = tree.corners;
        double ax = v[k], ay = v[k + 1], bx = v[k + 3], by = v[k + 4], cx = v[k + 6], cy = v[k + 7];
        return left(ax, ay, bx, by, x, y) && left(bx, by, cx, cy, x, y) && left(cx, cy, ax, ay, x, y);
    }

    private static boolean left(double ax, double ay, double bx, double by, double x, double y) {
        double ex = bx - ax, ey = by - ay;
        return ex * (y - ay) - ey * (x - ax) >= -SEAM_SHARE * (ex * ex + ey * ey);
    }

    private void edge(int a, int b, int i, double x, double y, Cursor c) {
        double[] v = tree.corners;
        double found = c.best - ROUNDING_MM;
        if (!(Math.max(v[a + 2], v[b + 2]) > found)) return;
        double tip = EdgeContact.tipMm(profile, v[a], v[a + 1], v[a + 2], v[b], v[b + 1], v[b + 2], x, y, found);
        if (tip > c.best) {
            c.best = tip;
            c.last = i;
        }
    }
}
