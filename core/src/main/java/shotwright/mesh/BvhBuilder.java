package shotwright.mesh;

import java.util.Arrays;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;

/**
 * Builds the box tree of a {@link Bvh} top down: at every node the facets are sorted into bins along each axis by the centre of their box
 * and cut where Σ (box area × facets) is least (surface area heuristic: MacDonald and Booth 1990, Visual Computer 6; binned after Wald
 * 2007, IEEE Symposium on Interactive Ray Tracing).
 */
final class BvhBuilder {
    static final int LEAF = 4;
    private static final int BINS = 16;
    /** Beyond this depth facets are halved by number, so that the depth stays below 96 whatever the mesh. */
    private static final int CAREFUL_DEPTH = 60;

    private static final int PARALLEL = 16_384;

    final int[] order;
    /** Two boxes to a node: low x, y, z and high x, y, z of the first child, then of the second. */
    float[] boxes;
    /** Two children to a node: a node number, or for a leaf −1 − (first facet · 8 + facets). */
    int[] children;

    final int root;
    private final float[] facetBox;

    BvhBuilder(TriMesh mesh, double[] centre, double pad) {
        int n = mesh.facetCount();
        facetBox = new float[6 * n];
        order = new int[n];
        for (int f = 0; f < n; f++) {
            order[f] = f;
            box(mesh, f, centre, pad);
        }
        boxes = new float[12 * Math.max(1, n - 1)];
        Arrays.fill(boxes, Float.NaN);
        children = new int[2 * Math.max(1, n - 1)];
        root = n <= LEAF ? leaf(0, n) : build(0, n, 0, 0);
        if (root >= 0) closeUp();
    }

    /** Both children's node ranges were given out before it was known how many nodes they need: takes the gaps out, order kept. */
    private void closeUp() {
        int[] fresh = new int[boxes.length / 12];
        int n = 0;
        for (int node = 0; node < fresh.length; node++) {
            boolean used = boxes[12 * node + 3] >= boxes[12 * node];
            fresh[node] = used ? n++ : -1;
        }
        for (int node = 0; node < fresh.length; node++) {
            int to = fresh[node];
            if (to < 0) continue;
            System.arraycopy(boxes, 12 * node, boxes, 12 * to, 12);
            for (int k = 0; k < 2; k++) {
                int child = children[2 * node + k];
                children[2 * to + k] = child < 0 ? child : fresh[child];
            }
        }
        boxes = Arrays.copyOf(boxes, 12 * n);
        children = Arrays.copyOf(children, 2 * n);
    }

    private void box(TriMesh mesh, int f, double[] centre, double pad) {
        double[] xyz = mesh.xyz();
        int[] tri = mesh.tri();
        for (int k = 0; k < 3; k++) {
            double a = xyz[3 * tri[3 * f] + k], b = xyz[3 * tri[3 * f + 1] + k], c = xyz[3 * tri[3 * f + 2] + k];
            facetBox[6 * f + k] = Math.nextDown((float) (Math.min(a, Math.min(b, c)) - centre[k] - pad));
            facetBox[6 * f + 3 + k] = Math.nextUp((float) (Math.max(a, Math.max(b, c)) - centre[k] + pad));
        }
    }

    private static int leaf(int from, int to) {
        return -1 - (from * 8 + (to - from));
    }

    /** Builds the facets {@code from … to} into nodes from {@code node} on; answers the child code. */
    private int build(int from, int to, int node, int depth) {
        if (to - from <= LEAF) return leaf(from, to);
        int mid = depth > CAREFUL_DEPTH ? -1 : split(from, to);
        if (mid <= from || mid >= to) mid = (from + to) >>> 1;
        int cut = mid;
        bound(from, cut, 12 * node);
        bound(cut, to, 12 * node + 6);
        int second = node + Math.max(1, cut - from);
        if (to - from > PARALLEL) {
            ForkJoinTask<Integer> other = ForkJoinPool.commonPool().submit(() -> build(cut, to, second, depth + 1));
            children[2 * node] = build(from, cut, node + 1, depth + 1);
            children[2 * node + 1] = other.join();
        } else {
            children[2 * node] = build(from, cut, node + 1, depth + 1);
            children[2 * node + 1] = build(cut, to, second, depth + 1);
        }
        return node;
    }

    private void bound(int from, int to, int at) {
        Arrays.fill(boxes, at, at + 3, Float.POSITIVE_INFINITY);
        Arrays.fill(boxes, at + 3, at + 6, Float.NEGATIVE_INFINITY);
        for (int i = from; i < to; i++) grow(boxes, at, facetBox, 6 * order[i]);
    }

    private static void grow(float[] box, int at, float[] by, int byAt) {
        for (int k = 0; k < 3; k++) {
            box[at + k] = Math.min(box[at + k], by[byAt + k]);
            box[at + 3 + k] = Math.max(box[at + 3 + k], by[byAt + 3 + k]);
        }
    }

    /** Orders the facets about the cheapest cut; answers where the second child begins, or −1 when no cut parts them. */
    private int split(int from, int to) {
        float[] c = centreBounds(from, to);
        Cut best = null;
        for (int axis = 0; axis < 3; axis++) {
            if (!(c[axis + 3] > c[axis])) continue;
            Cut cut = cheapest(from, to, axis, c[axis], BINS * (1 - 1e-6f) / (c[axis + 3] - c[axis]));
            if (best == null || cut.cost < best.cost) best = cut;
        }
        if (best == null) return -1;
        int i = from, j = to - 1;
        while (i <= j) {
            if (bin(order[i], best.axis, best.low, best.scale) <= best.lastBin) i++;
            else {
                int s = order[i];
                order[i] = order[j];
                order[j--] = s;
            }
        }
        return i;
    }

    private record Cut(int axis, int lastBin, float low, float scale, double cost) {}

    private float middle(int facet, int axis) {
        return facetBox[6 * facet + axis] + facetBox[6 * facet + 3 + axis];
    }

    private int bin(int facet, int axis, float low, float scale) {
        return Math.clamp((int) ((middle(facet, axis) - low) * scale), 0, BINS - 1);
    }

    private float[] centreBounds(int from, int to) {
        float[] c = {
            Float.POSITIVE_INFINITY, Float.POSITIVE_INFINITY, Float.POSITIVE_INFINITY,
            Float.NEGATIVE_INFINITY, Float.NEGATIVE_INFINITY, Float.NEGATIVE_INFINITY
        };
        for (int i = from; i < to; i++) {
            for (int k = 0; k < 3; k++) {
                float m = middle(order[i], k);
                c[k] = Math.min(c[k], m);
                c[k + 3] = Math.max(c[k + 3], m);
            }
        }
        return c;
    }

    private Cut cheapest(int from, int to, int axis, float low, float scale) {
        float[] box = new float[6 * BINS];
        int[] count = new int[BINS];
        for (int b = 0; b < BINS; b++) clear(box, 6 * b);
        for (int i = from; i < to; i++) {
            int b = bin(order[i], axis, low, scale);
            count[b]++;
            grow(box, 6 * b, facetBox, 6 * order[i]);
        }
        double[] below = new double[BINS];
        float[] run = new float[6];
        clear(run, 0);
        int n = 0;
        for (int b = 0; b < BINS - 1; b++) {
            n += count[b];
            grow(run, 0, box, 6 * b);
            below[b] = n == 0 ? 0 : n * halfArea(run);
        }
        clear(run, 0);
        n = 0;
        int last = 0;
        double cost = Double.POSITIVE_INFINITY;
        for (int b = BINS - 1; b > 0; b--) {
            n += count[b];
            grow(run, 0, box, 6 * b);
            if (n == 0 || n == to - from) continue;
            double both = below[b - 1] + n * halfArea(run);
            if (both < cost) {
                cost = both;
                last = b - 1;
            }
        }
        return new Cut(axis, last, low, scale, cost);
    }

    private static void clear(float[] box, int at) {
        Arrays.fill(box, at, at + 3, Float.POSITIVE_INFINITY);
        Arrays.fill(box, at + 3, at + 6, Float.NEGATIVE_INFINITY);
    }

    private static double halfArea(float[] b) {
        double x = b[3] - b[0], y = b[4] - b[1], z = b[5] - b[2];
        return x * y + y * z + z * x;
    }
}
