package shotwright.mesh.complex;

import java.util.ArrayList;
import java.util.List;
import shotwright.geom.Box3;
import shotwright.geom.Plane;

/**
 * Takes a convex tool out of a cell, plane by plane: what lies in front of a plane is set aside, what is left at the end is the tool's, and
 * what was set aside goes back. A local box is cut first, so that the tool's own planes meet few facets; round tools are cut in bit-reversed
 * order (0°, 180°, 90°, …), which keeps the pieces compact. After every plane the
 * subdivisions that serve nothing any more are taken back, so that borders stay short and clean.
 */
final class ConvexCut {
    private ConvexCut() {}

    static void apply(Complex c, int cell, List<Plane> planes, Box3 around, int into) {
        int before = c.vertexCount();
        int aside = c.newCell(c.material(cell));
        List<Plane> order = new ArrayList<>(Boxes.planes(around));
        order.addAll(bitReversed(planes));
        for (Plane p : order) {
            c.split(cell, Level.of(p), aside);
            c.removeIf(f -> c.front(f) == c.behind(f));
            new Coalesce(c, before).apply();
        }
        for (int f = 0; f < c.facetCount(); f++) {
            c.retag(f, cell, into);
            c.retag(f, aside, cell);
        }
        c.removeIf(f -> c.front(f) == c.behind(f));
        new Coalesce(c, before).apply();
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
