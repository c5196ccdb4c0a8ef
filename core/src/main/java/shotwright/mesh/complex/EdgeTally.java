package shotwright.mesh.complex;

import java.util.Arrays;

/** Numbers kept by edge, where an edge is an unordered pair of vertices. Open addressing, no boxing. */
public final class EdgeTally {
    private static final long FREE = -1;

    private long[] keys;
    private int[] values;
    private int size;

    public EdgeTally(int expected) {
        int n = Integer.highestOneBit(Math.max(8, expected) * 2 - 1) * 2;
        keys = new long[n];
        values = new int[n];
        Arrays.fill(keys, FREE);
    }

    public int size() {
        return size;
    }

    /** The number kept for an edge, or {@code absent}. */
    public int get(int a, int b, int absent) {
        int i = place(key(a, b));
        return keys[i] == FREE ? absent : values[i];
    }

    public void put(int a, int b, int value) {
        int i = claim(a, b); // first: it may replace the arrays
        values[i] = value;
    }

    /** Counts a directed edge: +1 from the lower to the higher vertex, −1 the other way. */
    public void addDirected(int from, int to) {
        int i = claim(from, to);
        values[i] += from < to ? 1 : -1;
    }

    /** Calls back for every edge with its lower vertex, its higher vertex and the number kept, in no particular but repeatable order. */
    public void forEach(Visitor visitor) {
        for (int i = 0; i < keys.length; i++) {
            if (keys[i] != FREE) visitor.visit((int) (keys[i] >>> 32), (int) keys[i], values[i]);
        }
    }

    /** Receives the edges of a table. */
    @FunctionalInterface
    public interface Visitor {
        void visit(int low, int high, int value);
    }

    private int claim(int a, int b) {
        if (2 * (size + 1) > keys.length) grow();
        long k = key(a, b);
        int i = place(k);
        if (keys[i] == FREE) {
            keys[i] = k;
            size++;
        }
        return i;
    }

    private int place(long key) {
        int mask = keys.length - 1;
        int i = (int) (mix(key) & mask);
        while (keys[i] != key && keys[i] != FREE) i = (i + 1) & mask;
        return i;
    }

    private void grow() {
        long[] oldKeys = keys;
        int[] oldValues = values;
        keys = new long[2 * oldKeys.length];
        values = new int[keys.length];
        Arrays.fill(keys, FREE);
        for (int i = 0; i < oldKeys.length; i++) {
            if (oldKeys[i] == FREE) continue;
            int j = place(oldKeys[i]);
            keys[j] = oldKeys[i];
            values[j] = oldValues[i];
        }
    }

    private static long key(int a, int b) {
        return ((long) Math.min(a, b) << 32) | Math.max(a, b);
    }

    private static long mix(long k) {
        long h = k * 0x9E3779B97F4A7C15L;
        return h ^ (h >>> 32);
    }
}
