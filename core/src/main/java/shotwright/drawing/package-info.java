/**
 * Drawings and pictures: what a mold maker reads on paper and on the bench, as SVG and PNG from one model, without any font, window or
 * graphics card of the machine.
 *
 * <p>What is done here: a neutral drawing of lines, fills, hatching, lettering and dimensions; shaded pictures of meshes with outlines,
 * maps, legends and circle numbers; cuts and outlines of meshes; plots and bars.
 *
 * <p>What comes in: meshes, regions, numbers and words. Nothing about stations.
 *
 * <p>What goes out: {@link Drawing}, written by {@link SvgFile} and {@link PngFile}. Paper coordinates are millimetres, x right, y down;
 * one pixel of the desk is 0.25 mm.
 *
 * <p>Whose formulas: line weights and hatching after ISO 128-2 and ISO 128-3, dimensions after ISO 129-1 (from memory); depth buffer after
 * Catmull (1974), shading interpolated over facets after Gouraud (1971).
 */
@org.jspecify.annotations.NullMarked
package shotwright.drawing;
