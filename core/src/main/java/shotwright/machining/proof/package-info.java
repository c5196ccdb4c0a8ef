/**
 * Runs programs against the stock before anyone does on the machine.
 *
 * <p>What comes in: a program, the cutters as they stand in the spindle, the stock, the half it should leave, jaws and clamps, the mill.
 *
 * <p>What goes out: {@link shotwright.machining.proof.Proof}: what is left of the stock, and every fault with operation, move, place, value
 * and limit.
 *
 * <p>Whose formulas: heights over a grid (Van Hook 1986, doi 10.1145/15922.15887); the lowest a convex cutter reaches over a straight or round
 * move in closed form.
 */
@org.jspecify.annotations.NullMarked
package shotwright.machining.proof;
