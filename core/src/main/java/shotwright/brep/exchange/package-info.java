/**
 * The exchange structure of STEP files: entities as they stand in the file, and from them products, how they are put together, lengths units and
 * the sizes the exporter vouches for. No geometry is worked out here.
 *
 * <p>What comes in: the bytes of a STEP file.
 *
 * <p>What goes out: entities by number; products, occurrences, units, validation properties; for broken files the line.
 *
 * <p>Whose formulas: none; ISO 10303-21 clear text encoding.
 */
@org.jspecify.annotations.NullMarked
package shotwright.brep.exchange;
