/**
 * Flat outlines in the drawing exchange format, ASCII, version AC1015.
 *
 * <p>What comes in: closed outlines, circles, lines and words on named layers, millimetres.
 *
 * <p>What goes out: {@link DxfFile}, as text. The format is written by ourselves: it takes two hundred lines, and no library for it on Maven
 * Central is both open and kept up.
 *
 * <p>Whose formulas: none; group codes after the published reference of the format (from memory), read again by another reader in the tests.
 */
@org.jspecify.annotations.NullMarked
package shotwright.drawing.dxf;
