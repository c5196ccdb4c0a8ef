/**
 * Cutters by shape.
 *
 * <p>What comes in: one rack file per cutter.
 *
 * <p>What goes out: {@link shotwright.cutter.Cutter} with the outline of its cutting end.
 *
 * <p>Whose formulas: plain geometry of the revolved outline.
 */
@org.jspecify.annotations.NullMarked
package shotwright.cutter;
