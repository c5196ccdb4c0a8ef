package shotwright.mesh.complex;

import java.util.Arrays;

/** A growing list of numbers without boxing. */
final class IntList {
    private int[] items = new int[12];
    private int size;

    int size() {
        return size;
    }

    int get(int i) {
        return items[i];
    }

    void add(int item) {
        if (size == items.length) items = Arrays.copyOf(items, 2 * size);
        items[size++] = item;
    }

    void add(int a, int b, int c) {
        add(a);
        add(b);
        add(c);
    }

    void clear() {
        size = 0;
    }

    int[] toArray() {
        return Arrays.copyOf(items, size);
    }
}
