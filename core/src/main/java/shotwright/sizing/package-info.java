/**
 * Station 30, Press: which press, how many up.
 *
 * <p>What comes in: area, volume, size and walls of the part from the review, the resins, the presses of the rack; feed and clamp from layout
 * and fill when the station runs again after them.
 *
 * <p>What goes out: {@link shotwright.sizing.SizingResult}: clamp three ways, shot, pressure, time in the barrel, a verdict for every press,
 * and what one, two, four cavities would mean.
 *
 * <p>Whose formulas: CRAW §4.3.5 (clamp), RAO and KAZ habits for shot and pressure, plain statics for eccentric load; keys in
 * {@code docs/SOURCES.md}.
 */
@org.jspecify.annotations.NullMarked
package shotwright.sizing;
