/**
 * How fast the ground works: rays, shadow union and parting on a real part, beside the machine's own memory-copy rate in the same run.
 *
 * <p>What comes in: a part file.
 *
 * <p>What goes out: a table of rates.
 *
 * <p>Whose formulas: none.
 */
@org.jspecify.annotations.NullMarked
package shotwright.checks.speed;
