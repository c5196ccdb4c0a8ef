package shotwright.mesh.pull;

import shotwright.mesh.Bvh;
import shotwright.mesh.Edges;
import shotwright.mesh.Shadow;
import shotwright.mesh.TriMesh;
import shotwright.progress.Progress;

/**
 * A closed part turned so that the pull is +z, with all that is asked of it again and again.
 *
 * @param mesh the part
 * @param edges its edge table
 * @param shadow its exact shadow along the pull
 * @param sight what the pull sees of it
 */
public record PulledMesh(TriMesh mesh, Edges edges, Shadow shadow, FacetSight sight) {
    /**
     * Prepares a part.
     *
     * @throws IllegalArgumentException when the mesh is not closed: readers mend or refuse such files beforehand
     */
    public static PulledMesh of(TriMesh mesh, Progress progress) {
        progress.at("measuring the shadow", 0);
        Shadow shadow = Shadow.of(mesh, progress.part(0, 0.5));
        return of(mesh, shadow, progress.part(0.5, 1));
    }

    /** Prepares a part whose shadow is known. */
    public static PulledMesh of(TriMesh mesh, Shadow shadow, Progress progress) {
        Edges edges = Edges.of(mesh);
        if (!edges.isClosed())
            throw new IllegalArgumentException("mesh: has " + edges.unmatchedCount() + " edges that match no other");
        return new PulledMesh(mesh, edges, shadow, FacetSight.of(mesh, Bvh.of(mesh), shadow, progress));
    }
}
