package shotwright.intake;

import org.jspecify.annotations.Nullable;
import shotwright.brep.ExactBody;
import shotwright.mesh.TriMesh;

/** One object of a file in the file's own numbers, corner points joined. */
final class RawObject {
    private final String name;
    private final double[] xyz;
    private final int[] tri;
    private final long joined;
    private final int collapsed;
    private final int unusable;
    private final @Nullable String firstUnusable;
    private final @Nullable ExactBody exact;

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
        this.exact = null;
    }

    /** A solid with exact faces and the triangles over them. */
    RawObject(String name, TriMesh mesh, ExactBody exact) {
        this.name = name;
        this.xyz = mesh.copyXyz();
        this.tri = mesh.copyTri();
        this.joined = 0;
        this.collapsed = 0;
        this.unusable = 0;
        this.firstUnusable = null;
        this.exact = exact;
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

    /** What is known from exact faces; null when the file gives triangles only. */
    @Nullable ExactBody exact() {
        return exact;
    }

    /** Where the first unusable facet stands in the file. */
    @Nullable String firstUnusable() {
        return firstUnusable;
    }
}
