package shotwright.intake;

import java.util.Arrays;

/** A growing row of numbers without boxing. */
final class Doubles {
    private double[] items = new double[48];
    private int count;

    void add(double x) {
        if (count == items.length) items = Arrays.copyOf(items, Math.max(count + 48, count + (count >> 1)));
        items[count++] = x;
    }

    double get(int i) {
        return items[i];
    }

    int count() {
        return count;
    }

    double[] toArray() {
        return Arrays.copyOf(items, count);
    }
}
