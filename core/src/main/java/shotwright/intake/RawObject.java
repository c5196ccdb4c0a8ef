package shotwright.intake;

import org.jspecify.annotations.Nullable;

/** One object of a file in the file's own numbers, corner points joined. */
final class RawObject {
    private final String name;
    private final double[] xyz;
    private final int[] tri;
    private final long joined;
    private final int collapsed;
    private final int unusable;
    private final @Nullable String firstUnusable;

    /** Takes the arrays over. */
    RawObject(
            String name,
            double[] xyz,
            int[] tri,
            long joined,
            int collapsed,
            int unusable,
            @Nullable String firstUnusable) {
        this.name = name;
        this.xyz = xyz;
        this.tri = tri;
        this.joined = joined;
        this.collapsed = collapsed;
        this.unusable = unusable;
        this.firstUnusable = firstUnusable;
    }

    String name() {
        return name;
    }

    double[] xyz() {
        return xyz;
    }

    int[] tri() {
        return tri;
    }

    /** Corner points that were given again at a place already known. */
    long joined() {
        return joined;
    }

    /** Facets left out because two corners were the same point. */
    int collapsed() {
        return collapsed;
    }

    /** Facets left out because a corner was no usable number. */
    int unusable() {
        return unusable;
    }

    /** Where the first unusable facet stands in the file. */
    @Nullable String firstUnusable() {
        return firstUnusable;
    }
}
