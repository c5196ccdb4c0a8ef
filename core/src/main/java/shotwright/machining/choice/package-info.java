/**
 * Which cutters a half is milled with: what each reaches, how fast it is, and the set that takes the least time with its changes.
 *
 * <p>What comes in: the surface of the half, cutters as mounted, speeds and feeds.
 *
 * <p>What goes out: {@link shotwright.machining.choice.CutterSet}: the chosen set beside the best with one cutter fewer and one more, the area each
 * finishes, and what none of them reaches.
 *
 * <p>Whose formulas: area over step and feed; every set of up to five cutters is tried.
 */
@org.jspecify.annotations.NullMarked
package shotwright.machining.choice;
