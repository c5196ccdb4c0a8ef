/**
 * Station 60, first order: will it fill, at what pressure.
 *
 * <p>What comes in: layout, resin, press and the part's own wall and flow-length field.
 *
 * <p>What goes out: {@link shotwright.fill.FillResult}, labelled first-order, with its band.
 *
 * <p>Whose formulas: closed forms of slit, tube and taper flow of power-law melts.
 */
@org.jspecify.annotations.NullMarked
package shotwright.fill;
