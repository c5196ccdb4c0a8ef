/**
 * How the halves are lined up.
 *
 * <p>What comes in: pin sizes, fits and the block.
 *
 * <p>What goes out: hole limits, places of the dowels.
 *
 * <p>Whose formulas: ISO 286 limits and fits; geometry of a tilted pin.
 */
@org.jspecify.annotations.NullMarked
package shotwright.layout.align;
