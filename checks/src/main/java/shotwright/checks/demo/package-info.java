/**
 * Makes the files of the demo part again.
 *
 * <p>What comes in: a folder. What goes out: the part as STEP and as STL.
 *
 * <p>Whose formulas: none.
 */
@org.jspecify.annotations.NullMarked
package shotwright.checks.demo;
