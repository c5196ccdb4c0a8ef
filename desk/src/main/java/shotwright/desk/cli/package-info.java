/**
 * The command line: the only place that prints.
 *
 * <p>What comes in: words typed by a person or a script.
 *
 * <p>What goes out: plain text or JSON on standard output, progress and trouble on standard error, an exit code.
 *
 * <p>Whose formulas: none.
 */
@org.jspecify.annotations.NullMarked
package shotwright.desk.cli;
