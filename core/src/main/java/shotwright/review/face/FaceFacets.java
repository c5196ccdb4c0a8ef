package shotwright.review.face;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import shotwright.brep.ExactBody;
import shotwright.brep.ExactFace;
import shotwright.geom.Vec3;
import shotwright.mesh.TriMesh;

/**
 * One face with the triangles over it, whose corners lie on the face and carry its exact outward normals. Axes of the file.
 *
 * @param face the face
 * @param mesh the part's mesh
 * @param body the body it is a face of
 * @param facets the facets on the face; none on a sliver
 */
public record FaceFacets(ExactFace face, TriMesh mesh, ExactBody body, int[] facets) {
    /** All faces of a body, in its own order. */
    public static List<FaceFacets> of(ExactBody body, TriMesh mesh) {
        int[] faceOf = body.faceOf(), count = new int[body.faces().size()];
        for (int f : faceOf) count[f]++;
        int[][] facets = Arrays.stream(count).mapToObj(int[]::new).toArray(int[][]::new);
        for (int f = faceOf.length - 1; f >= 0; f--) facets[faceOf[f]][--count[faceOf[f]]] = f;
        return IntStream.range(0, facets.length)
                .mapToObj(i -> new FaceFacets(body.faces().get(i), mesh, body, facets[i]))
                .toList();
    }

    public boolean isSliver() {
        return facets.length == 0;
    }

    public Vec3 corner(int facet, int k) {
        return mesh.cornerPoint(facet, k);
    }

    /** The face's outward normal at a corner, of length one. */
    public Vec3 normal(int facet, int k) {
        float[] normals = body.normals();
        int i = 9 * facet + 3 * k;
        return new Vec3(normals[i], normals[i + 1], normals[i + 2]).unit();
    }

    /** A place on the face, near its middle. */
    public Vec3 middleMm() {
        Vec3 best = face.centroidMm();
        double least = Double.POSITIVE_INFINITY;
        for (int f : facets) {
            Vec3 c = mesh.centroid(f);
            double d = c.distance(face.centroidMm());
            if (d < least) {
                least = d;
                best = c;
            }
        }
        return best;
    }

    /** Least and most of what the corners measure along a direction. */
    public double[] extent(Vec3 direction) {
        double low = Double.POSITIVE_INFINITY, high = Double.NEGATIVE_INFINITY;
        for (int f : facets) {
            for (int k = 0; k < 3; k++) {
                double d = corner(f, k).dot(direction);
                low = Math.min(low, d);
                high = Math.max(high, d);
            }
        }
        double middle = face.centroidMm().dot(direction);
        return isSliver() ? new double[] {middle, middle} : new double[] {low, high};
    }
}
