/**
 * Mills by class and the shop's own.
 *
 * <p>What comes in: one rack file per mill.
 *
 * <p>What goes out: {@link shotwright.mill.Mill}.
 *
 * <p>Whose formulas: power of a fast spindle below its base speed (constant torque).
 */
@org.jspecify.annotations.NullMarked
package shotwright.mill;
