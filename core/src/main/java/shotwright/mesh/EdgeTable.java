package shotwright.mesh;

import java.util.Arrays;

/**
 * A table from a pair of vertices, without regard to order, to a number: open addressing, one long and one int per place, at most two
 * thirds full. Not safe for writing from several threads.
 */
public final class EdgeTable {
    /** Answered for a pair that is not in the table. */
    public static final int NONE = -1;

    private long[] keys;
    private int[] values;
    private int size;
    private int mask;

    /** A table that takes about so many pairs before it grows. */
    public EdgeTable(int expectedCount) {
        int places = Math.max(16, Integer.highestOneBit(Math.max(1, expectedCount) * 2 - 1) << 1);
        keys = new long[places];
        values = new int[places];
        Arrays.fill(keys, NONE);
        mask = places - 1;
    }

    public int size() {
        return size;
    }

    /** The number stored for the pair, or {@link #NONE}. */
    public int get(int a, int b) {
        long key = key(a, b);
        int i = place(key);
        return keys[i] == key ? values[i] : NONE;
    }

    /** Stores the number if the pair is new; answers what stands for the pair afterwards. */
    public int putIfAbsent(int a, int b, int value) {
        long key = key(a, b);
        int i = place(key);
        if (keys[i] == key) return values[i];
        keys[i] = key;
        values[i] = value;
        if (++size * 3L > keys.length * 2L) grow();
        return value;
    }

    private static long key(int a, int b) {
        return a < b ? (long) a << 32 | b : (long) b << 32 | a;
    }

    private int place(long key) {
        long h = key * 0x9E3779B97F4A7C15L;
        int i = (int) (h >>> 32) & mask;
        while (keys[i] != NONE && keys[i] != key) i = i + 1 & mask;
        return i;
    }

    private void grow() {
        long[] oldKeys = keys;
        int[] oldValues = values;
        keys = new long[oldKeys.length * 2];
        values = new int[keys.length];
        Arrays.fill(keys, NONE);
        mask = keys.length - 1;
        for (int i = 0; i < oldKeys.length; i++) {
            if (oldKeys[i] == NONE) continue;
            int j = place(oldKeys[i]);
            keys[j] = oldKeys[i];
            values[j] = oldValues[i];
        }
    }
}
