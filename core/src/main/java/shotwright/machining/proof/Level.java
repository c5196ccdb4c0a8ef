package shotwright.machining.proof;

import shotwright.geom.Vec2;

/**
 * A small flat place whose height counts to the hundredth, such as a vent: the lowest a tip comes within it must be its height.
 *
 * @param name what it is
 * @param min corner with the least x and y
 * @param max corner with the greatest x and y
 * @param zMm height asked for
 */
public record Level(String name, Vec2 min, Vec2 max, double zMm) {
    public Level {
        if (!(min.x() < max.x() && min.y() < max.y()))
            throw new IllegalArgumentException("min: " + min + " is not below " + max);
    }
}
