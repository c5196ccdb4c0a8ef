/**
 * Station 70, first order: how fast can it run.
 *
 * <p>What comes in: layout, resin, press, alloy of the halves and the part's wall samples.
 *
 * <p>What goes out: {@link shotwright.cool.CoolResult}: cooling by wall class, mold temperature shot by shot, cycle.
 *
 * <p>Whose formulas: one-term and series conduction in plates, rods and balls (Carslaw and Jaeger; keys MEN, RAO); lumped heat balance of the mold
 * and convection (INC, LIEN).
 */
@org.jspecify.annotations.NullMarked
package shotwright.cool;
