/**
 * What comes of milling a mold, as plain data: clampings, operations, times, proofs, program files, what is left to the bench.
 *
 * <p>What comes in: nothing; the records are filled by the planner of molds.
 *
 * <p>What goes out: {@link shotwright.machining.MachiningResult}, kept with the job and read by the papers.
 *
 * <p>Whose formulas: none.
 */
@org.jspecify.annotations.NullMarked
package shotwright.machining;
