/**
 * Exact faces looked at along the pull: how far each leans, what it is called, how large it is and which faces it meets.
 *
 * <p>What comes in: the part's exact faces with the triangles over them, and the pull.
 *
 * <p>What goes out: leans with their places, shapes, names, sizes, borders.
 *
 * <p>Whose formulas: none; plane geometry.
 */
@org.jspecify.annotations.NullMarked
package shotwright.review.face;
