/**
 * From bar to clamped block.
 *
 * <p>What comes in: finished blocks of the halves, the bars they are sawn from, the mill with its vise.
 *
 * <p>What goes out: {@link shotwright.machining.setup.SawPlan}: what is sawn from which bar; {@link shotwright.machining.setup.TwoSetups}: back
 * face first, parting face second, with datum, grip, jaws to keep clear of, way of facing and travel, in words a machinist reads.
 *
 * <p>Whose formulas: plane geometry; grip and clamping force by common practice.
 */
@org.jspecify.annotations.NullMarked
package shotwright.machining.setup;
