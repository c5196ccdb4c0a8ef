package shotwright.drawing;

import shotwright.geom.Vec3;

/**
 * A circle number that points at a place on a body, the same number as in the table beside the picture.
 *
 * @param number what stands in the circle
 * @param at place in space, mm
 * @param target where the circle leads on a page, for example {@code #finding-3}; empty for nowhere
 */
public record Callout(String number, Vec3 at, String target) {
    public Callout(int number, Vec3 at) {
        this(Integer.toString(number), at, "");
    }
}
