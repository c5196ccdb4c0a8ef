/**
 * The halves on paper and as outlines for the mill: what lies on each parting face, where and how deep, seen as when looking onto that face.
 *
 * <p>What comes in: a job's layout, its halves and its part.
 *
 * <p>What goes out: {@link HalfFace}, and from it the outlines as a drawing exchange file and the dimensioned drawing.
 *
 * <p>Whose formulas: none.
 */
@org.jspecify.annotations.NullMarked
package shotwright.report.half;
