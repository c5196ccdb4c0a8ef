/**
 * The exchange structure of STEP files: entities as they stand in the file, and from them products, how they are put together, length units and
 * the sizes the exporter vouches for; where a file that made no solid is likely broken. No surface is worked out here.
 *
 * <p>What comes in: the bytes of a STEP file.
 *
 * <p>What goes out: entities by number; products, occurrences, units, validation properties; for broken files the line and
 * the entity.
 *
 * <p>Whose formulas: none; ISO 10303-21 clear text encoding, ISO 10303-42 geometry and topology.
 */
@org.jspecify.annotations.NullMarked
package shotwright.brep.exchange;
