package shotwright.layout;

import shotwright.geom.Transform;

/**
 * One cavity.
 *
 * @param number counted from 1
 * @param place from the pulled frame (unscaled part, pull = +z) to the mold frame: shrink first, then a turn about z, then the shift
 */
public record Cavity(int number, Transform place) {}
