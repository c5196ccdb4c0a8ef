/**
 * Lettering with an engraver.
 *
 * <p>What comes in: outlines of letters as a region, the engraver's profile.
 *
 * <p>What goes out: paths along the middle of the strokes, as deep as the stroke is wide there.
 *
 * <p>Whose formulas: the medial axis from the circles through three outline points (dual of the Delaunay triangulation, pruned by the angle
 * between the points); depth (d − t/2)/tan(A/2) of a tip t at distance d from the outline.
 */
@org.jspecify.annotations.NullMarked
package shotwright.machining.letter;
