/**
 * What a straight pull along +z sees of a part: which facets look up, down, along the pull or are hidden; where along each silhouette the
 * parting may lie; and the parting height that follows.
 *
 * <p>What comes in: a closed mesh turned so that the pull is +z, its box tree and its exact shadow, in millimetres.
 *
 * <p>What goes out: the sight of every facet, bands of free heights, parting heights at the vertices, places where the part forces a steep step.
 *
 * <p>Whose formulas: elementary; shortest paths after Dijkstra.
 */
@org.jspecify.annotations.NullMarked
package shotwright.mesh.pull;
