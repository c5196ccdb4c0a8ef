/**
 * Mathematics that the stations share: roots, the error function, sparse linear systems.
 *
 * <p>What comes in: functions and numbers.
 *
 * <p>What goes out: numbers to machine accuracy, or an error that names the value that was out of range.
 *
 * <p>Whose formulas: bracketing by bisection and secant; the all-positive series of the error function; conjugate gradients.
 */
@org.jspecify.annotations.NullMarked
package shotwright.solve;
