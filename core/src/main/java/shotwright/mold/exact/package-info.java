/**
 * The two halves as exact solids: true planes, cylinders and cones, from the part's own exact faces.
 *
 * <p>What comes in: the part's STEP file, the layout, the mesh halves of the same job.
 *
 * <p>What goes out: half A, half B and the part as molded as STEP, with what was checked.
 *
 * <p>Whose formulas: none.
 */
@org.jspecify.annotations.NullMarked
package shotwright.mold.exact;
