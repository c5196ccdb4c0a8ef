package shotwright.intake;

import java.util.Arrays;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import shotwright.geom.Vec3;

/**
 * Takes the facets of one object as a reader meets them and joins corner points at identical coordinates (same bits, −0 being 0) on the way,
 * so that facets that were written apart share their vertices. Collapsed facets (two corners the same) and facets with a corner that is no
 * usable number are left out and counted.
 */
final class FacetCollector {
    /** A vertex that is no usable number: not finite, or beyond {@link #FARTHEST}. */
    static final int UNUSABLE = -1;

    /** Farther from the origin than this, in the file's own numbers, nothing can be a part. */
    static final double FARTHEST = 1e9;

    private final ReadGuard guard;
    private final Doubles xyz = new Doubles();
    private final Ints tri = new Ints();
    private int[] slots = new int[64];
    private long cornersGiven;
    private int collapsed;
    private int unusable;
    private @Nullable String firstUnusable;

    FacetCollector(ReadGuard guard) {
        this.guard = guard;
        Arrays.fill(slots, -1);
    }

    /** The index of the vertex at this place, or {@link #UNUSABLE}. */
    int vertex(double x, double y, double z) {
        cornersGiven++;
        if (!(Math.abs(x) <= FARTHEST && Math.abs(y) <= FARTHEST && Math.abs(z) <= FARTHEST)) return UNUSABLE;
        double px = x + 0.0, py = y + 0.0, pz = z + 0.0; // turns −0 into 0
        int mask = slots.length - 1;
        int s = hash(px, py, pz) & mask;
        while (slots[s] >= 0) {
            int v = slots[s];
            if (xyz.get(3 * v) == px && xyz.get(3 * v + 1) == py && xyz.get(3 * v + 2) == pz) return v;
            s = (s + 1) & mask;
        }
        int v = xyz.count() / 3;
        guard.vertices(v + 1L, "");
        xyz.add(px);
        xyz.add(py);
        xyz.add(pz);
        slots[s] = v;
        if (2 * (v + 1) > slots.length) rehash();
        return v;
    }

    /** Takes a facet; {@code place} is asked for only when the facet is unusable. */
    void facet(int a, int b, int c, Supplier<String> place) {
        if (a < 0 || b < 0 || c < 0) {
            if (firstUnusable == null) firstUnusable = place.get();
            unusable++;
        } else if (a == b || b == c || c == a) {
            collapsed++;
        } else {
            guard.facets(tri.count() / 3 + 1L, "");
            tri.add(a);
            tri.add(b);
            tri.add(c);
        }
    }

    /** Where a vertex lies, in the file's own numbers. */
    Vec3 place(int vertex) {
        return new Vec3(xyz.get(3 * vertex), xyz.get(3 * vertex + 1), xyz.get(3 * vertex + 2));
    }

    private void rehash() {
        slots = new int[2 * slots.length];
        Arrays.fill(slots, -1);
        int mask = slots.length - 1;
        for (int v = 0; v < xyz.count() / 3; v++) {
            int s = hash(xyz.get(3 * v), xyz.get(3 * v + 1), xyz.get(3 * v + 2)) & mask;
            while (slots[s] >= 0) s = (s + 1) & mask;
            slots[s] = v;
        }
    }

    private static int hash(double x, double y, double z) {
        long h = Double.doubleToRawLongBits(x) * 0x9E3779B97F4A7C15L;
        h = (h ^ (h >>> 29) ^ Double.doubleToRawLongBits(y)) * 0xBF58476D1CE4E5B9L;
        h = (h ^ (h >>> 32) ^ Double.doubleToRawLongBits(z)) * 0x94D049BB133111EBL;
        return (int) (h ^ (h >>> 31));
    }

    int facetCount() {
        return tri.count() / 3;
    }

    int vertexCount() {
        return xyz.count() / 3;
    }

    /** The object as it stands, in the file's own numbers, without vertices that no facet uses. */
    RawObject finish(String name) {
        int[] corners = tri.toArray();
        int[] fresh = new int[vertexCount()];
        Arrays.fill(fresh, -1);
        int used = 0;
        for (int i = 0; i < corners.length; i++) {
            if (fresh[corners[i]] < 0) fresh[corners[i]] = used++;
            corners[i] = fresh[corners[i]];
        }
        double[] p = new double[3 * used];
        for (int v = 0; v < fresh.length; v++) {
            if (fresh[v] >= 0) for (int k = 0; k < 3; k++) p[3 * fresh[v] + k] = xyz.get(3 * v + k);
        }
        return new RawObject(name, p, corners, cornersGiven - vertexCount(), collapsed, unusable, firstUnusable);
    }
}
