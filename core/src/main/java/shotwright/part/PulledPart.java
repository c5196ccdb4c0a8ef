package shotwright.part;

import shotwright.geom.Transform;
import shotwright.geom.Vec3;
import shotwright.mesh.Edges;
import shotwright.mesh.Shadow;
import shotwright.mesh.TriMesh;
import shotwright.progress.Progress;
import shotwright.region.Region;

/**
 * The part turned so that the mold opens along +z: half A above, half B below, millimetres, before shrink.
 *
 * @param part the part in the axes of its file
 * @param pull unit direction in which half A moves off, in the axes of the file
 * @param toPulled from the axes of the file to the pulled frame
 * @param mesh the part's facets in the pulled frame, same numbers as in the file
 * @param edges which of them meet where
 * @param shadow what the part covers seen along the pull, exactly
 * @param freeSumMm2 Σ ½A·|n·z|: equals the shadow's area where nothing is hidden
 */
public record PulledPart(
        Part part, Vec3 pull, Transform toPulled, TriMesh mesh, Edges edges, Region shadow, double freeSumMm2) {

    /**
     * Turns the part and measures its shadow.
     *
     * @param pull any length above zero, axes of the file
     * @throws Progress.Cancelled when asked to stop
     */
    public static PulledPart of(Part part, Vec3 pull, Progress progress) {
        Vec3 unit = pull.unit();
        Transform turn = Transform.bringToZ(unit);
        TriMesh mesh = part.mesh().transform(turn);
        Shadow shadow = Shadow.of(mesh, progress);
        return new PulledPart(part, unit, turn, mesh, Edges.of(mesh), shadow.region(), shadow.freeSum());
    }

    /** The shadow with the sum over its facets. */
    public Shadow exactShadow() {
        return new Shadow(shadow, freeSumMm2);
    }

    /** A place of the pulled frame in the axes of the file. */
    public Vec3 toFile(Vec3 pulled) {
        return toPulled.inverse().apply(pulled);
    }
}
