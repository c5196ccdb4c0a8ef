/**
 * Points, boxes, planes and rigid or scaled placements in millimetres.
 *
 * <p>What comes in: coordinates.
 *
 * <p>What goes out: immutable values.
 *
 * <p>Whose formulas: elementary analytic geometry.
 */
@org.jspecify.annotations.NullMarked
package shotwright.geom;
