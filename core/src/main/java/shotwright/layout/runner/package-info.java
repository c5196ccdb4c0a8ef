/**
 * The way from the nozzle to the gates.
 *
 * <p>What comes in: where the nozzle seats, where the gates are, the resin, the flow and the cutters owned.
 *
 * <p>What goes out: feed pieces in flow order, with their sizes.
 *
 * <p>Whose formulas: runner size of R. G. W. Pye and of D. O. Kazmer (eq. 6.8), minimum-volume branching, ½ inch per foot sprue taper.
 */
@org.jspecify.annotations.NullMarked
package shotwright.layout.runner;
