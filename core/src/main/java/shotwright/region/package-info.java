/**
 * Plane regions: what a part covers, what a block leaves, where an offset lies.
 *
 * <p>What comes in: rings of points in millimetres.
 *
 * <p>What goes out: immutable regions with area, centroid, rings, set operations and offsets.
 *
 * <p>Whose formulas: the overlay and offset operations of the JTS library, run in its robust mode; winding numbers.
 */
@org.jspecify.annotations.NullMarked
package shotwright.region;
