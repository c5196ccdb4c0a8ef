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
 * Spans a border that is not flat, piece by piece, with a {@link SlopeField}. Points are added on a quadtree that is fine at the border and coarse
 * away from it, only where the surface has not yet come to rest; a piece with a flat border gets none. A piece is also spanned on its own vertices
 * alone, and the way that leaves less steep surface is taken. Works on borders seen along +z.
 */
final class SlopedCap {
    private static final int MOST_POINTS = 20_000;
    private static final double STEEP = Math.sin(Math.toRadians(7));

    private final Complex c;
    private final Outline border;
    private final Grade.Sloped grade;

    /** Points added so far, numbered on from the border's. */
    private final List<double[]> added = new ArrayList<>();

    SlopedCap(Complex complex, Outline border, Grade.Sloped grade) {
        this.c = complex;
        this.border = border;
        this.grade = grade;
    }

    /** Adds the cap; null, with nothing changed, when the border cannot be spanned this way. */
    @Nullable Cap span(int front, int behind) {
        IntList triangles = new IntList();
        double tolerance = c.grain().spike();
        Spikes spikes = new Spikes(border, tolerance, triangles);
        Outline plain = border.with(spikes.clip()).nudged(c.grain().nudge());
        List<Polygons.Patch> patches = Polygons.nest(plain, tolerance, triangles);
        if (patches == null) return null;
        for (Polygons.Patch p : patches) if (!span(plain, p, triangles)) return null;
        if (!Fill.matches(border, triangles)) return null;
        return add(triangles, front, behind, spikes.clipped());
    }

    private Cap add(IntList triangles, int front, int behind, int spikes) {
        int n = border.vertex.length, v0 = c.vertexCount();
        // the plane of the border has u = +y and v = −x for a view along +z
        for (double[] p : added) c.addVertex(-p[1], p[0], p[2]);
        int[] t = new int[triangles.size()];
        for (int i = 0; i < t.length; i++) {
            int p = triangles.get(i);
            t[i] = p < n ? border.vertex[p] : v0 + p - n;
        }
        int source = CapFacets.add(c, t, border.up, front, behind);
        return new Cap(source, t.length / 3, border.loops.size(), spikes, added.size());
    }

    /** Spans one piece both ways and keeps the better one. */
    private boolean span(Outline plain, Polygons.Patch patch, IntList into) {
        SlopeField field = new SlopeField(plain, patch, grade, c.grain());
        IntList bare = new IntList(), eased = new IntList();
        boolean hasBare = triangulate(plain, patch, List.of(), bare);
        if (field.isFlat()) return hasBare && append(bare, into);
        List<double[]> points = points(plain, patch, field);
        boolean hasEased = triangulate(plain, patch, points, eased);
        if (!hasEased) return hasBare && append(bare, into);
        int known = added.size();
        added.addAll(points);
        if (hasBare && steepArea(plain, bare) <= steepArea(plain, eased)) {
            added.subList(known, added.size()).clear();
            return append(bare, into);
        }
        return append(eased, into);
    }

    private static boolean append(IntList from, IntList into) {
        for (int i = 0; i < from.size(); i++) into.add(from.get(i));
        return true;
    }

    /** Constrained Delaunay on the border and further points; false when the border crosses itself or the areas disagree. */
    private boolean triangulate(Outline plain, Polygons.Patch patch, List<double[]> points, IntList into) {
        int first = border.vertex.length + added.size();
        IncrementalTin tin = new IncrementalTin(plain.length(patch.shell()) / Math.max(3, plain.vertex.length));
        List<IConstraint> rings = new ArrayList<>();
        rings.add(Triangulator.constraint(plain, patch.shell()));
        for (int[] h : patch.holes()) rings.add(Triangulator.constraint(plain, h));
        for (IConstraint r : rings) for (Vertex v : r.getVertices()) tin.add(v);
        for (int i = 0; i < points.size(); i++) tin.add(new Vertex(points.get(i)[0], points.get(i)[1], 0, first + i));
        try {
            tin.addConstraints(rings, false);
        } catch (RuntimeException crossesItself) {
            return false;
        }
        if (tin.getSyntheticVertexCount() > 0) return false;
        double[] covered = {0};
        TriangleCollector.visitTrianglesConstrained(tin, v -> {
            into.add(v[0].getIndex(), v[1].getIndex(), v[2].getIndex());
            covered[0] += Math.abs((v[1].x - v[0].x) * (v[2].y - v[0].y) - (v[2].x - v[0].x) * (v[1].y - v[0].y)) / 2;
        });
        double expected = plain.area(patch.shell());
        for (int[] h : patch.holes()) expected += plain.area(h);
        return Math.abs(covered[0] - expected) <= 1e-9 * expected;
    }

    /** Area of the facets nearer to the pull than a sliding fit bears. */
    private double steepArea(Outline plain, IntList t) {
        double sum = 0;
        for (int i = 0; i < t.size(); i += 3) {
            double[] p = point(plain, t.get(i)), q = point(plain, t.get(i + 1)), r = point(plain, t.get(i + 2));
            double ux = q[0] - p[0], uy = q[1] - p[1], uz = q[2] - p[2];
            double vx = r[0] - p[0], vy = r[1] - p[1], vz = r[2] - p[2];
            double nx = uy * vz - uz * vy, ny = uz * vx - ux * vz, nz = ux * vy - uy * vx;
            double size = Math.sqrt(nx * nx + ny * ny + nz * nz);
            if (Math.abs(nz) < STEEP * size) sum += size / 2;
        }
        return sum;
    }

    private double[] point(Outline plain, int p) {
        int n = border.vertex.length;
        return p < n ? new double[] {plain.px[p], plain.py[p], plain.height[p]} : added.get(p - n);
    }

    /** Centres of the quadtree's leaves that lie inside the patch and clear of its border, each with its height. */
    private List<double[]> points(Outline plain, Polygons.Patch patch, SlopeField field) {
        List<double[]> out = new ArrayList<>();
        var locator = new IndexedPointInAreaLocator(Polygons.polygon(plain, patch));
        double x0 = Double.POSITIVE_INFINITY, y0 = x0, x1 = Double.NEGATIVE_INFINITY, y1 = x1;
        for (int p : patch.shell()) {
            x0 = Math.min(x0, plain.px[p]);
            x1 = Math.max(x1, plain.px[p]);
            y0 = Math.min(y0, plain.py[p]);
            y1 = Math.max(y1, plain.py[p]);
        }
        Deque<double[]> cells = new ArrayDeque<>();
        cells.push(new double[] {(x0 + x1) / 2, (y0 + y1) / 2, Math.max(x1 - x0, y1 - y0)});
        while (!cells.isEmpty() && out.size() < MOST_POINTS) {
            double[] q = cells.pop();
            double size = q[2];
            if (!field.isMoving(q[0], q[1], size)) continue;
            double near = field.nearest(q[0], q[1]);
            if (size > Math.max(grade.spacing(), 0.6 * near)) {
                for (int k = 0; k < 4; k++) {
                    double dx = (k & 1) == 0 ? -size / 4 : size / 4, dy = (k & 2) == 0 ? -size / 4 : size / 4;
                    cells.push(new double[] {q[0] + dx, q[1] + dy, size / 2});
                }
            } else if (near > size / 2 && locator.locate(new Coordinate(q[0], q[1])) == Location.INTERIOR) {
                out.add(new double[] {q[0], q[1], field.height(q[0], q[1])});
            }
        }
        return out;
    }
}
