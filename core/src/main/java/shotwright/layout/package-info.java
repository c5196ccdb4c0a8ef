/**
 * Station 40: how the part sits in the block, where the plastic enters, where the air leaves and how the part comes out.
 *
 * <p>What comes in: the reviewed part, the sizing, resin, press and stock.
 *
 * <p>What goes out: {@link shotwright.layout.LayoutResult}: every place and size in the mold frame, with reasons.
 *
 * <p>Whose formulas: see the formula classes; handbooks of gating, venting, ejection and strength.
 */
@org.jspecify.annotations.NullMarked
package shotwright.layout;
