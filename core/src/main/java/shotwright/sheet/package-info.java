/**
 * The sheet that starts the press: drying, barrel, mold temperature, fill, hold, cooling, start-up steps and cautions.
 *
 * <p>What comes in: sizing, layout, fill, cool, resin and press.
 *
 * <p>What goes out: {@link shotwright.sheet.PressSheet}.
 *
 * <p>Whose formulas: none: collects and rounds.
 */
@org.jspecify.annotations.NullMarked
package shotwright.sheet;
