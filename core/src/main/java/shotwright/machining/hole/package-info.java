/**
 * How the round holes of a half are made: which cutters in which order, and their moves.
 *
 * <p>What comes in: the holes in the frame of the programs with their limits, the cutters on the rack, mill, alloy and tables of feeds.
 *
 * <p>What goes out: {@link shotwright.machining.hole.HoleWay}: tasks, each one cutter at one hole, that the plan gathers by cutter, and what is left
 * to the bench. {@link shotwright.machining.hole.FittedHole} says how a hole with limits is made: drilled and reamed, or bored on a helix with
 * gauging in between.
 *
 * <p>Whose formulas: ISO 286 limits; drill points and helices by plane geometry; correction by half the difference in diameter.
 */
@org.jspecify.annotations.NullMarked
package shotwright.machining.hole;
