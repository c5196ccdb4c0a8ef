package shotwright.intake;

import shotwright.geom.Box3;

/**
 * One solid of the file.
 *
 * @param number 1 for the largest; the number the owner names to choose it
 * @param name its name in the file, empty when it has none
 * @param facets triangles, those of its hollows included
 * @param hollows closed hollows inside it
 * @param volumeMm3 its volume, hollows taken off; below zero when it is inside out
 * @param boxMm box around it
 */
public record FoundBody(int number, String name, int facets, int hollows, double volumeMm3, Box3 boxMm) {}
