/**
 * What every station of the line holds in hand: the customer's part as a closed mesh in millimetres.
 *
 * <p>What comes in: the mesh that intake accepted.
 *
 * <p>What goes out: the part record.
 *
 * <p>Whose formulas: none.
 */
@org.jspecify.annotations.NullMarked
package shotwright.part;
