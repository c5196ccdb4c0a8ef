/**
 * The outside of a half: its big faces, its edges to size, its outside edges broken.
 *
 * <p>What comes in: the block as it is clamped and as it shall be, cutters, mill, alloy and tables of feeds.
 *
 * <p>What goes out: tasks of the mill.
 *
 * <p>Whose formulas: plane geometry; overlaps and run-outs by common practice.
 */
@org.jspecify.annotations.NullMarked
package shotwright.machining.face;
