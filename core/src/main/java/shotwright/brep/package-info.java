/**
 * Exact solids: bodies bounded by true planes, cylinders, cones, tori and free-form faces, read from and written to STEP, measured, meshed
 * and combined.
 *
 * <p>What is done here: the few dozen questions and operations the trade needs, in its own terms. What answers them is an engine behind one
 * narrow door; nothing above this package knows what it is.
 *
 * <p>What comes in: STEP files, axes, sizes in millimetres, angles in radians.
 *
 * <p>What goes out: solids kept by number, their faces, sizes and meshes, STEP files.
 *
 * <p>Whose formulas: adaptive Gauss integration over the surfaces, done by the engine.
 */
@org.jspecify.annotations.NullMarked
package shotwright.brep;
