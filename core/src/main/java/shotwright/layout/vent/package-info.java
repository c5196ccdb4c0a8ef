/**
 * Where the air leaves.
 *
 * <p>What comes in: the cavity's outline, the gate, the resin's vent depth and the flow.
 *
 * <p>What goes out: vents from the cavity's rim to the block's edge.
 *
 * <p>Whose formulas: laminar flow of air through a slot with a choking cap; adiabatic compression.
 */
@org.jspecify.annotations.NullMarked
package shotwright.layout.vent;
