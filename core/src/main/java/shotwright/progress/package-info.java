/**
 * How long work tells how far it is and hears that it should stop.
 *
 * <p>What comes in: nothing.
 *
 * <p>What goes out: the progress door that long computations take.
 *
 * <p>Whose formulas: none.
 */
@org.jspecify.annotations.NullMarked
package shotwright.progress;
