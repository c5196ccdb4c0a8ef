/**
 * Triangle meshes: mass properties, edges and bodies, rays and nearest points, wall thickness, shadows, height maps, crossings.
 *
 * <p>What is done here: everything that can be asked of a mesh without knowing what it is for.
 *
 * <p>What comes in: vertices in millimetres and facet corners.
 *
 * <p>What goes out: immutable meshes and the results of searches on them, all in millimetres.
 *
 * <p>Whose formulas: divergence theorem over the facets; surface area heuristic of MacDonald and Booth; watertight ray test of Woop, Benthin
 * and Wald; nearest point on a triangle after Ericson; shrinking ball of Ma, Bae and Choi; separating axes of Gottschalk, Lin and Manocha;
 * grey morphology after Serra. Each class names its own.
 */
@org.jspecify.annotations.NullMarked
package shotwright.mesh;
