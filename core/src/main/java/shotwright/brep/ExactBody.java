package shotwright.brep;

import java.util.List;

/**
 * What is known of a part from its exact surfaces, as values that outlive the engine.
 *
 * @param solid which solid of the file it is, counted from 0
 * @param mass volume, surface and centroid from the exact surfaces
 * @param faces its faces
 * @param faceOf for each facet of the part's mesh the number of its face
 * @param normals exact outward normal at each corner of each facet, nine numbers a facet
 */
public record ExactBody(int solid, ExactMass mass, List<ExactFace> faces, int[] faceOf, float[] normals) {
    public ExactBody {
        faces = List.copyOf(faces);
    }
}
