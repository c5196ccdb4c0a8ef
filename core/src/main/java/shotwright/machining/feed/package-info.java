/**
 * Speeds, feeds, depths and what a cut does to cutter and spindle.
 *
 * <p>What comes in: a cutter with its stickout, the mold alloy, the mill, what kind of cut it is, depth and width wanted.
 *
 * <p>What goes out: {@link shotwright.machining.feed.CutData} with force, power, bending and stress as bands, or the reason why not; feeds
 * along a path from its engagement ({@link shotwright.machining.feed.FeedSchedule}); feeds of drills and reamers; the marks a cutter leaves.
 *
 * <p>Whose formulas: geometry of the chip; specific cutting force by power law, by edge forces and by unit power; bending of a stepped bar;
 * cusps of round and flat cutters.
 */
@org.jspecify.annotations.NullMarked
package shotwright.machining.feed;
