/**
 * The sheet that starts the press: drying, barrel, mold temperature, fill, hold, cooling, start-up steps and cautions; the order in which to try
 * several resins, and what other resins would give on the same mold.
 *
 * <p>What comes in: layout, fill, cool, resin and press.
 *
 * <p>What goes out: {@link shotwright.sheet.PressSheet}, {@link shotwright.sheet.TrialOrder}, {@link shotwright.sheet.ResinComparison}.
 *
 * <p>Whose formulas: shot, stroke and residence (common practice; key HOWTO), shrink (ISO294); for the rest it collects and rounds.
 */
@org.jspecify.annotations.NullMarked
package shotwright.sheet;
