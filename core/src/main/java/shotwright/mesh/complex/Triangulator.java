package shotwright.mesh.complex;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.triangulate.polygon.ConstrainedDelaunayTriangulator;
import org.locationtech.jts.triangulate.tri.Tri;
import org.tinfour.common.IConstraint;
import org.tinfour.common.PolygonConstraint;
import org.tinfour.common.Vertex;
import org.tinfour.standard.IncrementalTin;
import org.tinfour.utils.TriangleCollector;

/** The two ways to triangulate a polygon with holes on its own points. */
enum Triangulator {
    /** Ear clipping, then flips to Delaunay (JTS). Refuses polygons that cross themselves. */
    EARS {
        @Override
        boolean fill(Outline o, Polygons.Patch p, IntList into) {
            if (p.shell().length == 3 && p.holes().isEmpty()) {
                into.add(p.shell()[0], p.shell()[1], p.shell()[2]);
                return true;
            }
            Map<Coordinate, Integer> point = new HashMap<>();
            enter(o, p.shell(), point);
            for (int[] h : p.holes()) enter(o, h, point);
            List<Tri> triangles;
            try {
                triangles = new ConstrainedDelaunayTriangulator(Polygons.polygon(o, p)).getTriangles();
            } catch (IllegalStateException | IllegalArgumentException crossesItself) {
                return false;
            }
            for (Tri t : triangles) {
                Integer a = point.get(t.getCoordinate(0)),
                        b = point.get(t.getCoordinate(1)),
                        c = point.get(t.getCoordinate(2));
                if (a == null || b == null || c == null) return false;
                into.add(a, c, b); // these run clockwise
            }
            return true;
        }
    },

    /** Incremental Delaunay, then the border forced in (Tinfour). Adds points of its own where a border crosses itself: refused. */
    INCREMENTAL {
        @Override
        boolean fill(Outline o, Polygons.Patch p, IntList into) {
            IncrementalTin tin = new IncrementalTin(o.length(p.shell()) / Math.max(3, o.vertex.length));
            List<IConstraint> border = new ArrayList<>();
            border.add(constraint(o, p.shell()));
            for (int[] h : p.holes()) border.add(constraint(o, h));
            for (IConstraint b : border) {
                for (Vertex v : b.getVertices()) tin.add(v);
            }
            try {
                tin.addConstraints(border, false);
            } catch (RuntimeException crossesItself) {
                return false;
            }
            if (tin.getSyntheticVertexCount() > 0) return false;
            TriangleCollector.visitTrianglesConstrained(
                    tin, v -> into.add(v[0].getIndex(), v[1].getIndex(), v[2].getIndex()));
            return true;
        }
    };

    /** Adds counter-clockwise triangles; false when the polygon cannot be triangulated this way. */
    abstract boolean fill(Outline o, Polygons.Patch p, IntList into);

    private static void enter(Outline o, int[] loop, Map<Coordinate, @Nullable Integer> point) {
        for (int i : loop) point.put(new Coordinate(o.px[i], o.py[i]), i);
    }

    static PolygonConstraint constraint(Outline o, int[] loop) {
        List<Vertex> v = new ArrayList<>();
        for (int i : loop) v.add(new Vertex(o.px[i], o.py[i], 0, i));
        PolygonConstraint c = new PolygonConstraint(v);
        c.complete();
        return c;
    }
}
