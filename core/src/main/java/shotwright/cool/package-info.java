/**
 * Station 70, first order: how fast can it run.
 *
 * <p>What comes in: layout, mold, resin, press and the part's wall field.
 *
 * <p>What goes out: {@link shotwright.cool.CoolResult}.
 *
 * <p>Whose formulas: one-term and series conduction in plates and rods; lumped heat balance of the mold.
 */
@org.jspecify.annotations.NullMarked
package shotwright.cool;
