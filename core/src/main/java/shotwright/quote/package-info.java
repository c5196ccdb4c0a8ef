/**
 * Station 90: what to charge.
 *
 * <p>What comes in: block, part and cycle from the earlier stations, machine time once programs are proved, and the shop's rates.
 *
 * <p>What goes out: {@link shotwright.quote.QuoteResult}: mold price, part price against quantity, and the hours behind them; {@link
 * shotwright.quote.PriceBand} for the first look.
 *
 * <p>Whose formulas: cost of a good part (key KAZ p. 53); milling time from volume and surface; hours by common practice.
 */
@org.jspecify.annotations.NullMarked
package shotwright.quote;
