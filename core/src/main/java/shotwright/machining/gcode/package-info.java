/**
 * Programs as text: written for a control and read back.
 *
 * <p>What comes in: a {@link shotwright.machining.path.Program} and the {@link shotwright.machining.gcode.Dialect} of a control, or the
 * lines of a program file.
 *
 * <p>What goes out: program files; a program read, with the line of each of its moves; or a {@link
 * shotwright.machining.gcode.GcodeException} that names file, line and text and says what to do.
 *
 * <p>Whose formulas: the words of ISO 6983-1 as RS274/NGC defines them (NISTIR 6556, from memory; behaviour measured on an interpreter of
 * that lineage).
 */
@org.jspecify.annotations.NullMarked
package shotwright.machining.gcode;
