/**
 * How long programs run.
 *
 * <p>What comes in: programs and the mill they run on.
 *
 * <p>What goes out: {@link shotwright.machining.time.ProgramTime}: each operation and each cutter with speeding up and slowing down, and length over
 * feed beside it.
 *
 * <p>Whose formulas: mechanics of constant acceleration; corner speed by junction deviation; two passes of look-ahead.
 */
@org.jspecify.annotations.NullMarked
package shotwright.machining.time;
