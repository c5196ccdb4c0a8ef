/**
 * Where the plastic enters a cavity, and how small the opening may be.
 *
 * <p>What comes in: the cavity's outline on the parting plane, its walls, the resin and the flow.
 *
 * <p>What goes out: scored gate places and a gate size with its largest opening.
 *
 * <p>Whose formulas: edge gate rule of R. G. W. Pye; apparent shear rate; conduction into a slab and a rod.
 */
@org.jspecify.annotations.NullMarked
package shotwright.layout.gate;
