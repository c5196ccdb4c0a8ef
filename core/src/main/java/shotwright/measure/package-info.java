/**
 * Units, bands, tolerances and sources: what every number of the program is made of.
 *
 * <p>What comes in: bare numbers with the unit in their name.
 *
 * <p>What goes out: converted numbers, quantities with their unit and source, bands.
 *
 * <p>Whose formulas: exact definitions of the international yard and pound (1959).
 */
@org.jspecify.annotations.NullMarked
package shotwright.measure;
