package shotwright.part;

import shotwright.brep.ExactBody;
import shotwright.geom.Transform;
import shotwright.geom.Vec3;
import shotwright.mesh.Bvh;
import shotwright.mesh.Edges;
import shotwright.mesh.Shadow;
import shotwright.mesh.TriMesh;
import shotwright.mesh.pull.FacetSight;
import shotwright.mesh.pull.PulledMesh;
import shotwright.progress.Progress;
import shotwright.region.Region;

/**
 * The part turned so that the mold opens along +z: half A above, half B below, millimetres, before shrink.
 *
 * @param part the part in the axes of its file
 * @param pull unit direction in which half A moves off, in the axes of the file
 * @param toPulled from the axes of the file to the pulled frame
 * @param turned the part's facets in the pulled frame, same numbers as in the file, with edges, exact shadow and what the pull sees
 * @param tree the searching tree over those facets
 */
public record PulledPart(Part part, Vec3 pull, Transform toPulled, PulledMesh turned, Bvh tree) {

    /**
     * Turns the part, measures its shadow and looks along the pull.
     *
     * @param pull any length above zero, axes of the file
     * @throws Progress.Cancelled when asked to stop
     */
    public static PulledPart of(Part part, Vec3 pull, Progress progress) {
        Vec3 unit = pull.unit();
        Transform turn = Transform.bringToZ(unit);
        TriMesh mesh = part.mesh().transform(turn);
        Shadow shadow = Shadow.of(mesh, progress.part(0, 0.4));
        Bvh tree = Bvh.of(mesh);
        FacetSight sight = FacetSight.of(mesh, leans(part, mesh, unit), tree, shadow, progress.part(0.5, 1));
        PulledMesh turned = new PulledMesh(mesh, Edges.of(mesh), shadow, sight);
        return new PulledPart(part, unit, turn, turned, tree);
    }

    /** What leans least of each facet and, where it lies on an exact face, that face at its corners. */
    private static double[] leans(Part part, TriMesh mesh, Vec3 pull) {
        double[] lean = FacetSight.leans(mesh);
        ExactBody exact = part.exact();
        if (exact == null) return lean;
        float[] n = exact.normals();
        for (int f = 0; f < lean.length; f++) {
            double most = 0;
            for (int i = 9 * f; i < 9 * f + 9; i += 3)
                most = Math.max(most, Math.abs(new Vec3(n[i], n[i + 1], n[i + 2]).dot(pull)));
            lean[f] = Math.min(lean[f], most);
        }
        return lean;
    }

    /** The facets in the pulled frame. */
    public TriMesh mesh() {
        return turned.mesh();
    }

    public Edges edges() {
        return turned.edges();
    }

    /** What the part covers seen along the pull. */
    public Region shadow() {
        return turned.shadow().region();
    }

    /** The shadow with the sum over the facets that made it. */
    public Shadow exactShadow() {
        return turned.shadow();
    }

    /** What each facet sees along the pull. */
    public FacetSight sight() {
        return turned.sight();
    }

    /** A place of the pulled frame in the axes of the file. */
    public Vec3 toFile(Vec3 pulled) {
        return toPulled.inverse().apply(pulled);
    }
}
