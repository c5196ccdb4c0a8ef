package shotwright.brep;

import shotwright.mesh.TriMesh;

/**
 * A solid as triangles that know which face they belong to.
 *
 * @param mesh closed mesh, corners of neighbouring faces welded
 * @param faceOf number of the face of each facet, in the order of {@link ExactShapes#faces}
 * @param normals exact outward normal at each corner of each facet, nine numbers a facet
 */
public record FacedMesh(TriMesh mesh, int[] faceOf, float[] normals) {}
