/**
 * Station 90: what to charge.
 *
 * <p>What comes in: the earlier stations' results and the rates on the rack.
 *
 * <p>What goes out: {@link shotwright.quote.QuoteResult}: mold price, part price against quantity, and the hours behind them.
 *
 * <p>Whose formulas: cost arithmetic of the trade.
 */
@org.jspecify.annotations.NullMarked
package shotwright.quote;
