/**
 * What runs inside the engine's process: a V8 runtime that hosts the geometry kernel's WebAssembly and a short script of ours. Bytes go from
 * input to script and from script to output; nothing is looked into here.
 *
 * <p>What comes in: framed bytes.
 *
 * <p>What goes out: framed bytes.
 *
 * <p>Whose formulas: none.
 */
@org.jspecify.annotations.NullMarked
package shotwright.kernel.worker;
