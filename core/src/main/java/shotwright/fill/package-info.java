/**
 * Station 60, first order: will it fill, at what pressure. The part is cut into cells, melt of one temperature is followed through its own
 * walls ({@link shotwright.fill.FlowField}), and the way to the last corner is then walked with cold walls at twenty fill times ({@link
 * shotwright.fill.FirstOrderFill}).
 *
 * <p>What comes in: mesh of the part in the pulled frame, gate, layout, and the resin and press at their set-points.
 *
 * <p>What goes out: {@link shotwright.fill.FillResult}, labelled first-order, with its band.
 *
 * <p>Whose formulas: Hele–Shaw flow (Hieber and Shen; key ZTF), slit, tube and taper flow of power-law melts (KAZ, WHITE), the thermal entry layer
 * (LEV), conduction in the half space (Carslaw and Jaeger).
 */
@org.jspecify.annotations.NullMarked
package shotwright.fill;
