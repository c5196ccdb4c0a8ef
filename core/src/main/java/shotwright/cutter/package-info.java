/**
 * Cutters by shape.
 *
 * <p>What comes in: one rack file per cutter.
 *
 * <p>What goes out: {@link shotwright.cutter.Cutter}, the outline of its cutting end as a {@link shotwright.cutter.CutterProfile}, and the
 * whole stack from tip to holder as a {@link shotwright.cutter.MountedCutter}.
 *
 * <p>Whose formulas: plain geometry of the revolved outline.
 */
@org.jspecify.annotations.NullMarked
package shotwright.cutter;
