package shotwright.mesh.complex;

/**
 * What a split has put between the two cells.
 *
 * @param source source number of the level facets of the cap; facets that are not level have numbers of their own; −1 without a cap
 * @param facets how many facets
 * @param loops how many closed border loops
 * @param spikes corners that folded back and were filled with slivers
 * @param steinerPoints points added inside a cap that is not flat
 */
public record Cap(int source, int facets, int loops, int spikes, int steinerPoints) {}
