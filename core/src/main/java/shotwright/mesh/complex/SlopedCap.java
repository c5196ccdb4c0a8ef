package shotwright.mesh.complex;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;
import org.tinfour.common.IConstraint;
import org.tinfour.common.Vertex;
import org.tinfour.standard.IncrementalTin;
import org.tinfour.utils.TriangleCollector;

/**
 * Spans a border that is not flat with a surface of limited slope: at distance r from the border points of height z the surface lies at
 * clamp(rest, max(z − k r), min(z + k r)). Points are added on a quadtree that is fine at the border and coarse away from it, only where the
 * surface has not yet come to rest. Works on borders seen along +z.
 */
final class SlopedCap {
    private static final int MOST_POINTS = 20_000;

    private final Complex c;
    private final Outline border;
    private final Grade.Sloped grade;
    /** Border points away from the rest height, the only ones that raise or lower the surface. */
    private final int[] lifted;

    SlopedCap(Complex complex, Outline border, Grade.Sloped grade) {
        this.c = complex;
        this.border = border;
        this.grade = grade;
        IntList l = new IntList();
        for (int i = 0; i < border.vertex.length; i++) {
            if (Math.abs(border.height[i] - grade.restHeight()) > c.grain().snap()) l.add(i);
        }
        lifted = l.toArray();
    }

    /** Adds the cap; null, with nothing changed, when the border is flat at rest or cannot be spanned this way. */
    @Nullable Cap span(int front, int behind) {
        if (lifted.length == 0) return null;
        IntList triangles = new IntList();
        double tolerance = c.grain().spike();
        Spikes spikes = new Spikes(border, tolerance, triangles);
        Outline plain = border.with(spikes.clip()).nudged(c.grain().nudge());
        List<Polygons.Patch> patches = Polygons.nest(plain, tolerance, triangles);
        if (patches == null) return null;
        List<Vertex> inside = new ArrayList<>();
        double covered = 0, expected = 0;
        for (Polygons.Patch p : patches) {
            int first = triangles.size();
            if (!triangulate(plain, p, inside, triangles)) return null;
            for (int i = first; i < triangles.size(); i += 3) covered += area(plain, inside, triangles, i);
            expected += plain.area(p.shell());
            for (int[] h : p.holes()) expected += plain.area(h);
        }
        if (Math.abs(covered - expected) > 1e-9 * expected || !Fill.matches(border, triangles)) return null;
        return add(triangles, inside, front, behind, spikes.clipped());
    }

    private Cap add(IntList triangles, List<Vertex> inside, int front, int behind, int spikes) {
        int n = border.vertex.length, v0 = c.vertexCount();
        for (Vertex v : inside) {
            // the plane of the border has u = +y and v = −x for a view along +z
            c.addVertex(-v.y, v.x, height(v.x, v.y));
        }
        int source = -1;
        for (int i = 0; i < triangles.size(); i += 3) {
            int[] t = new int[3];
            for (int k = 0; k < 3; k++) {
                int p = triangles.get(i + k);
                t[k] = p < n ? border.vertex[p] : v0 + p - n;
            }
            int s = c.newSource();
            if (source < 0) source = s;
            c.addFacet(t[0], t[1], t[2], front, behind, s);
        }
        return new Cap(source, triangles.size() / 3, border.loops.size(), spikes, inside.size());
    }

    private static double area(Outline o, List<Vertex> inside, IntList t, int i) {
        int n = o.vertex.length;
        double[] x = new double[3], y = new double[3];
        for (int k = 0; k < 3; k++) {
            int p = t.get(i + k);
            x[k] = p < n ? o.px[p] : inside.get(p - n).x;
            y[k] = p < n ? o.py[p] : inside.get(p - n).y;
        }
        return Math.abs((x[1] - x[0]) * (y[2] - y[0]) - (x[2] - x[0]) * (y[1] - y[0])) / 2;
    }

    private boolean triangulate(Outline plain, Polygons.Patch patch, List<Vertex> inside, IntList into) {
        IncrementalTin tin = new IncrementalTin(plain.length(patch.shell()) / Math.max(3, plain.vertex.length));
        List<IConstraint> rings = new ArrayList<>();
        rings.add(Triangulator.constraint(plain, patch.shell()));
        for (int[] h : patch.holes()) rings.add(Triangulator.constraint(plain, h));
        for (IConstraint r : rings) for (Vertex v : r.getVertices()) tin.add(v);
        for (Vertex v : points(plain, patch, inside.size())) {
            inside.add(v);
            tin.add(v);
        }
        try {
            tin.addConstraints(rings, true);
        } catch (RuntimeException crossesItself) {
            return false;
        }
        if (tin.getSyntheticVertexCount() > 0) return false;
        TriangleCollector.visitTrianglesConstrained(
                tin, v -> into.add(v[0].getIndex(), v[1].getIndex(), v[2].getIndex()));
        return true;
    }

    /** Centres of the quadtree's leaves that lie inside the patch and clear of its border. */
    private List<Vertex> points(Outline plain, Polygons.Patch patch, int already) {
        List<Vertex> out = new ArrayList<>();
        var locator = new IndexedPointInAreaLocator(Polygons.polygon(plain, patch));
        double x0 = Double.POSITIVE_INFINITY, y0 = x0, x1 = Double.NEGATIVE_INFINITY, y1 = x1;
        for (int p : patch.shell()) {
            x0 = Math.min(x0, plain.px[p]);
            x1 = Math.max(x1, plain.px[p]);
            y0 = Math.min(y0, plain.py[p]);
            y1 = Math.max(y1, plain.py[p]);
        }
        Deque<double[]> cells = new ArrayDeque<>();
        double root = Math.max(x1 - x0, y1 - y0);
        cells.push(new double[] {(x0 + x1) / 2, (y0 + y1) / 2, root});
        while (!cells.isEmpty() && out.size() < MOST_POINTS) {
            double[] q = cells.pop();
            double size = q[2], near = nearest(q[0], q[1]);
            if (!moving(q[0], q[1], size)) continue;
            if (size > Math.max(grade.spacing(), 0.6 * near)) {
                for (int k = 0; k < 4; k++) {
                    double dx = (k & 1) == 0 ? -size / 4 : size / 4, dy = (k & 2) == 0 ? -size / 4 : size / 4;
                    cells.push(new double[] {q[0] + dx, q[1] + dy, size / 2});
                }
            } else if (near > size / 2 && locator.locate(new Coordinate(q[0], q[1])) == Location.INTERIOR) {
                out.add(new Vertex(q[0], q[1], 0, border.vertex.length + already + out.size()));
            }
        }
        return out;
    }

    /** True when the surface is away from rest somewhere in a square, judged by the reach of every lifted point. */
    private boolean moving(double x, double y, double size) {
        for (int i : lifted) {
            double reach = Math.abs(border.height[i] - grade.restHeight()) / grade.slope() + 1.5 * size;
            double dx = border.px[i] - x, dy = border.py[i] - y;
            if (dx * dx + dy * dy < reach * reach) return true;
        }
        return false;
    }

    private double nearest(double x, double y) {
        double best = Double.POSITIVE_INFINITY;
        for (int i = 0; i < border.vertex.length; i++) {
            double dx = border.px[i] - x, dy = border.py[i] - y;
            best = Math.min(best, dx * dx + dy * dy);
        }
        return Math.sqrt(best);
    }

    private double height(double x, double y) {
        double low = Double.NEGATIVE_INFINITY, high = Double.POSITIVE_INFINITY;
        for (int i : lifted) {
            double rise = grade.slope() * Math.hypot(border.px[i] - x, border.py[i] - y);
            low = Math.max(low, border.height[i] - rise);
            high = Math.min(high, border.height[i] + rise);
        }
        double rest = grade.restHeight();
        return low > high ? (low + high) / 2 : Math.clamp(rest, low, high);
    }
}
