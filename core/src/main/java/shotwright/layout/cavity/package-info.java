/**
 * The cavity as the layout sees it: the part with its shrink, its outline on the parting plane, walls along rays, and ways of the melt.
 *
 * <p>What comes in: the part turned to its pull, its exact shadow, shrink and parting height.
 *
 * <p>What goes out: a scaled shape with its parting plane at z = 0, points round the rim, flow lengths.
 *
 * <p>Whose formulas: none; shortest ways on a grid by Dijkstra (1959).
 */
@org.jspecify.annotations.NullMarked
package shotwright.layout.cavity;
