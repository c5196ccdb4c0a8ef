/**
 * Bars and plates, mold alloys, dowels and screws.
 *
 * <p>What comes in: one rack file each.
 *
 * <p>What goes out: {@link shotwright.stock.Stock}, {@link shotwright.stock.MoldMaterial}, {@link shotwright.stock.Dowel},
 * {@link shotwright.stock.Screw}; how alloys cut ({@link shotwright.stock.Machinability}); holes and pins that fit ({@link
 * shotwright.stock.Fit}).
 *
 * <p>Whose formulas: screw preload as a share of the proof stress (ISO 898-1 areas); limits of ISO 286.
 */
@org.jspecify.annotations.NullMarked
package shotwright.stock;
