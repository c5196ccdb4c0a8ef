package shotwright.machining.proof;

import shotwright.geom.Vec2;

/**
 * A hole held against its exact circle, whatever facets the half's mesh has there.
 *
 * @param name what it is for
 * @param centre its axis
 * @param diameterMm diameter asked for
 * @param bottomZMm how deep the full diameter must reach
 */
public record Hole(String name, Vec2 centre, double diameterMm, double bottomZMm) {
    public Hole {
        if (!(diameterMm > 0)) throw new IllegalArgumentException("diameterMm: " + diameterMm + " is not above zero");
    }
}
