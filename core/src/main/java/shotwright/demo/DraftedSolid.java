package shotwright.demo;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import org.tinfour.common.IConstraint;
import org.tinfour.common.IIncrementalTin;
import org.tinfour.common.PolygonConstraint;
import org.tinfour.common.Vertex;
import org.tinfour.standard.IncrementalTin;
import org.tinfour.utils.TriangleCollector;
import shotwright.geom.Vec2;
import shotwright.geom.Vec3;
import shotwright.mesh.TriMesh;

/**
 * Puts a closed solid together from walls and floors. A ring is a closed row of vertices; a wall joins two rings of equal count, a floor
 * fills a ring with others cut out. Walls and floors that meet use the same ring, so the solid has no gaps. A ring runs counter-clockwise
 * seen from above round material, clockwise round air.
 */
final class DraftedSolid {
    private final List<Vec3> points = new ArrayList<>();
    private final List<int[]> facets = new ArrayList<>();

    /** Adds one vertex per point and gives their numbers. */
    int[] ring(List<Vec3> ring) {
        int[] ids = new int[ring.size()];
        for (int i = 0; i < ids.length; i++) {
            ids[i] = points.size();
            points.add(ring.get(i));
        }
        return ids;
    }

    /** The wall between a ring and the one above it. */
    void wall(int[] lower, int[] upper) {
        if (lower.length != upper.length)
            throw new IllegalArgumentException("wall: rings of " + lower.length + " and " + upper.length + " points");
        for (int i = 0; i < lower.length; i++) {
            int j = (i + 1) % lower.length;
            boolean rising = distance(lower[i], upper[j]) <= distance(lower[j], upper[i]);
            if (rising) {
                facet(lower[i], lower[j], upper[j]);
                facet(lower[i], upper[j], upper[i]);
            } else {
                facet(lower[i], lower[j], upper[i]);
                facet(lower[j], upper[j], upper[i]);
            }
        }
    }

    /**
     * A floor seen from above or from below.
     *
     * @param outline the ring around it, either direction
     * @param cutouts rings inside it that stay open
     * @param between more points the floor goes through, for floors that are not flat
     */
    void floor(boolean seenFromAbove, int[] outline, List<int[]> cutouts, List<Vec3> between) {
        List<Vertex> all = new ArrayList<>();
        List<IConstraint> edges = new ArrayList<>();
        for (int id : ring(between)) all.add(vertex(id));
        edges.add(constraint(outline, true, all));
        for (int[] cutout : cutouts) edges.add(constraint(cutout, false, all));
        IIncrementalTin tin = new IncrementalTin(0.5);
        tin.add(all, null);
        tin.addConstraints(edges, false);
        List<int[]> found = new ArrayList<>();
        Consumer<Vertex[]> keep = t -> found.add(smallestFirst(t[0].getIndex(), t[1].getIndex(), t[2].getIndex()));
        TriangleCollector.visitTrianglesConstrained(tin, keep);
        tin.dispose();
        found.sort(Arrays::compare);
        for (int[] t : found) {
            if (seenFromAbove) facet(t[0], t[1], t[2]);
            else facet(t[0], t[2], t[1]);
        }
    }

    TriMesh mesh() {
        double[] xyz = new double[3 * points.size()];
        for (int v = 0; v < points.size(); v++) {
            Vec3 p = points.get(v);
            xyz[3 * v] = (float) p.x();
            xyz[3 * v + 1] = (float) p.y();
            xyz[3 * v + 2] = (float) p.z();
        }
        int[] tri = new int[3 * facets.size()];
        for (int f = 0; f < facets.size(); f++) System.arraycopy(facets.get(f), 0, tri, 3 * f, 3);
        return new TriMesh(xyz, tri);
    }

    private void facet(int a, int b, int c) {
        facets.add(new int[] {a, b, c});
    }

    private double distance(int a, int b) {
        return points.get(a).distance(points.get(b));
    }

    private Vertex vertex(int id) {
        Vec3 p = points.get(id);
        return new Vertex(p.x(), p.y(), p.z(), id);
    }

    private IConstraint constraint(int[] ring, boolean outside, List<Vertex> all) {
        List<Vertex> row = new ArrayList<>();
        boolean turn = signedArea(ring) > 0 != outside;
        for (int i = 0; i < ring.length; i++) row.add(vertex(ring[turn ? ring.length - 1 - i : i]));
        all.addAll(row);
        PolygonConstraint c = new PolygonConstraint(row);
        c.complete();
        return c;
    }

    private double signedArea(int[] ring) {
        double twice = 0;
        for (int i = 0; i < ring.length; i++) {
            Vec2 p = points.get(ring[i]).xy(),
                    q = points.get(ring[(i + 1) % ring.length]).xy();
            twice += p.cross(q);
        }
        return twice / 2;
    }

    private static int[] smallestFirst(int a, int b, int c) {
        if (a < b && a < c) return new int[] {a, b, c};
        return b < c ? new int[] {b, c, a} : new int[] {c, a, b};
    }
}
