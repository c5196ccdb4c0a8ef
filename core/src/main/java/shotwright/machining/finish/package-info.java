/**
 * Finishing: paths that leave the surface as asked.
 *
 * <p>What comes in: the exact drop-cutter, the surface's map, zones and steps.
 *
 * <p>What goes out: loops along drafted walls, level loops, rings of one cusp, rasters, floors, and the zones a larger cutter left.
 *
 * <p>Whose formulas: cusp geometry of round ends; distance along the surface by Dijkstra over sixteen directions.
 */
@org.jspecify.annotations.NullMarked
package shotwright.machining.finish;
