/**
 * The paths of a mill before they become text.
 *
 * <p>What comes in: places of the cutter's tip in millimetres, z up along the spindle, Z0 on the face the setup names.
 *
 * <p>What goes out: {@link shotwright.machining.path.Program}, a setup's operations in order, each a chain of moves without a gap.
 *
 * <p>Whose formulas: plane geometry of lines, arcs and helices; drilling cycles as the RS274/NGC language defines them.
 */
@org.jspecify.annotations.NullMarked
package shotwright.machining.path;
