/**
 * Presses by class and the shop's own.
 *
 * <p>What comes in: one rack file per press.
 *
 * <p>What goes out: {@link shotwright.press.Press}.
 *
 * <p>Whose formulas: clamp of a screw vise from the torque on its handle (any machine-elements text).
 */
@org.jspecify.annotations.NullMarked
package shotwright.press;
