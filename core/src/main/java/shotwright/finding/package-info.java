/**
 * What a station has to say about the part or the plan, in plain words with a place, a limit and its source.
 *
 * <p>What comes in: measured values and limits.
 *
 * <p>What goes out: findings.
 *
 * <p>Whose formulas: none.
 */
@org.jspecify.annotations.NullMarked
package shotwright.finding;
