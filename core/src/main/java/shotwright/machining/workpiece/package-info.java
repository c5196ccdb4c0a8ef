/**
 * What lies under the spindle: one half in the axes of its programs, its blank, its round holes and its channels.
 *
 * <p>What comes in: the finished halves and where the layout put everything, in the mold frame, millimetres.
 *
 * <p>What goes out: the same in the frame of the programs: x and y from the datum corner, z up along the spindle, Z0 on the finished parting face.
 *
 * <p>Whose formulas: none; half A is turned about the axis across the jaws so that both halves keep the same edge on the fixed jaw.
 */
@org.jspecify.annotations.NullMarked
package shotwright.machining.workpiece;
