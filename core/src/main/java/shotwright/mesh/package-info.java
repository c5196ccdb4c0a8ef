/**
 * Closed triangle meshes: facets, mass properties, and the searches on them.
 *
 * <p>What comes in: vertices in millimetres and facet corners.
 *
 * <p>What goes out: immutable meshes, volumes, areas, centroids.
 *
 * <p>Whose formulas: divergence theorem over the facets.
 */
@org.jspecify.annotations.NullMarked
package shotwright.mesh;
