package shotwright.mesh.complex;

import java.util.ArrayList;
import java.util.List;
import shotwright.geom.Box3;
import shotwright.geom.Plane;

/**
 * Takes a convex tool out of a cell, plane by plane: what lies in front of a plane is set aside, what is left at the end is the tool's, and
 * what was set aside goes back. A local box is cut first; from then on only the facets that touch what is left take part. Round tools are cut
 * in bit-reversed order (0°, 180°, 90°, …), which keeps the pieces compact. After every plane the subdivisions that serve nothing any
 * more are taken back, so that borders stay short and clean.
 */
final class ConvexCut {
    private ConvexCut() {}

    static void apply(Complex c, int cell, List<Plane> planes, Box3 around, int into) {
        int young = c.vertexCount();
        int aside = c.newCell(c.material(cell));
        cut(c, cell, aside, Boxes.planes(around), young);
        boolean[] near = touching(c, cell, young);
        Complex local = c.only(near);
        cut(local, cell, aside, bitReversed(planes), young);
        c.replace(near, local);
        for (int f = 0; f < c.facetCount(); f++) {
            c.retag(f, cell, into);
            c.retag(f, aside, cell);
        }
        c.removeIf(f -> c.front(f) == c.behind(f));
        new Coalesce(c, young).apply();
    }

    private static void cut(Complex c, int cell, int aside, List<Plane> planes, int young) {
        for (Plane p : planes) {
            if (c.split(cell, Level.of(p), aside).facets() == 0) continue;
            c.removeIf(f -> c.front(f) == c.behind(f));
            new Coalesce(c, young).apply();
        }
    }

    /** Facets that hold a vertex of the cell's skin, or one made by this cut. */
    private static boolean[] touching(Complex c, int cell, int young) {
        boolean[] skin = new boolean[c.vertexCount()];
        for (int v = young; v < skin.length; v++) skin[v] = true;
        for (int f = 0; f < c.facetCount(); f++) {
            for (int k = 0; c.bounds(f, cell) && k < 3; k++) skin[c.corner(f, k)] = true;
        }
        boolean[] near = new boolean[c.facetCount()];
        for (int f = 0; f < near.length; f++)
            near[f] = skin[c.corner(f, 0)] || skin[c.corner(f, 1)] || skin[c.corner(f, 2)];
        return near;
    }

    /** Order by the reversed bits of the index: first the first, then the middle, then the quarters. */
    static <T> List<T> bitReversed(List<T> items) {
        int bits = 32 - Integer.numberOfLeadingZeros(Math.max(1, items.size() - 1));
        List<T> out = new ArrayList<>(items.size());
        for (int i = 0; i < 1 << bits; i++) {
            int r = Integer.reverse(i) >>> (32 - bits);
            if (r < items.size()) out.add(items.get(r));
        }
        return out;
    }
}
