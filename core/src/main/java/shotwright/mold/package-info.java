/**
 * Station 50: what metal remains.
 *
 * <p>What comes in: the layout and the part.
 *
 * <p>What goes out: {@link shotwright.mold.MoldResult}: half A and half B as closed solids with every cut-out, and the checks that hold them honest.
 *
 * <p>Whose formulas: none: exact splitting of one shared complex.
 */
@org.jspecify.annotations.NullMarked
package shotwright.mold;
