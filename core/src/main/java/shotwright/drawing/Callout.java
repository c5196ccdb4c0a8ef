package shotwright.drawing;

import org.jspecify.annotations.Nullable;
import shotwright.geom.Vec3;

/**
 * A circle number that points at a place on a body, the same number as in the table beside the picture.
 *
 * @param number what stands in the circle
 * @param at place in space, mm
 * @param foot where a chain line from the place meets the body, for a place beside it; else null
 * @param target where the circle leads on a page, for example {@code #finding-3}; empty for nowhere
 */
public record Callout(String number, Vec3 at, @Nullable Vec3 foot, String target) {
    public Callout(int number, Vec3 at) {
        this(Integer.toString(number), at, null, "");
    }

    /** For a place beside the body, with the nearest place on it. */
    public Callout(int number, Vec3 at, Vec3 foot) {
        this(Integer.toString(number), at, foot, "");
    }
}
