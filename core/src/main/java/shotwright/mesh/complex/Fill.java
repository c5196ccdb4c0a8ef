package shotwright.mesh.complex;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shotwright.geom.Vec3;

/**
 * Spans an outline with triangles on its own points. Tries the plain way first, then with spikes clipped, each with both triangulators, and
 * takes the first result that passes both checks: every border edge is matched exactly once and nothing else is left open; the triangles'
 * areas add up to the polygons'.
 *
 * @param triangles corners, three a triangle, as points of the outline, counter-clockwise
 * @param spikes how many spikes were clipped
 */
record Fill(int[] triangles, int spikes) {
    private static final double AREA_AGREEMENT = 1e-9;

    /** Fills an outline or says where it cannot be filled. */
    static Fill of(Complex c, Outline outline) {
        Fill done = attempt(c.grain(), outline);
        if (done != null) return done;
        throw new SplitFailure("the border of the cut crosses itself", crossing(c, outline));
    }

    /** Fills an outline; null when it crosses itself. */
    static @Nullable Fill attempt(Grain grain, Outline outline) {
        if (outline.loops.isEmpty()) return new Fill(new int[0], 0);
        if (outline.loops.size() == 1 && outline.loops.getFirst().length == 3)
            return new Fill(outline.loops.getFirst().clone(), 0);
        for (double tolerance : new double[] {grain.nudge(), grain.snap(), grain.spike()}) {
            IntList triangles = new IntList();
            Spikes spikes = new Spikes(outline, tolerance, triangles);
            Outline plain = outline.with(spikes.clip()).nudged(grain.nudge());
            for (Triangulator t : Triangulator.values()) {
                IntList all = new IntList();
                for (int i = 0; i < triangles.size(); i++) all.add(triangles.get(i));
                if (spans(plain, t, tolerance, all) && matches(outline, all))
                    return new Fill(all.toArray(), spikes.clipped());
            }
        }
        return null;
    }

    private static boolean spans(Outline plain, Triangulator triangulator, double tolerance, IntList into) {
        int before = into.size();
        double expected = 0, scale = 0;
        List<Polygons.Patch> patches = Polygons.nest(plain, tolerance, into);
        if (patches == null) return false;
        int slivers = into.size();
        for (Polygons.Patch p : patches) {
            expected += plain.area(p.shell());
            scale += plain.area(p.shell());
            for (int[] h : p.holes()) expected += plain.area(h);
            if (!triangulator.fill(plain, p, into)) return false;
        }
        double covered = 0;
        for (int i = slivers; i < into.size(); i += 3)
            covered += Math.abs(plain.area(into.get(i), into.get(i + 1), into.get(i + 2)));
        return before <= slivers && Math.abs(covered - expected) <= AREA_AGREEMENT * scale;
    }

    /** True when the triangles' directed edges leave exactly the outline's loops. */
    static boolean matches(Outline outline, IntList triangles) {
        EdgeTally net = new EdgeTally(triangles.size());
        for (int i = 0; i < triangles.size(); i += 3) {
            for (int k = 0; k < 3; k++) net.addDirected(triangles.get(i + k), triangles.get(i + (k + 1) % 3));
        }
        for (int[] l : outline.loops) {
            for (int i = 0; i < l.length; i++) net.addDirected(l[(i + 1) % l.length], l[i]);
        }
        int[] open = {0};
        net.forEach((a, b, n) -> open[0] += Math.abs(n));
        return open[0] == 0;
    }

    private static Vec3 crossing(Complex c, Outline outline) {
        int p = Polygons.crossing(outline);
        return c.vertex(outline.vertex[p]);
    }
}
