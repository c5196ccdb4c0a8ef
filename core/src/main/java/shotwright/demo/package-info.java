/**
 * Parts of our own making to try the line on: an invented customer's tension knob and a plain drafted cap.
 *
 * <p>What comes in: nothing; the sizes stand in the classes.
 *
 * <p>What goes out: closed meshes in millimetres, opening direction +z, hollow side down, the same to the last bit on every machine.
 *
 * <p>Whose formulas: elementary plane geometry (points on a curve moved along its normal), constrained Delaunay floors by Tinfour.
 */
@org.jspecify.annotations.NullMarked
package shotwright.demo;
