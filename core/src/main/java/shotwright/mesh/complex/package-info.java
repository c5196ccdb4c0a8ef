/**
 * One complex of triangles that divides space into cells: the world outside, the halves, the parts, the feed, the vents, the holes. Neighbouring
 * cells share their facets, so that what one cell loses another gains: every cell is closed and the volumes add up by construction.
 *
 * <p>What comes in: a block, closed part meshes, level functions and convex cutting tools in millimetres.
 *
 * <p>What goes out: each cell or material as a closed mesh, exact volumes, and the column test that checks the whole from outside.
 *
 * <p>Whose formulas: linear interpolation along edges, divergence theorem; planar triangulation by JTS and Tinfour.
 */
@org.jspecify.annotations.NullMarked
package shotwright.mesh.complex;
