package shotwright.intake;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.triangulate.polygon.ConstrainedDelaunayTriangulator;
import shotwright.geom.Vec3;
import shotwright.measure.Tolerance;
import shotwright.mesh.Edges;
import shotwright.mesh.TriMesh;

/**
 * Closes holes whose rim lies in one plane, within the shop tolerance of the part, with flat patches over the rim's own corners. Rims in
 * the same plane that lie within each other give one patch with openings, so that a missing ring-shaped face comes back as a ring.
 */
final class HoleFilling {
    private static final GeometryFactory PLANE = new GeometryFactory();

    private final TriMesh mesh;
    private final double flatWithin;
    private final Ints added = new Ints();

    /** A rim seen along its own normal. */
    private record Rim(int[] ring, Vec3 normal, double offsetMm, Vec3 u, Vec3 v) {}

    private HoleFilling(TriMesh mesh) {
        this.mesh = mesh;
        this.flatWithin = Tolerance.ofDiagonal(mesh.box().diagonal()).shopMm();
    }

    /** Fills what can be filled; 0 facets when there was nothing flat to fill. */
    static Mending.Mended fill(TriMesh mesh) {
        Edges edges = Edges.of(mesh);
        if (edges.open().length == 0) return new Mending.Mended(mesh, 0);
        HoleFilling h = new HoleFilling(mesh);
        List<Rim> rims = new ArrayList<>();
        for (int[] loop : edges.boundaryLoops()) {
            Rim r = h.rim(loop);
            if (r != null) rims.add(r);
        }
        while (!rims.isEmpty()) h.patch(h.samePlane(rims));
        int n = h.added.count();
        if (n == 0) return new Mending.Mended(mesh, 0);
        int[] tri = java.util.Arrays.copyOf(mesh.copyTri(), 3 * mesh.facetCount() + n);
        System.arraycopy(h.added.toArray(), 0, tri, 3 * mesh.facetCount(), n);
        return new Mending.Mended(new TriMesh(mesh.copyXyz(), tri), n / 3);
    }

    /** The rim when it is flat and visits no corner twice, else null. */
    private @Nullable Rim rim(int[] ring) {
        if (ring.length < 3 || java.util.Arrays.stream(ring).distinct().count() < ring.length) return null;
        Vec3 o = mesh.vertex(ring[0]), n = Vec3.ZERO;
        for (int i = 1; i + 1 < ring.length; i++)
            n = n.plus(
                    mesh.vertex(ring[i]).minus(o).cross(mesh.vertex(ring[i + 1]).minus(o)));
        if (!(n.length() > flatWithin * flatWithin)) return null;
        Vec3 unit = n.unit(), mean = Vec3.ZERO;
        for (int v : ring) mean = mean.plus(mesh.vertex(v).times(1.0 / ring.length));
        for (int v : ring) if (Math.abs(unit.dot(mesh.vertex(v).minus(mean))) > flatWithin) return null;
        Vec3 u = unit.across();
        return new Rim(ring, unit, unit.dot(mean), u, unit.cross(u));
    }

    /** Takes the first rim and all others in its plane off the list. */
    private List<Rim> samePlane(List<Rim> rims) {
        Rim first = rims.getFirst();
        List<Rim> group = new ArrayList<>();
        for (Rim r : rims) {
            double apart = 0;
            for (int v : r.ring())
                apart = Math.max(apart, Math.abs(first.normal().dot(mesh.vertex(v)) - first.offsetMm()));
            if (r == first || apart <= 2 * flatWithin) group.add(r);
        }
        rims.removeAll(group);
        return group;
    }

    /**
     * A patch over each rim, with the rims that run the other way round inside it as openings. The patch faces the way the rim asks for.
     */
    private void patch(List<Rim> group) {
        Rim view = group.getFirst();
        Map<Coordinate, Integer> vertexAt = new HashMap<>();
        List<Polygon> flat = new ArrayList<>();
        for (Rim r : group) flat.add(PLANE.createPolygon(ring(r, view, vertexAt)));
        if (vertexAt.size() != group.stream().mapToInt(r -> r.ring().length).sum()) return;
        for (int i = 0; i < group.size(); i++) {
            boolean opening = false;
            List<LinearRing> openings = new ArrayList<>();
            for (int j = 0; j < group.size(); j++) {
                if (group.get(i).normal().dot(group.get(j).normal()) > 0) continue;
                opening |= flat.get(j).contains(flat.get(i));
                if (flat.get(i).contains(flat.get(j))) openings.add(flat.get(j).getExteriorRing());
            }
            if (!opening) triangulate(flat.get(i), openings, group.get(i).normal(), vertexAt);
        }
    }

    private LinearRing ring(Rim r, Rim view, Map<Coordinate, Integer> vertexAt) {
        Coordinate[] c = new Coordinate[r.ring().length + 1];
        for (int i = 0; i < r.ring().length; i++) {
            Vec3 p = mesh.vertex(r.ring()[i]);
            c[i] = new Coordinate(view.u().dot(p), view.v().dot(p));
            vertexAt.put(c[i], r.ring()[i]);
        }
        c[c.length - 1] = c[0].copy();
        return PLANE.createLinearRing(c);
    }

    private void triangulate(Polygon outer, List<LinearRing> openings, Vec3 normal, Map<Coordinate, Integer> vertexAt) {
        Polygon p = PLANE.createPolygon(outer.getExteriorRing(), openings.toArray(LinearRing[]::new));
        if (!p.isValid()) return;
        Geometry triangles = ConstrainedDelaunayTriangulator.triangulate(p);
        int n = triangles.getNumGeometries();
        int[] fresh = new int[3 * n];
        double area = 0;
        for (int i = 0; i < n; i++) {
            Coordinate[] c = triangles.getGeometryN(i).getCoordinates();
            for (int k = 0; k < 3; k++) {
                Integer known = vertexAt.get(c[k]);
                if (known == null) return;
                fresh[3 * i + k] = known;
            }
            Vec3 a = mesh.vertex(fresh[3 * i]);
            area += mesh.vertex(fresh[3 * i + 1])
                    .minus(a)
                    .cross(mesh.vertex(fresh[3 * i + 2]).minus(a))
                    .dot(normal);
        }
        for (int i = 0; i < fresh.length; i += 3) {
            added.add(fresh[i]);
            added.add(fresh[i + (area > 0 ? 1 : 2)]);
            added.add(fresh[i + (area > 0 ? 2 : 1)]);
        }
    }
}
