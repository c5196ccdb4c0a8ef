/**
 * The plan of a half: what is done in which clamping, in which order, with which cutter, as programs that the proof then runs.
 *
 * <p>What comes in: halves and layout, the rack's cutters, the mill and the alloy.
 *
 * <p>What goes out: programs of every clamping, the cutters to load, what is left to the bench, findings.
 *
 * <p>Whose formulas: order of operations by common practice: rough everything before anything is finished, what locates in the clamping of
 * what it locates, the cavity before gate, vents and letters, large cutters before small.
 */
@org.jspecify.annotations.NullMarked
package shotwright.machining.plan;
