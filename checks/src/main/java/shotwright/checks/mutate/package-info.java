/**
 * Damages good part files at random and reads them: whatever the damage, the reader must end with a part, with findings, or with one plain
 * complaint, and in time.
 *
 * <p>What comes in: a count and a seed. What goes out: how the readings ended, and every reading that ended otherwise.
 *
 * <p>Whose formulas: none.
 */
@org.jspecify.annotations.NullMarked
package shotwright.checks.mutate;
