/**
 * The engine for exact solids: a process of its own that can die without harm, spoken to over its input and output.
 *
 * <p>What comes in: operations with plain values.
 *
 * <p>What goes out: their results; failures that say whether trying again makes sense.
 *
 * <p>Whose formulas: none.
 */
@org.jspecify.annotations.NullMarked
package shotwright.kernel;
