/**
 * How holes that must fit are made.
 *
 * <p>What comes in: a hole's limits and depth, cutters.
 *
 * <p>What goes out: {@link shotwright.machining.hole.FittedHole}: drill and ream, or {@link shotwright.machining.hole.BoreSteps} of a helix with
 * gauging in between.
 *
 * <p>Whose formulas: ISO 286 limits; plane geometry of the helix; correction by half the difference in diameter.
 */
@org.jspecify.annotations.NullMarked
package shotwright.machining.hole;
