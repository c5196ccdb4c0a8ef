/**
 * How the channels of a half are milled: runner, gate, vents, pockets to open the mold.
 *
 * <p>What comes in: channels in the frame of the programs, the cutters on the rack, mill, alloy and tables of feeds.
 *
 * <p>What goes out: tasks, each one cutter along one channel; what no cutter on the rack fits, in words.
 *
 * <p>Whose formulas: plane geometry; a ball leaves a half round channel in one pass, or in passes along the flow that leave the wanted ridge.
 */
@org.jspecify.annotations.NullMarked
package shotwright.machining.channel;
