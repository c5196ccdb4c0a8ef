/**
 * How the rack is read: one JSON file per resin, press, bar, cutter or mill, every number with its unit and its source.
 *
 * <p>What comes in: the files that ship with the program and the files of the shop, which win by id.
 *
 * <p>What goes out: records of the rack packages, or a {@link shotwright.rack.RackException} that names file and key.
 *
 * <p>Whose formulas: none; units are converted by {@link shotwright.measure.Units}.
 */
@org.jspecify.annotations.NullMarked
package shotwright.rack;
