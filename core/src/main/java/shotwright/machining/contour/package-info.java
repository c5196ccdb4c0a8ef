/**
 * Lines round a surface at one level, offsets of outlines, and arcs fitted to them.
 *
 * <p>What comes in: the exact drop-cutter over a half and its coarse map, or the half's facets; regions of the plane.
 *
 * <p>What goes out: level contours of a cutter's tip exact to a micrometre, slices, offsets with a known error, lines and arcs.
 *
 * <p>Whose formulas: marching squares with bisection by the exact drop-cutter; greedy arc fitting by radial error; offsets by JTS with its
 * chord error made up for.
 */
@org.jspecify.annotations.NullMarked
package shotwright.machining.contour;
