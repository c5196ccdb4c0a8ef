/**
 * Roughing: taking metal out level by level without ever biting off more than asked.
 *
 * <p>What comes in: the region a cutter's centre may stand in at a level, what is cleared already, the step.
 *
 * <p>What goes out: lines and arcs with entries, lead-ins and links; places too narrow for the step; the engagement as measured.
 *
 * <p>Whose formulas: the cleared region grown by the step and cut by the allowed one; engagement acos(1 − step/radius) on a straight front.
 */
@org.jspecify.annotations.NullMarked
package shotwright.machining.clear;
