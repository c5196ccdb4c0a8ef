/**
 * The halves as files: binary STL and 3MF, closed after rounding, written so that a file is either there whole or not at all.
 *
 * <p>What comes in: closed meshes in millimetres with their names.
 *
 * <p>What goes out: files, and what rounding did to the facets.
 *
 * <p>Whose formulas: none; file formats after the STL description of 1989 and the 3MF Core Specification 1.3 (both from memory).
 */
@org.jspecify.annotations.NullMarked
package shotwright.mold.export;
