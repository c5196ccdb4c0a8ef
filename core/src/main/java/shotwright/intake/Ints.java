package shotwright.intake;

import java.util.Arrays;

/** A growing row of whole numbers without boxing. */
final class Ints {
    private int[] items = new int[48];
    private int count;

    void add(int x) {
        if (count == items.length) items = Arrays.copyOf(items, Math.max(count + 48, count + (count >> 1)));
        items[count++] = x;
    }

    int get(int i) {
        return items[i];
    }

    int count() {
        return count;
    }

    void clear() {
        count = 0;
    }

    int[] toArray() {
        return Arrays.copyOf(items, count);
    }
}
